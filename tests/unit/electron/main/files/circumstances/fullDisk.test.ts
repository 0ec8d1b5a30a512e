import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { createDraftFile } from '../../../../../../electron/main/files/draftFile'
import { createHangerFiles } from '../../../../../../electron/main/files/hangerFiles'
import { createShelfFile } from '../../../../../../electron/main/files/shelfFile'
import { IN_MEMORY, temporaryFolder } from '../../temporaryFolder'
import { failAt, interfere, nothing, systemError } from './interfere'

const folder = temporaryFolder(IN_MEMORY)
const KEEP = { overwrite: false }
const path = () => folder.file('fern.strandwise')
const read = (name: string): string => readFileSync(folder.file(name), 'utf8')

/** A file on its third content, so that a backup of the second has to be made in place of one of the first. */
async function savedTwice() {
  for (const name of readdirSync(folder.path)) rmSync(folder.file(name))
  writeFileSync(path(), 'first')
  writeFileSync(`${path()}~`, 'before the first')
  const files = createHangerFiles()
  const opened = await files.open(path())
  if (!opened.ok) throw new Error('not opened')
  const { token } = opened.hanger
  return { files, token }
}

const AFTER = 'a text that is longer than the one before it'

/** Every call a save makes of the file system, by name. */
async function callsOfSaving(): Promise<readonly string[]> {
  const { files, token } = await savedTwice()
  return (await interfere(nothing, () => files.save(token, AFTER, KEEP))).calls
}

test('the calls that are interfered with are those of a save: a draft, the second name, the turn, a last look, the new name, the tidying up, the folder', async () => {
  expect(await callsOfSaving()).toEqual([
    'realpath', 'open', 'stat', 'close',
    'open', 'chmod', 'writeFile', 'sync', 'close',
    'link', 'symlink',
    'open', 'stat', 'read', 'read', 'close',
    'rename', 'rename', 'rm', 'rm', 'rm',
    'open', 'sync', 'close', 'readdir',
  ])
})

test.each([
  ['ENOSPC', 'DISK_FULL'], ['EIO', 'DISK_FAULT'], ['EACCES', 'PERMISSION'],
] as const)('%s at any one step of a save: it is told, the file is whole, nothing else is left, and saving again goes well', async (name, code) => {
  const calls = await callsOfSaving()
  for (let at = 0; at < calls.length; at++) {
    const { files, token } = await savedTwice()
    const where = `${name} at step ${at}, ${calls[at] ?? ''}`
    const { value: outcome } = await interfere(failAt(at, name), () => files.save(token, AFTER, KEEP))
    const text = read('fern.strandwise')
    if (outcome.ok) expect([text, read('fern.strandwise~')], where).toEqual([AFTER, 'first'])
    else {
      expect(outcome.problem.code, where).toBe(code)
      expect(outcome.problem.detail, where).not.toContain('ada')
      expect(['first', AFTER], where).toContain(text)
      expect(['before the first', 'first'], where).toContain(read('fern.strandwise~'))
    }
    const left = readdirSync(folder.path).filter((one) => !one.startsWith('fern'))
    // What may not be taken away stays, and a later save does that.
    expect(left.length, where).toBeLessThanOrEqual(calls[at] === 'rm' ? 1 : 0)
    expect(await files.save(token, 'third', KEEP), where).toEqual({ ok: true })
    expect(read('fern.strandwise'), where).toBe('third')
  }
})

test('a disk that is gone from any step on leaves the file whole', async () => {
  const steps = (await callsOfSaving()).length
  for (let at = 0; at < steps; at++) {
    const { files, token } = await savedTwice()
    const { value: outcome } = await interfere((call, number) => { if (number >= at) throw systemError('EIO', call) }, () => files.save(token, AFTER, KEEP))
    expect(outcome.ok ? [AFTER] : ['first', AFTER], `from step ${at}`).toContain(read('fern.strandwise'))
  }
})

test('what the disk does not know, a mode or a flush, keeps nobody from saving', async () => {
  for (const call of ['chmod', 'sync']) {
    for (const name of ['ENOTSUP', 'ENOSYS', 'EINVAL', 'EPERM'] as const) {
      const at = (await callsOfSaving()).indexOf(call)
      const { files, token } = await savedTwice()
      const { value } = await interfere(failAt(at, name), () => files.save(token, AFTER, KEEP))
      expect(value, `${name} at ${call}`).toEqual({ ok: true })
    }
  }
})

test('a disk without second names gets a copy for a backup, and where that finds no room nothing is written', async () => {
  const at = (await callsOfSaving()).indexOf('link')
  const { files, token } = await savedTwice()
  const calls = await interfere(failAt(at, 'EPERM'), () => files.save(token, AFTER, KEEP))
  expect(calls.value).toEqual({ ok: true })
  expect(calls.calls).toContain('copyFile')
  expect([read('fern.strandwise'), read('fern.strandwise~')]).toEqual([AFTER, 'first'])

  const again = await savedTwice()
  const full = await interfere((call) => { if (call === 'link' || call === 'copyFile') throw systemError(call === 'link' ? 'EPERM' : 'ENOSPC', call) }, () => again.files.save(again.token, AFTER, KEEP))
  expect(full.value).toMatchObject({ ok: false, problem: { code: 'DISK_FULL' } })
  expect([read('fern.strandwise'), read('fern.strandwise~')]).toEqual(['first', 'before the first'])
  expect(readdirSync(folder.path)).toHaveLength(2)
})

test('a draft or shelf that finds no room is told, and the one before stays', async () => {
  const draft = createDraftFile(folder.file('memory/draft.json'))
  const shelf = createShelfFile(folder.file('memory/shelf.json'))
  await draft.keep('one')
  await shelf.save('one')
  for (const keep of [draft.keep, shelf.save]) {
    const { calls } = await interfere(nothing, () => keep('one'))
    for (let at = 0; at < calls.indexOf('rename'); at++) {
      const { value } = await interfere(failAt(at, 'ENOSPC'), () => keep('another'))
      if (!value.ok) expect(value.problem.code).toBe('DISK_FULL')
      if (!value.ok) expect([await draft.take(), read('memory/shelf.json')]).toEqual(['one', 'one'])
      else await keep('one')
    }
  }
})
