import { opendir, stat } from 'node:fs/promises'
import { basename, isAbsolute, join } from 'node:path'
import { FOLDER_FILES_LIMIT, HANGER_EXTENSION, type FileToken, type FolderFile, type HangerFolder, type ListFolderOutcome, type ReadListedOutcome } from '../../contract'
import { failureOf } from './fileProblem'
import type { HangerFiles } from './hangerFiles'
import { readState, writeState } from './stateFile'

/** The folder of the maker's own hangers. */
export interface HangerFolderPlace {
  /** Takes another folder, from now on and in later runs. */
  readonly choose: (path: string) => HangerFolder
  readonly list: () => Promise<ListFolderOutcome>
  /** @throws if the token is of no file listed here */
  readonly read: (token: FileToken) => Promise<ReadListedOutcome>
}

const isHangerName = (name: string): boolean => !name.startsWith('.') && name.toLowerCase().endsWith(`.${HANGER_EXTENSION}`)

/** Names of the hanger files in a folder, one more than are listed at most; folders within are not entered. */
async function hangerNames(path: string): Promise<string[]> {
  const names: string[] = []
  for await (const entry of await opendir(path)) {
    if (entry.isDirectory() || !isHangerName(entry.name)) continue
    names.push(entry.name)
    if (names.length > FOLDER_FILES_LIMIT) break
  }
  return names
}

const latestFirst = (a: FolderFile, b: FolderFile): number => (b.modified ?? 0) - (a.modified ?? 0) || a.name.localeCompare(b.name)

/** Keeps the folder's path in the file named, so that it outlives the run. */
export function createHangerFolder(stateFile: string, files: Pick<HangerFiles, 'tokenFor' | 'look'>): HangerFolderPlace {
  const stored = readState(stateFile)
  let folder = typeof stored === 'string' && isAbsolute(stored) ? stored : null
  const listed = new Set<FileToken>()

  // A root has no name but itself.
  const named = (path: string): HangerFolder => ({ name: basename(path) || path })

  async function about(path: string): Promise<FolderFile> {
    const token = files.tokenFor(path)
    listed.add(token)
    const found = await stat(path).catch(() => null)
    return { token, name: basename(path), size: found?.size ?? null, modified: found?.mtimeMs ?? null }
  }

  return {
    choose: (path) => {
      folder = path
      writeState(stateFile, path)
      return named(path)
    },
    list: async () => {
      const path = folder
      if (path === null) return { ok: true, listing: null }
      try {
        const names = await hangerNames(path)
        const found = await Promise.all(names.slice(0, FOLDER_FILES_LIMIT).map((name) => about(join(path, name))))
        return { ok: true, listing: { folder: named(path), files: found.sort(latestFirst), isCut: names.length > FOLDER_FILES_LIMIT } }
      } catch (error) {
        return failureOf(error)
      }
    },
    read: (token) => {
      if (!listed.has(token)) throw new Error('No file of the folder goes by this token')
      return files.look(token)
    },
  }
}
