import { mkdirSync, readFileSync, rmSync, rmdirSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'

const OWNERLESS_MS = 10_000
const FORGOTTEN_MS = 30 * 60_000

const tryMakeFolder = (path) => {
  try {
    mkdirSync(path)
    return true
  } catch (error) {
    if (error.code === 'EEXIST') return false
    throw error
  }
}

const ageOf = (path) => {
  try {
    return Date.now() - statSync(path).mtimeMs
  } catch {
    return 0
  }
}

const runs = (pid) => {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

/**
 * Whether a lock was left behind: its owner no longer runs, it never got an owner, or it is so old
 * that the owner's number must belong to another process by now.
 * @param {string} lock
 */
export function isLeftBehind(lock) {
  const age = ageOf(lock)
  if (age > FORGOTTEN_MS) return true
  try {
    return !runs(Number(readFileSync(join(lock, 'owner'), 'utf8')))
  } catch {
    return age > OWNERLESS_MS
  }
}

// Of several waiting processes only the holder of the guard may remove the lock, and looks again first:
// else the second would remove the lock the first has just taken.
function clearLeftBehind(lock) {
  const guard = `${lock}.guard`
  if (!tryMakeFolder(guard)) {
    if (ageOf(guard) > OWNERLESS_MS) rmSync(guard, { recursive: true, force: true })
    return
  }
  try {
    if (isLeftBehind(lock)) rmSync(lock, { recursive: true, force: true })
  } finally {
    rmdirSync(guard)
  }
}

/**
 * Does some work while no other process holds the lock.
 * @template T
 * @param {string} lock a folder that exists as long as the lock is held
 * @param {() => void} onWait called once if another process holds it
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withLock(lock, onWait, work) {
  mkdirSync(dirname(lock), { recursive: true })
  for (let told = false; !tryMakeFolder(lock);) {
    if (isLeftBehind(lock)) {
      clearLeftBehind(lock)
      continue
    }
    if (!told) onWait()
    told = true
    await pause(200)
  }
  try {
    writeFileSync(join(lock, 'owner'), String(process.pid))
    return await work()
  } finally {
    rmSync(lock, { recursive: true, force: true })
  }
}
