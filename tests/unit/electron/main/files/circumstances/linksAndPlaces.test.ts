import { execFileSync } from 'node:child_process'
import { chmodSync, linkSync, lstatSync, mkdirSync, readdirSync, readFileSync, readlinkSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { createDraftFile } from '../../../../../../electron/main/files/draftFile'
import { createHangerFiles } from '../../../../../../electron/main/files/hangerFiles'
import { asOrdinaryUser, temporaryFolder } from '../../temporaryFolder'
import { interfere, failAt, nothing } from './interfere'

const folder = temporaryFolder()
const read = (name: string): string => readFileSync(folder.file(name), 'utf8')
const saveAs = (name: string, text: string) => createHangerFiles().saveAs(folder.file(name), text)
const told = (code: string) => ({ ok: false, problem: { code } })

describe.runIf(process.platform !== 'win32')('where files have links and modes', () => {
  test('symbolic links are kept, one after the other; one in a circle or to nothing is told and kept', async () => {
    mkdirSync(folder.file('cellar'))
    writeFileSync(folder.file('cellar/fern'), 'first')
    symlinkSync('cellar/fern', folder.file('near'))
    symlinkSync('near', folder.file('far'))
    symlinkSync('cellar', folder.file('by-folder'))
    symlinkSync('circle', folder.file('circle'))
    symlinkSync('nothing', folder.file('dangling'))
    expect(await saveAs('far', 'second')).toMatchObject({ ok: true })
    expect(await saveAs('by-folder/fern', 'third')).toMatchObject({ ok: true })
    expect([read('cellar/fern'), read('cellar/fern~'), readlinkSync(folder.file('far')), readlinkSync(folder.file('near'))]).toEqual(['third', 'second', 'near', 'cellar/fern'])
    for (const name of ['circle', 'dangling']) {
      expect(await saveAs(name, 'x')).toMatchObject(told('BROKEN_LINK'))
      expect(lstatSync(folder.file(name)).isSymbolicLink()).toBe(true)
    }
    expect(await createHangerFiles().open(folder.file('circle'))).toMatchObject(told('BROKEN_LINK'))
    expect(readdirSync(folder.path)).toHaveLength(6)
  })

  test('a hard link keeps what the file held, and the file gets the new', async () => {
    writeFileSync(folder.file('fern'), 'first')
    linkSync(folder.file('fern'), folder.file('archive'))
    await saveAs('fern', 'second')
    expect([read('fern'), read('archive')]).toEqual(['second', 'first'])
  })

  test.each([0o600, 0o640, 0o664, 0o777])('mode %o stays, through several saves', async (mode) => {
    writeFileSync(folder.file('fern'), 'first')
    chmodSync(folder.file('fern'), mode)
    for (const text of ['second', 'third']) await saveAs('fern', text)
    expect(statSync(folder.file('fern')).mode & 0o7777).toBe(mode)
    await saveAs('new', 'first')
    expect(statSync(folder.file('new')).mode & 0o7777).toBe(0o666 & ~process.umask())
  })

  test('a pipe, a device or a folder in the file\'s place is told and stays', async () => {
    execFileSync('mkfifo', [folder.file('pipe')])
    mkdirSync(folder.file('pots'))
    const files = createHangerFiles()
    expect(await saveAs('pipe', 'x')).toMatchObject(told('NOT_ORDINARY'))
    expect(await files.open(folder.file('pipe'))).toMatchObject(told('NOT_ORDINARY'))
    expect(await files.saveAs('/dev/null', 'x')).toMatchObject(told('NOT_ORDINARY'))
    expect(await saveAs('pots', 'x')).toMatchObject(told('IS_FOLDER'))
    expect(await saveAs('pots/', 'x')).toMatchObject(told('IS_FOLDER'))
    expect(readdirSync(folder.path)).toEqual(['pipe', 'pots'])
  })
})

describe('a place that takes no writing', () => {
  test('a folder or file that is read-only: told, the file as it was, nothing left beside it', async () => {
    writeFileSync(folder.file('fern'), 'first')
    chmodSync(folder.file('fern'), 0o666)
    chmodSync(folder.path, 0o555)
    await asOrdinaryUser(async () => {
      expect(await saveAs('fern', 'second')).toMatchObject(told('PERMISSION'))
      expect(await saveAs('new', 'x')).toMatchObject(told('PERMISSION'))
    })
    chmodSync(folder.path, 0o777)
    chmodSync(folder.file('fern'), 0o444)
    await asOrdinaryUser(async () => { expect(await saveAs('fern', 'second')).toMatchObject(told('PERMISSION')) })
    expect([read('fern'), readdirSync(folder.path)]).toEqual(['first', ['fern']])
  })

  test('a disk mounted read-only: told at the first step that writes', async () => {
    writeFileSync(folder.file('fern'), 'first')
    const { calls } = await interfere(nothing, () => saveAs('fern', 'first'))
    const { value } = await interfere(failAt(calls.indexOf('open'), 'EROFS'), () => saveAs('fern', 'second'))
    expect([value, read('fern')]).toMatchObject([told('READ_ONLY'), 'first'])
  })

  test('where the app may remember nothing the draft is told of, and the one there stays readable', async () => {
    writeFileSync(folder.file('draft.json'), 'from the last run')
    chmodSync(folder.file('draft.json'), 0o644)
    chmodSync(folder.path, 0o555)
    await asOrdinaryUser(async () => {
      const draft = createDraftFile(folder.file('draft.json'))
      expect(await draft.keep('new')).toMatchObject(told('PERMISSION'))
      expect(await draft.keep(null)).toMatchObject(told('PERMISSION'))
      expect(await draft.take()).toBe('from the last run')
    })
    chmodSync(folder.path, 0o777)
  })
})
