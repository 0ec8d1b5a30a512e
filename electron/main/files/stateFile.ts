import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

/**
 * What the shell remembers between runs, as JSON; null if there is none or it cannot be read. Whatever
 * comes back may have been written by anyone: its shape is for the caller to check.
 */
export function readState(path: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    return null
  }
}

/** Remembers; where that fails the app does without, for nobody's work is in it. */
export function writeState(path: string, state: unknown): void {
  try {
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(`${path}.tmp`, `${JSON.stringify(state)}\n`)
    renameSync(`${path}.tmp`, path)
  } catch {
    // Forgotten.
  }
}
