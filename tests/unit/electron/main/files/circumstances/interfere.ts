import fs, { type FileHandle } from 'node:fs/promises'
import { constants } from 'node:os'
import { syncBuiltinESMExports } from 'node:module'

const CALLS = ['realpath', 'lstat', 'open', 'link', 'symlink', 'readlink', 'copyFile', 'rename', 'readdir', 'mkdir', 'rm'] as const
const OF_A_FILE = ['stat', 'chmod', 'read', 'writeFile', 'sync', 'close'] as const

type Call = (...args: unknown[]) => Promise<unknown>
type Calls = Record<string, Call>

/** An error as the system reports it. */
export const systemError = (name: keyof typeof constants.errno, syscall = 'write'): Error =>
  Object.assign(new Error(`${name}: words, ${syscall} '/home/ada/fern'`), { code: name, errno: -constants.errno[name], syscall })

/** What is done before a call of the file system, by its name and its number from 0: it may throw as the system does, or do as another program does. */
export type Interference = (call: string, number: number) => void

/** Undisturbed. */
export const nothing: Interference = () => undefined

/** The one call refused. */
export const failAt = (at: number, name: keyof typeof constants.errno): Interference => (call, number) => { if (number === at) throw systemError(name, call) }

/** Runs `work` with something done before each call of the file system. A writing that is stopped has written half. Answers what the calls were. */
export async function interfere<Value>(what: Interference, work: () => Promise<Value>): Promise<{ readonly value: Value, readonly calls: readonly string[] }> {
  const calls: string[] = []
  const real: Calls = {}
  const table = fs as unknown as Calls

  function step(name: string): void {
    calls.push(name)
    what(name, calls.length - 1)
  }

  const watched = (file: FileHandle): FileHandle => {
    const own = file as unknown as Calls
    for (const name of OF_A_FILE) {
      const call = own[name]?.bind(file) as Call
      own[name] = async (...args) => {
        try {
          step(name)
        } catch (error) {
          // What the system refuses to close is closed all the same.
          if (name === 'close') await call()
          if (name === 'writeFile') await call((args[0] as Uint8Array).subarray(0, (args[0] as Uint8Array).length / 2))
          throw error
        }
        return call(...args)
      }
    }
    return file
  }

  for (const name of CALLS) {
    const call = table[name] as Call
    real[name] = call
    table[name] = async (...args) => {
      step(name)
      const answer = await call(...args)
      return name === 'open' ? watched(answer as FileHandle) : answer
    }
  }
  syncBuiltinESMExports()
  try {
    return { value: await work(), calls }
  } finally {
    Object.assign(table, real)
    syncBuiltinESMExports()
  }
}
