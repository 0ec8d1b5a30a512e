import { afterEach, expect, test, vi } from 'vitest'
import { createBrowserFolder } from '../../../../../renderer/platform/browser/browserFolder'

afterEach(() => { vi.unstubAllGlobals() })

const fileOf = (name: string, text: string, lastModified: number) => ({ kind: 'file', name, getFile: async () => new File([text], name, { lastModified }) })
const gone = (name: string) => ({ kind: 'file', name, getFile: async () => { throw new DOMException('gone', 'NotFoundError') } })

function folderOf(...entries: unknown[]) {
  vi.stubGlobal('showDirectoryPicker', async () => ({ name: 'Hangers', values: async function* () { yield* entries } }))
  let count = 0
  return createBrowserFolder(({ name }) => `${name} ${++count}`)
}

test('lists hanger files only, the latest written first, each with the same token every time', async () => {
  const folder = folderOf(fileOf('fern.strandwise', '{"a": 1}', 5), fileOf('notes.txt', '', 9), { kind: 'directory', name: 'old.strandwise' }, gone('gone.strandwise'), fileOf('IVY.STRANDWISE', '{}', 7))
  expect(await folder.listFolder()).toEqual({ ok: true, listing: null })
  expect(await folder.chooseFolder()).toEqual({ ok: true, folder: { name: 'Hangers' } })
  const listed = await folder.listFolder()
  expect(listed).toEqual(await folder.listFolder())
  expect(listed).toMatchObject({ ok: true, listing: { folder: { name: 'Hangers' }, isCut: false, files: [
    { name: 'IVY.STRANDWISE', size: 2, modified: 7 }, { name: 'fern.strandwise', size: 8, modified: 5, token: 'fern.strandwise 1' }, { name: 'gone.strandwise', size: null, modified: null },
  ] } })
  expect(await folder.readListed('fern.strandwise 1')).toEqual({ ok: true, text: '{"a": 1}' })
  expect(await folder.readListed('gone.strandwise 2')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  await expect(folder.readListed('stranger')).rejects.toThrow('No file of the folder')
})

test('lists no more than can be shown, and says that there are more', async () => {
  const folder = folderOf(...Array.from({ length: 5001 }, (_, i) => gone(`${i}.strandwise`)))
  await folder.chooseFolder()
  const outcome = await folder.listFolder()
  expect(outcome.ok && [outcome.listing?.files.length, outcome.listing?.isCut]).toEqual([5000, true])
})

test('a dismissed picker is no failure, a forbidden folder is one, and without a picker none can be chosen', async () => {
  const folder = folderOf()
  expect(folder.canChooseFolder).toBe(true)
  vi.stubGlobal('showDirectoryPicker', async () => { throw new DOMException('dismissed', 'AbortError') })
  expect(await folder.chooseFolder()).toEqual({ ok: true, folder: null })
  vi.stubGlobal('showDirectoryPicker', async () => { throw new DOMException('no', 'SecurityError') })
  expect(await folder.chooseFolder()).toMatchObject({ ok: false, problem: { code: 'PERMISSION' } })
  vi.unstubAllGlobals()
  expect(createBrowserFolder(() => '').canChooseFolder).toBe(false)
})
