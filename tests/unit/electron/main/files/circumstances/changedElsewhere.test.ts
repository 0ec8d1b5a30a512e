import { hostname } from 'node:os'
import { linkSync, lutimesSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { beforeEach, expect, test } from 'vitest'
import type { SaveOutcome } from '../../../../../../electron/contract'
import { createHangerFiles } from '../../../../../../electron/main/files/hangerFiles'
import { createShelfFile } from '../../../../../../electron/main/files/shelfFile'
import { IN_MEMORY, temporaryFolder } from '../../temporaryFolder'
import { interfere, nothing } from './interfere'

const folder = temporaryFolder(IN_MEMORY)
let path = ''
const read = (name: string): string => readFileSync(folder.file(name), 'utf8')
const CHANGED = { ok: false, problem: { code: 'CHANGED_ON_DISK' } }

/** The ways in which other programs write: into the file, or another in its place. */
const WAYS: Readonly<Record<string, (text: string) => void>> = {
  'into it': (text) => { writeFileSync(path, text) },
  'another in its place': (text) => {
    writeFileSync(folder.file('theirs.tmp'), text)
    renameSync(folder.file('theirs.tmp'), path)
  },
}

beforeEach(() => { path = folder.file('fern.strandwise') })

async function opened(files = createHangerFiles(), at = path) {
  const outcome = await files.open(at)
  if (!outcome.ok) throw new Error('not opened')
  const { token } = outcome.hanger
  return { files, token, save: (text: string, overwrite = false) => files.save(token, text, { overwrite }) }
}

function afresh(): void {
  for (const name of readdirSync(folder.path)) rmSync(folder.file(name))
  writeFileSync(path, 'as opened')
  writeFileSync(`${path}~`, 'before it was opened')
}

test.each(Object.entries(WAYS))('another program writes %s at any moment of a save: what it wrote is there still, in the file or in the one kept beside it', async (way, theyWrite) => {
  afresh()
  const first = await opened()
  const { calls } = await interfere(nothing, () => first.save('mine'))
  const named = calls.lastIndexOf('rename')
  const looked = calls.indexOf('open', calls.indexOf('symlink'))
  for (let at = 0; at < calls.length; at++) {
    // From the last look to the new name nobody can keep another program from putting its file there.
    if (way === 'another in its place' && at > looked && at <= named) continue
    afresh()
    const { save } = await opened()
    const { value } = await interfere((_call, number) => { if (number === at) theyWrite('theirs') }, () => save('mine'))
    const where = `at step ${at}, ${calls[at] ?? ''}`
    const there = [read('fern.strandwise'), read('fern.strandwise~')]
    if (!value.ok) expect([value, there[0]], where).toMatchObject([CHANGED, 'theirs'])
    else expect(there, where).toEqual(at <= named ? ['mine', 'theirs'] : ['theirs', 'as opened'])
  }
  expect(named - looked).toBeLessThan(8)
})

test('opened again but not taken, what another wrote is not written over by what was opened first', async () => {
  afresh()
  const first = await opened()
  writeFileSync(path, 'theirs')
  const second = await opened(first.files)
  expect(await first.save('mine')).toMatchObject(CHANGED)
  expect(await second.save('theirs and more')).toEqual({ ok: true })
  expect(await first.save('mine')).toMatchObject(CHANGED)
  expect(await first.save('mine', true)).toEqual({ ok: true })
  expect([read('fern.strandwise'), read('fern.strandwise~')]).toEqual(['mine', 'theirs and more'])
})

test('two windows, or two runs of the app, on one file: the second to save is told, whichever name it goes by', async () => {
  for (const name of ['fern.strandwise', 'by-link.strandwise', 'by-hard-link.strandwise']) {
    afresh()
    symlinkSync(path, folder.file('by-link.strandwise'))
    linkSync(path, folder.file('by-hard-link.strandwise'))
    const one = await opened()
    const other = await opened(createHangerFiles(), folder.file(name))
    expect(await one.save('one')).toEqual({ ok: true })
    // By a hard link the other has the content of before, which is a file of its own from then on.
    const outcome = await other.save('other')
    if (name === 'by-hard-link.strandwise') expect(outcome).toEqual({ ok: true })
    else expect(outcome).toMatchObject(CHANGED)
    expect(read('fern.strandwise')).toBe('one')
  }
})

test('two runs that save at once: one is kept and one is told, or both are there', async () => {
  for (let round = 0; round < 20; round++) {
    afresh()
    const one = await opened()
    const other = await opened()
    const theirs: Promise<SaveOutcome>[] = []
    const { value } = await interfere((_call, number) => { if (number === round) theirs.push(other.save('other')) }, () => one.save('one'))
    const outcomes = [value, ...await Promise.all(theirs)]
    expect(outcomes).toHaveLength(2)
    const kept = readdirSync(folder.path).map(read)
    expect(outcomes.some(({ ok }) => ok)).toBe(true)
    for (const [i, text] of ['one', 'other'].entries()) if (outcomes[i]?.ok === true) expect(kept, `round ${round}`).toContain(text)
  }
})

test('a turn that another run took and never gave back is waited for, unless that run is gone', async () => {
  afresh()
  const { save } = await opened()
  const lockOf = async (): Promise<string> => {
    let name = ''
    await interfere((call) => { if (call === 'rename') name = readdirSync(folder.path).find((one) => one.endsWith('.lock')) ?? name }, () => save('1'))
    return folder.file(name)
  }
  const lock = await lockOf()
  symlinkSync(`${2 ** 22 + 1}@${hostname()}@x`, lock)
  expect(await save('2'), 'a run that is gone').toEqual({ ok: true })
  symlinkSync('1@another-machine@x', lock)
  setTimeout(() => { rmSync(lock) }, 50)
  expect(await save('3'), 'a run that was done after a while').toEqual({ ok: true })
  symlinkSync('1@another-machine@x', lock)
  lutimesSync(lock, 1_700_000_000, 1_700_000_000)
  expect(await save('4'), 'a run that stopped on another machine long ago').toEqual({ ok: true })
  expect(readdirSync(folder.path).sort()).toEqual(['fern.strandwise', 'fern.strandwise~'])
})

test('the same content written by another is no difference', async () => {
  afresh()
  const { save } = await opened()
  writeFileSync(path, 'mine')
  expect(await save('mine')).toEqual({ ok: true })
})

test('a file that another took away is written anew; where its folder went, that is told', async () => {
  mkdirSync(folder.file('pots'))
  path = folder.file('pots/fern.strandwise')
  writeFileSync(path, 'as opened')
  const { save } = await opened()
  rmSync(path)
  expect(await save('mine')).toEqual({ ok: true })
  renameSync(folder.file('pots'), folder.file('moved'))
  expect(await save('again')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  expect(readdirSync(folder.path)).toEqual(['moved'])
  writeFileSync(folder.file('pots'), 'a file where the folder was')
  expect(await save('again')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  expect(read('moved/fern.strandwise')).toBe('mine')
})

test('a folder put in the place of the file is told and stays', async () => {
  afresh()
  const { save } = await opened()
  rmSync(path)
  mkdirSync(path)
  expect(await save('mine', true)).toMatchObject({ ok: false, problem: { code: 'IS_FOLDER' } })
  expect([readdirSync(path), read('fern.strandwise~')]).toEqual([[], 'before it was opened'])
})

test('the shelf that another window wrote since is not written over, though a shelf was imported from the same place', async () => {
  const shelf = createShelfFile(folder.file('shelf.json'))
  await shelf.save('mine')
  writeFileSync(folder.file('shelf.json'), 'theirs')
  expect(await shelf.read(folder.file('shelf.json'))).toMatchObject({ ok: true })
  expect(await shelf.save('mine again')).toMatchObject(CHANGED)
  expect(read('shelf.json')).toBe('theirs')
})

test('saves asked for while another runs are done in their order, and one that fails stops no other', async () => {
  afresh()
  const { files, save } = await opened()
  const bad = files.saveAs(folder.file('gone/fern.strandwise'), 'lost')
  const outcomes = await Promise.all([save('1'), bad, save('2'), files.saveAs(folder.file('ivy.strandwise'), 'ivy'), save('3')])
  expect(outcomes.map(({ ok }) => ok)).toEqual([true, false, true, true, true])
  expect([read('fern.strandwise'), read('fern.strandwise~'), read('ivy.strandwise')]).toEqual(['3', '2', 'ivy'])
})
