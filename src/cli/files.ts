import { closeSync, createReadStream, openSync, readdirSync, readSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { BatchWorld } from './batch/command'
import type { ListFolder } from './listFolder'
import type { ReadFile } from './readFile'
import { whyOf } from './whyOf'

/** Largest file that is read, bytes; a hanger file has a few thousand. */
const LARGEST = 1024 * 1024

/** A file's bytes; null where it has more than are read. What does not tell its size, such as a pipe, is read no further either. */
function bytesOf(path: string): Uint8Array | null {
  const fd = openSync(path, 'r')
  try {
    const bytes = new Uint8Array(LARGEST + 1)
    let length = 0
    for (;;) {
      const read = readSync(fd, bytes, length, bytes.length - length, null)
      if (read === 0) return bytes.subarray(0, length)
      length += read
      if (length > LARGEST) return null
    }
  } finally {
    closeSync(fd)
  }
}

export const readFile: ReadFile = (file) => {
  try {
    const path = resolve(file)
    const { size } = statSync(path)
    const bytes = size > LARGEST ? null : bytesOf(path)
    if (bytes === null) return { ok: false, why: `the file has ${size > LARGEST ? size : `more than ${LARGEST}`} bytes; at most ${LARGEST} are read.` }
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch (error) {
    return { ok: false, why: whyOf(error) }
  }
}

export const listFolder: ListFolder = (path) => {
  try {
    if (!statSync(resolve(path)).isDirectory()) return null
    return readdirSync(resolve(path)).filter((name) => name.endsWith('.strandwise')).sort().map((name) => join(path, name))
  } catch {
    // What cannot be looked into is told when it is read.
    return null
  }
}

/** A file of any size, piece by piece. */
export const openFile: BatchWorld['openFile'] = (file) => {
  try {
    const path = resolve(file)
    if (statSync(path).isDirectory()) return { ok: false, why: 'this is a folder, not a file.' }
    return { ok: true, pieces: createReadStream(path) }
  } catch (error) {
    return { ok: false, why: whyOf(error) }
  }
}
