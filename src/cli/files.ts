import { createReadStream, readdirSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import type { BatchWorld } from './batch/command'
import type { ListFolder } from './listFolder'
import type { ReadFile } from './readFile'

/** Largest file that is read, bytes; a hanger file has a few thousand. */
const LARGEST = 1024 * 1024

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file.',
  EISDIR: 'this is a folder, not a file.',
  EACCES: 'the file may not be read.',
  EPERM: 'the file may not be read.',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'the file is not UTF-8 text.',
}
const whyOf = (error: unknown): string => WHY[error instanceof Error && 'code' in error ? String(error.code) : ''] ?? 'the file could not be read.'

export const readFile: ReadFile = (file) => {
  try {
    const path = resolve(file)
    const { size } = statSync(path)
    if (size > LARGEST) return { ok: false, why: `the file has ${size} bytes; at most ${LARGEST} are read.` }
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path)) }
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
    return statSync(path).isFile() || !statSync(path).isDirectory() ? { ok: true, pieces: createReadStream(path) } : { ok: false, why: WHY['EISDIR'] ?? '' }
  } catch (error) {
    return { ok: false, why: whyOf(error) }
  }
}
