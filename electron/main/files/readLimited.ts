import { constants } from 'node:fs'
import { open } from 'node:fs/promises'
import { FileError } from './fileProblem'

/** No ordinary file: a pipe, say, which one could wait on for ever. */
export const notOrdinary = (): FileError => new FileError('NOT_ORDINARY', 'not an ordinary file')

/**
 * A whole file, or null if it has more than `limit` bytes; never holds more than that in memory.
 * @throws errors of the system, `FileError`
 */
export async function readLimited(path: string, limit: number): Promise<Uint8Array | null> {
  // Without O_NONBLOCK, opening a pipe nobody writes to does not come back. (Windows has no such bit.)
  const file = await open(path, constants.O_RDONLY | constants.O_NONBLOCK)
  try {
    const about = await file.stat()
    if (!about.isFile() && !about.isDirectory()) throw notOrdinary()
    const bytes = new Uint8Array(limit + 1)
    let length = 0
    for (;;) {
      const { bytesRead } = await file.read(bytes, length, bytes.length - length)
      if (bytesRead === 0) return bytes.subarray(0, length)
      length += bytesRead
      if (length > limit) return null
    }
  } finally {
    await file.close()
  }
}
