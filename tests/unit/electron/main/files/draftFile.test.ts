import { readdir, writeFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { DRAFT_BYTES_LIMIT } from '../../../../../electron/contract'
import { createDraftFile } from '../../../../../electron/main/files/draftFile'
import { temporaryFolder } from '../temporaryFolder'

const folder = temporaryFolder()
const draft = () => createDraftFile(folder.file('memory/draft.json'))

test('what was kept last is there at the next start, until another is kept', async () => {
  const first = draft()
  void first.keep('one')
  await first.keep('twö')
  expect(await draft().take()).toBe('twö')
  expect(await draft().take()).toBe('twö')
  await draft().keep('three')
  expect(await draft().take()).toBe('three')
})

test('nothing is left once nothing is unsaved', async () => {
  const file = draft()
  void file.keep('one')
  await file.keep(null)
  await file.keep(null)
  expect(await draft().take()).toBeNull()
  expect(await readdir(folder.file('memory'))).toEqual([])
})

test('what is too large, or cannot be written, is told, and keeps the last', async () => {
  const file = draft()
  await file.keep('one')
  expect(await file.keep('x'.repeat(DRAFT_BYTES_LIMIT + 1))).toMatchObject({ ok: false, problem: { code: 'TOO_LARGE' } })
  expect(await file.take()).toBe('one')
  await writeFile(folder.file('blocked'), '')
  const nowhere = createDraftFile(folder.file('blocked/draft.json'))
  expect(await nowhere.keep('one')).toMatchObject({ ok: false })
  expect(await nowhere.take()).toBeNull()
})
