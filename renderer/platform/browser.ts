import type { FileToken, NamedFile, OpenOutcome, SaveOutcome } from '../../electron/contract'
import { BYTES_LIMIT, EXTENSION, fileName } from './browser/fileKind'
import { createBrowserFolder } from './browser/browserFolder'
import { droppedHandle } from './browser/droppedHandle'
import { failureOf, fileFailure } from './browser/fileProblem'
import { menuCommandOf } from './browser/menuCommandOf'
import { onlyFile } from './browser/onlyFile'
import { canPickTarget, pickFile, pickTarget } from './browser/pick'
import { printPage } from './browser/printPage'
import { readHanger } from './browser/readHanger'
import { recentTexts, rememberText } from './browser/recentTexts'
import { createDraftStorage, pagesByLocks } from './browser/draftStorage'
import { createShelfStorage } from './browser/shelfStorage'
import { download, writeThrough } from './browser/write'
import type { Platform } from './platform'

interface KnownFile {
  readonly name: string
  /** By which the file is written again; null where it can only be downloaded once more. */
  readonly handle: FileSystemFileHandle | null
  /** What was last read or written. */
  readonly text: string
}

const newToken = (): FileToken => Array.from(crypto.getRandomValues(new Uint32Array(4)), (part) => part.toString(36)).join('-')

const isTooLarge = (text: string): boolean => new TextEncoder().encode(text).length > BYTES_LIMIT

/** Throws where the browser keeps nothing for this page. */
const storageOf = (): Storage => localStorage

const keepPage = (event: BeforeUnloadEvent): void => { event.preventDefault() }

const nothing = (): void => undefined

/** A plain browser: files by its pickers where it has them, else by upload and download. */
export function browserPlatform(): Platform {
  const known = new Map<FileToken, KnownFile>()

  function know(token: FileToken, file: KnownFile): NamedFile {
    known.set(token, file)
    rememberText(storageOf, { token, name: file.name, text: file.text })
    return { token, name: file.name }
  }

  function find(token: FileToken): KnownFile {
    const file = known.get(token)
    if (!file) throw new Error('No file goes by this token')
    return file
  }

  async function read(token: FileToken, file: File, handle: FileSystemFileHandle | null): Promise<OpenOutcome> {
    const outcome = await readHanger(file)
    if (!outcome.ok) return outcome
    return { ok: true, hanger: { ...know(token, { name: file.name, handle, text: outcome.text }), text: outcome.text } }
  }

  async function hasChanged({ handle, text }: KnownFile): Promise<boolean> {
    if (!handle) return false
    const file = await handle.getFile().catch((error: unknown) => {
      if (error instanceof DOMException && error.name === 'NotFoundError') return null // nothing there to be overwritten
      throw error
    })
    if (!file) return false
    const found = await readHanger(file)
    return !found.ok || found.text !== text
  }

  async function write(token: FileToken, file: KnownFile): Promise<SaveOutcome> {
    if (isTooLarge(file.text)) return fileFailure('TOO_LARGE', `more than ${BYTES_LIMIT} bytes`)
    if (file.handle) await writeThrough(file.handle, file.text)
    else download(file.name, EXTENSION, file.text)
    know(token, file)
    return { ok: true }
  }

  return {
    openHanger: async () => {
      try {
        const picked = await pickFile(EXTENSION)
        return picked ? await read(newToken(), picked.file, picked.handle) : { ok: true, hanger: null }
      } catch (error) {
        return failureOf(error)
      }
    },
    openRecent: async (token) => {
      try {
        const handle = known.get(token)?.handle
        // A token of its own: what the page still holds may be of an earlier opening, if it does not take this one.
        if (handle) return await read(newToken(), await handle.getFile(), handle)
      } catch (error) {
        return failureOf(error)
      }
      const kept = recentTexts(storageOf).find((recent) => recent.token === token)
      if (!kept) return fileFailure('NOT_FOUND', 'the browser keeps it no more')
      return { ok: true, hanger: { ...know(token, { name: kept.name, handle: null, text: kept.text }), text: kept.text } }
    },
    openDropped: async (dropped) => {
      const file = onlyFile(dropped)
      const handle = droppedHandle(dropped)
      const outcome = await readHanger(file)
      if (!outcome.ok) return outcome
      return { ok: true, hanger: { ...know(newToken(), { name: file.name, handle: await handle, text: outcome.text }), text: outcome.text } }
    },
    recent: async () => recentTexts(storageOf).map(({ token, name }) => ({ token, name, place: null })),
    saveHanger: async (token, text, { overwrite }) => {
      const file = find(token)
      try {
        if (!overwrite && await hasChanged(file)) return fileFailure('CHANGED_ON_DISK', 'the text is not what was last read or saved')
        return await write(token, { ...file, text })
      } catch (error) {
        return failureOf(error)
      }
    },
    saveHangerAs: async (suggestedName, text) => {
      try {
        const handle = canPickTarget() ? await pickTarget(suggestedName, EXTENSION) : null
        if (!handle && canPickTarget()) return { ok: true, saved: null }
        const token = newToken()
        const name = handle?.name ?? fileName(suggestedName, EXTENSION)
        const outcome = await write(token, { name, handle, text })
        return outcome.ok ? { ok: true, saved: { token, name } } : outcome
      } catch (error) {
        return failureOf(error)
      }
    },
    savePdf: async (suggestedName) => {
      printPage(suggestedName)
      return { ok: true, name: null }
    },
    print: async () => {
      window.print()
      return { ok: true }
    },
    exportText: async (suggestedName, extension, text) => {
      const name = fileName(suggestedName, extension)
      if (!canPickTarget()) {
        download(name, extension, text)
        return { ok: true, name }
      }
      try {
        const handle = await pickTarget(suggestedName, extension)
        if (!handle) return { ok: true, name: null }
        await writeThrough(handle, text)
        return { ok: true, name: handle.name }
      } catch (error) {
        return failureOf(error)
      }
    },
    ...createShelfStorage(storageOf),
    ...createBrowserFolder((handle) => {
      const token = newToken()
      known.set(token, { name: handle.name, handle, text: '' })
      return token
    }),
    // Where the page is not from a secure place there are no locks.
    ...createDraftStorage(storageOf, pagesByLocks(navigator.locks), newToken()),
    importShelfText: async () => {
      try {
        const picked = await pickFile('json')
        if (!picked) return { ok: true, imported: null }
        const outcome = await readHanger(picked.file)
        return outcome.ok ? { ok: true, imported: { name: picked.file.name, text: outcome.text } } : outcome
      } catch (error) {
        return failureOf(error)
      }
    },
    setUnsaved: (unsaved) => {
      if (unsaved) window.addEventListener('beforeunload', keepPage)
      else window.removeEventListener('beforeunload', keepPage)
    },
    onMenu: (listener) => {
      const mac = navigator.userAgent.includes('Mac')
      const press = (event: KeyboardEvent): void => {
        const command = menuCommandOf(event, mac)
        if (command === null) return
        event.preventDefault()
        listener(command)
      }
      window.addEventListener('keydown', press)
      return () => { window.removeEventListener('keydown', press) }
    },
    // A browser opens no files from outside, and its own question on leaving offers no saving.
    onOpened: () => nothing,
    onSaveBeforeClose: () => nothing,
  }
}
