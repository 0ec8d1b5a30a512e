import type { FileToken, FolderFile, FOLDER_FILES_LIMIT } from '../../../electron/contract'
import type { Platform } from '../platform'
import { EXTENSION } from './fileKind'
import { failureOf } from './fileProblem'
import { nullIfDismissed } from './pick'
import { readHanger } from './readHanger'

/** Most files listed; held to the desktop's by its type. */
const LIMIT: typeof FOLDER_FILES_LIMIT = 5000

// Some browsers only, so the standard library of types does not know it.
interface FolderPicker {
  readonly showDirectoryPicker?: () => Promise<FileSystemDirectoryHandle>
}
type Entries = AsyncIterable<FileSystemHandle>

const picker = (): FolderPicker => window as unknown as FolderPicker

const isHanger = (entry: FileSystemHandle): entry is FileSystemFileHandle =>
  entry.kind === 'file' && !entry.name.startsWith('.') && entry.name.toLowerCase().endsWith(`.${EXTENSION}`)

const latestFirst = (a: FolderFile, b: FolderFile): number => (b.modified ?? 0) - (a.modified ?? 0) || a.name.localeCompare(b.name)

/**
 * The folder of the maker's own hangers by the browser's picker, where it has one; the next visit asks for it anew.
 *
 * @param know gives a file a token by which it can be opened and saved too
 */
export function createBrowserFolder(know: (handle: FileSystemFileHandle) => FileToken): Pick<Platform, 'canChooseFolder' | 'chooseFolder' | 'listFolder' | 'readListed'> {
  let folder: FileSystemDirectoryHandle | null = null
  /** By name, so that a file keeps its token from one listing to the next. */
  let tokens = new Map<string, FileToken>()
  const handles = new Map<FileToken, FileSystemFileHandle>()

  async function about(handle: FileSystemFileHandle): Promise<FolderFile> {
    const token = tokens.get(handle.name) ?? know(handle)
    tokens.set(handle.name, token)
    handles.set(token, handle)
    const file = await handle.getFile().catch(() => null)
    return { token, name: handle.name, size: file?.size ?? null, modified: file?.lastModified ?? null }
  }

  return {
    canChooseFolder: picker().showDirectoryPicker !== undefined,
    chooseFolder: async () => {
      try {
        const chosen = await nullIfDismissed(picker().showDirectoryPicker?.call(window) ?? Promise.reject(new Error('This browser has no picker')))
        if (chosen === null) return { ok: true, folder: null }
        folder = chosen
        tokens = new Map()
        return { ok: true, folder: { name: chosen.name } }
      } catch (error) {
        return failureOf(error)
      }
    },
    listFolder: async () => {
      if (folder === null) return { ok: true, listing: null }
      try {
        const found: FileSystemFileHandle[] = []
        for await (const entry of (folder as unknown as { values: () => Entries }).values()) {
          if (isHanger(entry)) found.push(entry)
          if (found.length > LIMIT) break
        }
        const files = await Promise.all(found.slice(0, LIMIT).map(about))
        return { ok: true, listing: { folder: { name: folder.name }, files: files.sort(latestFirst), isCut: found.length > LIMIT } }
      } catch (error) {
        return failureOf(error)
      }
    },
    readListed: async (token) => {
      const handle = handles.get(token)
      if (handle === undefined) throw new Error('No file of the folder goes by this token')
      try {
        return await readHanger(await handle.getFile())
      } catch (error) {
        return failureOf(error)
      }
    },
  }
}
