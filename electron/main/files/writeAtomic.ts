import { randomUUID } from 'node:crypto'
import { constants } from 'node:fs'
import { copyFile, link, lstat, open, realpath, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { errorCode } from './fileProblem'
import { NotOrdinaryError } from './readLimited'
import { sweepDrafts } from './sweepDrafts'

/** Errors of systems that cannot fsync a folder, or do not let it be opened. */
const NO_FOLDER_SYNC = new Set(['EINVAL', 'ENOTSUP', 'EOPNOTSUPP', 'EISDIR', 'EACCES', 'EPERM'])

const draftBeside = (path: string): string => join(dirname(path), `.strandwise-${randomUUID()}.tmp`)

// A link is followed, so that the file it leads to is replaced and not the link.
async function followLink(path: string): Promise<string> {
  try {
    return await realpath(path)
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error
    const dangling = await lstat(path).then(() => true, () => false)
    if (dangling) throw error
    return path
  }
}

// Replacing a file asks leave of its folder only. Opening it for writing asks the file itself too, and
// finds out whether it is a folder.
async function modeIfWritable(path: string): Promise<number | null> {
  try {
    const file = await open(path, 'r+')
    try {
      const about = await file.stat()
      if (!about.isFile()) throw new NotOrdinaryError()
      return about.mode & 0o7777
    } finally {
      await file.close()
    }
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null
    throw error
  }
}

async function writeThrough(path: string, bytes: Uint8Array, mode: number | null): Promise<void> {
  const file = await open(path, 'wx', mode ?? 0o666)
  try {
    if (mode !== null) await file.chmod(mode) // what the umask took away
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
}

/** The old content under a second name, whole at every moment too; disks without links get a copy. */
async function keepAsBackup(path: string): Promise<void> {
  const draft = draftBeside(path)
  try {
    await link(path, draft).catch(() => copyFile(path, draft, constants.COPYFILE_EXCL | constants.COPYFILE_FICLONE))
    await rename(draft, `${path}~`)
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined)
    throw error
  }
}

async function syncFolder(path: string): Promise<void> {
  try {
    const folder = await open(path, 'r')
    try {
      await folder.sync()
    } finally {
      await folder.close()
    }
  } catch (error) {
    if (!NO_FOLDER_SYNC.has(errorCode(error))) throw error
  }
}

export interface WriteOptions {
  /** Whether what the file held before is kept beside it, under its name with `~` appended. */
  readonly backup: boolean
}

/**
 * Writes a file whole or not at all: at every moment, a crash or power cut included, the name leads to
 * the old content or to the new. What an earlier writing that was cut short left beside it is taken away. Keeps the file's mode; refuses a file that may not itself be written.
 * @throws errors of the system, `NotOrdinaryError`; then the old content is untouched
 */
export async function writeAtomic(path: string, bytes: Uint8Array, { backup }: WriteOptions): Promise<void> {
  const target = await followLink(path)
  const mode = await modeIfWritable(target)
  const folder = dirname(target)
  const draft = draftBeside(target)
  try {
    await writeThrough(draft, bytes, mode)
    if (backup && mode !== null) await keepAsBackup(target)
    await rename(draft, target)
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined)
    throw error
  }
  await syncFolder(folder)
  await sweepDrafts(folder, Date.now())
}
