import { isAbsolute } from 'node:path'
import { readState, writeState } from './stateFile'

const LIMIT = 12

/** Paths of the hanger files used last, the latest first. */
export interface RecentFiles {
  readonly list: () => readonly string[]
  readonly remember: (path: string) => void
  readonly forget: (path: string) => void
}

const isPath = (value: unknown): value is string => typeof value === 'string' && isAbsolute(value)

/** Keeps the list in the file named, so that it outlives the run. */
export function createRecentFiles(stateFile: string): RecentFiles {
  const stored = readState(stateFile)
  let paths = Array.isArray(stored) ? stored.filter(isPath).slice(0, LIMIT) : []

  function change(next: string[]): void {
    paths = next
    writeState(stateFile, paths)
  }

  return {
    list: () => paths,
    remember: (path) => { change([path, ...paths.filter((other) => other !== path)].slice(0, LIMIT)) },
    forget: (path) => { change(paths.filter((other) => other !== path)) },
  }
}
