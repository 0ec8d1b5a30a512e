import { mkdir, lstat, rename } from 'node:fs/promises'
import { dirname, join, parse } from 'node:path'
import type { ImportTextOutcome, LoadShelfOutcome, SaveOutcome, SetAsideOutcome } from '../../contract'
import { failureOf } from './fileProblem'
import { createHangerFiles } from './hangerFiles'

/** The one file the maker's own shelf is kept in. */
export interface ShelfFile {
  readonly load: () => Promise<LoadShelfOutcome>
  /** Writes only over what was last read or written here: else CHANGED_ON_DISK. */
  readonly save: (text: string) => Promise<SaveOutcome>
  /** Gives the file another name in its folder, so that its place is free; for one that nobody can read. */
  readonly setAside: () => Promise<SetAsideOutcome>
  /** The text of some other file. */
  readonly read: (path: string) => Promise<ImportTextOutcome>
}

const isThere = (path: string): Promise<boolean> => lstat(path).then(() => true, () => false)

/** A name in the folder that nothing has yet. */
async function freeNameBeside(path: string): Promise<string> {
  const { dir, name, ext } = parse(path)
  for (let number = 1; ; number++) {
    const free = join(dir, `${name}-set-aside-${number}${ext}`)
    if (!await isThere(free)) return free
  }
}

/** Read and written like a hanger file: whole or not at all, with a backup, within the same limit. */
export function createShelfFile(path: string): ShelfFile {
  const files = createHangerFiles()
  let token = files.tokenFor(path)
  return {
    async load() {
      const outcome = await files.open(path)
      if (outcome.ok) {
        token = outcome.hanger.token
        return { ok: true, text: outcome.hanger.text }
      }
      return outcome.problem.code === 'NOT_FOUND' ? { ok: true, text: null } : outcome
    },
    async save(text) {
      try {
        await mkdir(dirname(path), { recursive: true })
      } catch (error) {
        return failureOf(error)
      }
      return files.save(token, text, { overwrite: false })
    },
    async setAside() {
      try {
        if (!await isThere(path)) return { ok: true, name: null }
        const free = await freeNameBeside(path)
        await rename(path, free)
        return { ok: true, name: parse(free).base }
      } catch (error) {
        return failureOf(error)
      }
    },
    async read(other) {
      const outcome = await files.open(other)
      return outcome.ok ? { ok: true, imported: { name: outcome.hanger.name, text: outcome.hanger.text } } : outcome
    },
  }
}
