import { randomUUID } from 'node:crypto'
import { constants } from 'node:fs'
import { copyFile, link, lstat, open, realpath, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { errorCode, FileError, UNABLE } from './fileProblem'
import { inTurn } from './inTurn'
import { notOrdinary } from './readLimited'
import { sweepDrafts } from './sweepDrafts'

/** Errors of systems that cannot fsync a folder, or do not let it be opened. */
const NO_FOLDER_SYNC = new Set([...UNABLE, 'EISDIR', 'EACCES'])

async function whereAble(work: Promise<void>, unable: ReadonlySet<string> = UNABLE): Promise<void> {
  try {
    await work
  } catch (error) {
    if (!unable.has(errorCode(error))) throw error
  }
}

const draftBeside = (path: string): string => join(dirname(path), `.strandwise-${randomUUID()}.tmp`)

// A link is followed, so that the file it leads to is replaced and not the link.
async function followLink(path: string): Promise<string> {
  try {
    return await realpath(path)
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error
    const dangling = await lstat(path).then(() => true, () => false)
    if (dangling) throw new FileError('BROKEN_LINK', 'the link leads to nothing')
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
      if (!about.isFile()) throw notOrdinary()
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
    if (mode !== null) await whereAble(file.chmod(mode)) // what the umask took away
    await file.writeFile(bytes)
    await whereAble(file.sync())
  } finally {
    await file.close()
  }
}

async function sync(path: string, flags: string): Promise<void> {
  const file = await open(path, flags)
  try {
    await file.sync()
  } finally {
    await file.close()
  }
}

/** The old content under a second name; disks without links get a copy. */
async function secondName(path: string, draft: string): Promise<void> {
  try {
    await link(path, draft)
  } catch {
    await copyFile(path, draft, constants.COPYFILE_EXCL | constants.COPYFILE_FICLONE)
    await whereAble(sync(draft, 'r+'))
  }
}

export interface WriteOptions {
  /** Whether what the file held before is kept beside it, under its name with `~` appended. */
  readonly backup: boolean
  /** Asked when all is ready, just before the name is given its new content; where it throws, all stays as it was. */
  readonly lastLook?: () => Promise<void>
}

/**
 * Writes a file whole or not at all: at every moment, a crash or power cut included, the name leads to
 * the old content or to the new. What an earlier writing that was cut short left beside it is taken away. Keeps the file's
 * mode and a symbolic link to it; a hard link to it keeps the old content. Refuses a file that may not itself be written.
 * @throws errors of the system, `FileError`; then the old content is untouched, save where the folder alone could not be
 * brought to the disk: then the name leads to the new content already, and only a power cut could take it back
 */
export async function writeAtomic(path: string, bytes: Uint8Array, { backup, lastLook }: WriteOptions): Promise<void> {
  const target = await followLink(path)
  const mode = await modeIfWritable(target)
  const folder = dirname(target)
  const draft = draftBeside(target)
  const before = draftBeside(target)
  const keeps = backup && mode !== null
  try {
    await writeThrough(draft, bytes, mode)
    if (keeps) await secondName(target, before)
    await inTurn(target, async () => {
      await lastLook?.()
      if (keeps) await rename(before, `${target}~`)
      await rename(draft, target)
    })
  } finally {
    // After a save too: where one before it stopped between the two, both are names of one content, and renaming does nothing.
    for (const left of [draft, before]) await rm(left, { force: true }).catch(() => undefined)
  }
  await whereAble(sync(folder, 'r'), NO_FOLDER_SYNC)
  await sweepDrafts(folder, Date.now())
}
