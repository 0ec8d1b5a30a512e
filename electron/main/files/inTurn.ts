import { createHash, randomUUID } from 'node:crypto'
import { lstat, readlink, rm, symlink } from 'node:fs/promises'
import { hostname } from 'node:os'
import { basename, dirname, join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { errorCode, FileError, UNABLE } from './fileProblem'

/** Whoever is in turn is so for a few milliseconds; after this long nobody is, ms. */
const STALE = 10_000
/** How long and how often it is waited for the turn, ms. */
const PATIENCE = 2000
const PAUSE = 10

/** Signs of the turns taken in this run and not given back. */
const held = new Set<string>()

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return errorCode(error) === 'EPERM'
  }
}

async function isLeftBehind(lock: string): Promise<boolean> {
  try {
    const sign = await readlink(lock)
    const [pid, host] = sign.split('@')
    if (host === hostname() && (Number(pid) === process.pid ? !held.has(sign) : !isAlive(Number(pid)))) return true
    return Date.now() - (await lstat(lock)).mtimeMs > STALE
  } catch (error) {
    return errorCode(error) !== 'ENOENT'
  }
}

/** Whether the turn was taken; false where the disk knows no such links, so that one does without. */
async function take(lock: string, sign: string): Promise<boolean> {
  for (let waited = 0; ; waited += PAUSE) {
    try {
      await symlink(sign, lock)
      held.add(sign)
      return true
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') {
        if (UNABLE.has(errorCode(error))) return false
        throw error
      }
    }
    if (waited > PATIENCE) throw new FileError('BUSY', 'another run of the app is saving it')
    if (await isLeftBehind(lock)) await rm(lock, { force: true })
    else await setTimeout(PAUSE)
  }
}

/**
 * Does something with a file while no other run of the app does, on this machine or, by a share, on another. A link
 * beside the file that leads nowhere says whose turn it is, for it comes into being with what it says.
 * @throws errors of the system, `FileError` BUSY where the turn does not come
 */
export async function inTurn(path: string, work: () => Promise<void>): Promise<void> {
  const lock = join(dirname(path), `.strandwise-${createHash('sha256').update(basename(path)).digest('hex').slice(0, 16)}.lock`)
  const sign = `${process.pid}@${hostname()}@${randomUUID()}`
  const taken = await take(lock, sign)
  try {
    await work()
  } finally {
    if (taken) await rm(lock, { force: true }).catch(() => undefined)
    held.delete(sign)
  }
}
