import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { runCommand } from './commands'
import type { ListFolder } from './listFolder'
import type { ReadFile } from './readFile'

/** Largest file that is read, bytes; a hanger file has a few thousand. */
const LARGEST = 1024 * 1024

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file.',
  EISDIR: 'this is a folder, not a file.',
  EACCES: 'the file may not be read.',
  EPERM: 'the file may not be read.',
}

const readFile: ReadFile = (file) => {
  try {
    const path = resolve(file)
    const { size } = statSync(path)
    if (size > LARGEST) return { ok: false, why: `the file has ${size} bytes; at most ${LARGEST} are read.` }
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path)) }
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : ''
    return { ok: false, why: WHY[code] ?? (code === 'ERR_ENCODING_INVALID_ENCODED_DATA' ? 'the file is not UTF-8 text.' : 'the file could not be read.') }
  }
}

const listFolder: ListFolder = (path) => {
  try {
    if (!statSync(resolve(path)).isDirectory()) return null
    return readdirSync(resolve(path)).filter((name) => name.endsWith('.strandwise')).sort().map((name) => join(path, name))
  } catch {
    // What cannot be looked into is told when it is read.
    return null
  }
}

/** The day by the clock of the place, YYYY-MM-DD. */
function todayText(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

const { out, err, exit } = runCommand(process.argv.slice(2), readFile, todayText(new Date()), listFolder)
process.exitCode = exit
process.stderr.write(err)
process.stdout.write(out)
