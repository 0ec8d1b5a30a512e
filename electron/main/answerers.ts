import { basename } from 'node:path'
import { HANGER_EXTENSION, type ExportOutcome, type OpenOutcome, type Paper, type PrintOutcome } from '../contract'
import type { Answerers } from './answerRequests'
import { isExportExtension, isFlag, isPaper, isSaveOptions, isText, isTextOrNull } from './checks'
import type { Closing } from './closing'
import type { DraftFile } from './files/draftFile'
import { failureOf, fileFailure } from './files/fileProblem'
import type { HangerFolderPlace } from './files/hangerFolder'
import type { HangerFiles } from './files/hangerFiles'
import { placeOf } from './files/placeOf'
import type { RecentFiles } from './files/recentFiles'
import type { ShelfFile } from './files/shelfFile'
import { writeAtomic } from './files/writeAtomic'
import type { Inbox } from './inbox'

/** Largest text that is exported, bytes. */
const EXPORT_BYTES_LIMIT = 32 * 1024 * 1024

/** What the answers are made with. */
export interface Shell {
  readonly files: HangerFiles
  readonly recent: RecentFiles
  readonly shelf: ShelfFile
  readonly draft: DraftFile
  readonly folder: HangerFolderPlace
  readonly inbox: Pick<Inbox, 'open'>
  /** The user's home folder. */
  readonly home: string
  readonly closing: () => Pick<Closing, 'setUnsaved' | 'closeAfterSave'>
  readonly chooseHanger: () => Promise<string | null>
  readonly chooseFolder: () => Promise<string | null>
  readonly chooseShelf: () => Promise<string | null>
  readonly chooseTarget: (suggestedName: string, extension: string) => Promise<string | null>
  readonly printPage: () => Promise<Uint8Array>
  readonly printOnPaper: (paper: Paper) => Promise<PrintOutcome>
}

/** Opens a file wherever its path came from, and keeps the list of recent files true. */
export async function openPath({ files, recent }: Pick<Shell, 'files' | 'recent'>, path: string): Promise<OpenOutcome> {
  const outcome = await files.open(path)
  if (outcome.ok) recent.remember(files.pathOf(outcome.hanger.token))
  else if (outcome.problem.code === 'NOT_FOUND') recent.forget(path)
  return outcome
}

/** The answers to all the page can ask. */
export function createAnswerers(shell: Shell): Answerers {
  const { files, recent, shelf, draft, folder, inbox, home } = shell

  async function writeExport(suggestedName: string, extension: string, make: () => Promise<Uint8Array>): Promise<ExportOutcome> {
    const path = await shell.chooseTarget(suggestedName, extension)
    if (path === null) return { ok: true, name: null }
    try {
      await writeAtomic(path, await make(), { backup: false })
      return { ok: true, name: basename(path) }
    } catch (error) {
      return failureOf(error)
    }
  }

  return {
    openHanger: {
      takes: [],
      answer: async () => {
        const path = await shell.chooseHanger()
        return path === null ? { ok: true, hanger: null } : openPath(shell, path)
      },
    },
    openRecent: { takes: [isText], answer: (token) => openPath(shell, files.pathOf(token)) },
    recent: {
      takes: [],
      answer: () => recent.list().map((path) => ({ token: files.tokenFor(path), name: basename(path), place: placeOf(path, home) })),
    },
    saveHanger: { takes: [isText, isText, isSaveOptions], answer: (token, text, options) => files.save(token, text, options) },
    saveHangerAs: {
      takes: [isText, isText],
      answer: async (suggestedName, text) => {
        const path = await shell.chooseTarget(suggestedName, HANGER_EXTENSION)
        if (path === null) return { ok: true, saved: null }
        const outcome = await files.saveAs(path, text)
        if (outcome.ok) recent.remember(path)
        return outcome
      },
    },
    savePdf: { takes: [isText], answer: (suggestedName) => writeExport(suggestedName, 'pdf', shell.printPage) },
    print: { takes: [isPaper], answer: shell.printOnPaper },
    exportText: {
      takes: [isText, isExportExtension, isText],
      answer: async (suggestedName, extension, text) => {
        const bytes = new TextEncoder().encode(text)
        if (bytes.length > EXPORT_BYTES_LIMIT) return fileFailure('TOO_LARGE', `more than ${EXPORT_BYTES_LIMIT} bytes`)
        return writeExport(suggestedName, extension, async () => bytes)
      },
    },
    loadShelf: { takes: [], answer: shelf.load },
    saveShelf: { takes: [isText], answer: shelf.save },
    setAsideShelf: { takes: [], answer: shelf.setAside },
    importShelfText: {
      takes: [],
      answer: async () => {
        const path = await shell.chooseShelf()
        return path === null ? { ok: true, imported: null } : shelf.read(path)
      },
    },
    chooseFolder: {
      takes: [],
      answer: async () => {
        const path = await shell.chooseFolder()
        return { ok: true, folder: path === null ? null : folder.choose(path) }
      },
    },
    listFolder: { takes: [], answer: folder.list },
    readListed: { takes: [isText], answer: folder.read },
    keepDraft: { takes: [isTextOrNull], answer: draft.keep },
    takeDraft: { takes: [], answer: draft.take },
    setUnsaved: { takes: [isFlag], answer: (unsaved) => { shell.closing().setUnsaved(unsaved) } },
    takeOpened: { takes: [], answer: () => { inbox.open() } },
    closeAfterSave: { takes: [], answer: () => { shell.closing().closeAfterSave() } },
  }
}
