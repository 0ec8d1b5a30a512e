import { readFile, readdir, rm, writeFile } from 'node:fs/promises'
import { beforeEach, expect, test, vi } from 'vitest'
import { createAnswerers, openPath, type Shell } from '../../../../electron/main/answerers'
import { createDraftFile } from '../../../../electron/main/files/draftFile'
import { createHangerFiles } from '../../../../electron/main/files/hangerFiles'
import { createHangerFolder } from '../../../../electron/main/files/hangerFolder'
import { createRecentFiles } from '../../../../electron/main/files/recentFiles'
import { createShelfFile } from '../../../../electron/main/files/shelfFile'
import { temporaryFolder } from './temporaryFolder'

const folder = temporaryFolder()
let shell: Shell
let chosen: string | null
const printed = new TextEncoder().encode('%PDF-1.7')

beforeEach(() => {
  chosen = null
  const files = createHangerFiles()
  shell = {
    files,
    folder: createHangerFolder(folder.file('memory/folder.json'), files),
    recent: createRecentFiles(folder.file('recent.json')),
    shelf: createShelfFile(folder.file('memory/shelf.json')),
    draft: createDraftFile(folder.file('memory/draft.json')),
    inbox: { open: vi.fn() },
    home: folder.path,
    closing: () => ({ setUnsaved: vi.fn(), closeAfterSave: vi.fn() }),
    chooseHanger: async () => chosen,
    chooseFolder: async () => chosen,
    chooseShelf: async () => chosen,
    chooseTarget: vi.fn(async () => chosen),
    printPage: async () => printed,
    printOnPaper: vi.fn(async () => ({ ok: true as const })),
  }
})

test('a dialog that is dismissed is no failure', async () => {
  const answers = createAnswerers(shell)
  expect(await answers.openHanger.answer()).toEqual({ ok: true, hanger: null })
  expect(await answers.saveHangerAs.answer('Fern', '{}')).toEqual({ ok: true, saved: null })
  expect(await answers.savePdf.answer('Fern')).toEqual({ ok: true, name: null })
  expect(await answers.exportText.answer('Fern', 'svg', '<svg/>')).toEqual({ ok: true, name: null })
  expect(await answers.importShelfText.answer()).toEqual({ ok: true, imported: null })
  expect(await answers.chooseFolder.answer()).toEqual({ ok: true, folder: null })
})

test('what was opened or saved is recent, what could not be is not', async () => {
  const answers = createAnswerers(shell)
  await writeFile(folder.file('fern.strandwise'), '{}')
  chosen = folder.file('fern.strandwise')
  await answers.openHanger.answer()
  chosen = folder.file('ivy.strandwise')
  await answers.saveHangerAs.answer('Ivy', '{}')
  chosen = folder.file('gone/moss.strandwise')
  expect(await answers.saveHangerAs.answer('Moss', '{}')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  const recent = await answers.recent.answer()
  expect(recent.map(({ name, place }) => [name, place?.replace(/[\\/]$/, '')])).toEqual([['ivy.strandwise', '~'], ['fern.strandwise', '~']])
})

test('a recent file that is gone is forgotten, one that cannot be read is not', async () => {
  const answers = createAnswerers(shell)
  chosen = folder.file('fern.strandwise')
  await answers.saveHangerAs.answer('Fern', '{}')
  const [fern] = await answers.recent.answer()
  await writeFile(chosen, Buffer.from([0xff]))
  expect(await answers.openRecent.answer(fern?.token ?? '')).toMatchObject({ ok: false, problem: { code: 'NOT_TEXT' } })
  expect(await answers.recent.answer()).toHaveLength(1)
  await rm(chosen)
  expect(await answers.openRecent.answer(fern?.token ?? '')).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  expect(await answers.recent.answer()).toHaveLength(0)
})

test('a file from outside is opened like any other', async () => {
  await writeFile(folder.file('fern.strandwise'), '{"legs": 4}')
  expect(await openPath(shell, folder.file('fern.strandwise'))).toMatchObject({ ok: true, hanger: { text: '{"legs": 4}' } })
  expect(shell.recent.list()).toEqual([folder.file('fern.strandwise')])
})

test('exports are written under the name chosen, without a backup', async () => {
  const answers = createAnswerers(shell)
  chosen = folder.file('fern.svg')
  await answers.exportText.answer('Fern', 'svg', '<svg/>')
  expect(await answers.exportText.answer('Fern', 'svg', '<svg>½</svg>')).toEqual({ ok: true, name: 'fern.svg' })
  expect(shell.chooseTarget).toHaveBeenLastCalledWith('Fern', 'svg')
  expect(await readFile(chosen, 'utf8')).toBe('<svg>½</svg>')
  chosen = folder.file('fern.pdf')
  expect(await answers.savePdf.answer('Fern')).toEqual({ ok: true, name: 'fern.pdf' })
  expect(new Uint8Array(await readFile(chosen))).toEqual(printed)
  expect((await readdir(folder.path)).sort()).toEqual(['fern.pdf', 'fern.svg'])
})

test('the shelf is kept in its place, and another is read only where it was chosen', async () => {
  const answers = createAnswerers(shell)
  expect(await answers.loadShelf.answer()).toEqual({ ok: true, text: null })
  expect(await answers.saveShelf.answer('{"entries": []}')).toEqual({ ok: true })
  expect(await readFile(folder.file('memory/shelf.json'), 'utf8')).toBe('{"entries": []}')
  chosen = folder.file('friend.json')
  expect(await answers.importShelfText.answer()).toMatchObject({ ok: false, problem: { code: 'NOT_FOUND' } })
  await writeFile(chosen, '{}')
  expect(await answers.importShelfText.answer()).toEqual({ ok: true, imported: { name: 'friend.json', text: '{}' } })
  expect(await answers.setAsideShelf.answer()).toEqual({ ok: true, name: 'shelf-set-aside-1.json' })
  expect(shell.recent.list()).toEqual([])
})

test('a page that cannot be printed is told, and leaves no file', async () => {
  chosen = folder.file('fern.pdf')
  const answers = createAnswerers({ ...shell, printPage: () => Promise.reject(new Error('printing failed')) })
  expect(await answers.savePdf.answer('Fern')).toEqual({ ok: false, problem: { code: 'OTHER', detail: 'printing failed' } })
  expect(await readdir(folder.path)).toEqual([])
})

test('a hanger of the folder is opened by its token, and only then is it recent', async () => {
  const answers = createAnswerers(shell)
  await writeFile(folder.file('fern.strandwise'), '{"cord": 1}')
  chosen = folder.path
  expect(await answers.chooseFolder.answer()).toMatchObject({ ok: true, folder: { name: expect.stringMatching(/^strandwise-/) as string } })
  const outcome = await answers.listFolder.answer()
  const token = outcome.ok ? outcome.listing?.files[0]?.token ?? '' : ''
  expect(await answers.readListed.answer(token)).toEqual({ ok: true, text: '{"cord": 1}' })
  expect(await answers.recent.answer()).toEqual([])
  expect(await answers.openRecent.answer(token)).toMatchObject({ ok: true, hanger: { name: 'fern.strandwise', text: '{"cord": 1}' } })
  expect(await answers.recent.answer()).toMatchObject([{ name: 'fern.strandwise' }])
})
