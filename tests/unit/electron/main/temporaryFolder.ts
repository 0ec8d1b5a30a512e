import { chmodSync, existsSync, mkdtempSync, realpathSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach } from 'vitest'

/** Where flushing takes no time, for tests of hundreds of saves. */
export const IN_MEMORY = existsSync('/dev/shm') ? '/dev/shm' : tmpdir()

/** A new empty folder before each test, gone after it. */
export function temporaryFolder(within = tmpdir()): { readonly path: string, file(name: string): string } {
  let path = ''
  beforeEach(() => {
    path = realpathSync(mkdtempSync(join(within, 'strandwise-')))
    chmodSync(path, 0o777)
  })
  afterEach(() => { rmSync(path, { recursive: true, force: true }) })
  return {
    get path() { return path },
    file: (name) => join(path, name),
  }
}

/** Runs something without the superuser's right to write everything, which tests in a container have. */
export async function asOrdinaryUser<Value>(work: () => Promise<Value>): Promise<Value> {
  if (process.getuid?.() !== 0) return work()
  process.seteuid?.(65_534)
  try {
    return await work()
  } finally {
    process.seteuid?.(0)
  }
}
