import { mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises'
import { beforeEach, expect, test } from 'vitest'
import { HANGER_BYTES_LIMIT } from '../../../../../electron/contract'
import { createHangerFiles, type HangerFiles } from '../../../../../electron/main/files/hangerFiles'
import { temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
const KEEP = { overwrite: false }
let files: HangerFiles
let path = ''

beforeEach(() => {
  files = createHangerFiles()
  path = folder.file('fern.strandwise')
})

async function opened(text: string): Promise<string> {
  await writeFile(path, text)
  const outcome = await files.open(path)
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.hanger.token
}

test('a file has one token in lists and another for each opening, which say nothing of its path', async () => {
  const token = await opened('{}')
  const listed = files.tokenFor(path)
  expect(files.tokenFor(path)).toBe(listed)
  expect(files.tokenFor(folder.file('../') + path.slice(folder.path.lastIndexOf('/') + 1))).toBe(listed)
  expect(new Set([listed, token, await opened('{}')]).size).toBe(3)
  expect([listed, token].map(files.pathOf)).toEqual([path, path])
  expect(token).not.toContain('fern')
  expect(files.tokenFor(folder.file('ivy.strandwise'))).not.toBe(token)
})

test('a token nobody was given is refused', () => {
  expect(() => files.pathOf(path)).toThrow('No file goes by this token')
  expect(() => files.save(path, '{}', KEEP)).toThrow('No file goes by this token')
})

test('what is saved comes back, byte order mark or not', async () => {
  const token = await opened('\ufeff{"cord": "3 mm, größer"}')
  expect(await files.open(path)).toMatchObject({ hanger: { name: 'fern.strandwise', text: '{"cord": "3 mm, größer"}' } })
  expect(await files.save(token, '{"cord": "½ in"}', KEEP)).toEqual({ ok: true })
  expect(await files.save(token, '{"cord": "⅝ in"}', KEEP)).toEqual({ ok: true })
  expect(await files.open(path)).toMatchObject({ hanger: { text: '{"cord": "⅝ in"}' } })
})

test('what somebody else wrote is not overwritten, but a file that is gone is written anew', async () => {
  const token = await opened('mine')
  await writeFile(path, 'theirs')
  expect(await files.save(token, 'mine again', KEEP)).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await readFile(path, 'utf8')).toBe('theirs')
  await rm(path)
  expect(await files.save(token, 'mine again', KEEP)).toEqual({ ok: true })
  expect(await readFile(path, 'utf8')).toBe('mine again')
})

test('a file known by name only is not overwritten', async () => {
  await writeFile(path, 'never read')
  expect(await files.save(files.tokenFor(path), 'blind', KEEP)).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
  expect(await files.saveAs(path, 'chosen')).toMatchObject({ ok: true, saved: { token: files.tokenFor(path), name: 'fern.strandwise' } })
  expect(await files.save(files.tokenFor(path), 'again', KEEP)).toEqual({ ok: true })
})

test('saves that overlap happen one after the other', async () => {
  const token = await opened('0')
  const outcomes = await Promise.all(['1', '2', '3'].map((text) => files.save(token, text, KEEP)))
  expect(outcomes).toEqual([{ ok: true }, { ok: true }, { ok: true }])
  expect(await readFile(path, 'utf8')).toBe('3')
  expect((await readdir(folder.path)).sort()).toEqual(['fern.strandwise', 'fern.strandwise~'])
})

test('what is too large is neither read nor written', async () => {
  const token = await opened('small')
  const large = 'ü'.repeat(HANGER_BYTES_LIMIT / 2)
  expect(await files.save(token, large, KEEP)).toEqual({ ok: true })
  expect(await files.save(token, `${large}.`, KEEP)).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
  expect((await readFile(path)).length).toBe(HANGER_BYTES_LIMIT)
  await writeFile(path, `${large}.`)
  expect(await files.open(path)).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
  expect(await files.save(token, 'small', KEEP)).toMatchObject({ ok: false, problem: { code: 'CHANGED_ON_DISK' } })
})

test('a problem is an answer', async () => {
  expect(await files.open(path)).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  await writeFile(path, Buffer.from([0x7b, 0xc3, 0x28, 0x7d]))
  expect(await files.open(path)).toMatchObject({ ok: false, problem: { code: 'NOT_TEXT' } })
  await mkdir(folder.file('pots'))
  expect(await files.open(folder.file('pots'))).toMatchObject({ ok: false, problem: { code: 'IS_FOLDER' } })
  expect(await files.saveAs(folder.file('gone/fern.strandwise'), '{}')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
})
