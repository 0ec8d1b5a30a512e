import { createHash, randomUUID } from 'node:crypto'
import { basename, resolve } from 'node:path'
import { HANGER_BYTES_LIMIT, type FileFailure, type FileToken, type NamedFile, type OpenedHanger, type ReadListedOutcome, type SaveOptions, type SaveOutcome } from '../../contract'
import { errorCode, failureOf, FileError, fileFailure } from './fileProblem'
import { readLimited } from './readLimited'
import { writeAtomic } from './writeAtomic'

/** A file as one opening of it, or one name chosen for it, knows it. */
interface KnownFile {
  readonly token: FileToken
  readonly path: string
  /** Of the content when it was last read or written here; null if it never was. */
  fingerprint: string | null
}

/** The files the user has pointed at, and what was last seen in them. */
export interface HangerFiles {
  /** The token that stands for a path in a list, the same one every time; each opening gives another. */
  readonly tokenFor: (path: string) => FileToken
  /** @throws if the token was never handed out */
  readonly pathOf: (token: FileToken) => string
  readonly open: (path: string) => Promise<{ readonly ok: true, readonly hanger: OpenedHanger } | FileFailure>
  /** The text alone: what was last seen in the file, for saving over it, stays as it was. */
  readonly look: (token: FileToken) => Promise<ReadListedOutcome>
  readonly save: (token: FileToken, text: string, options: SaveOptions) => Promise<SaveOutcome>
  /** Writes under a name the user has just chosen, and so has agreed to replace what is there. */
  readonly saveAs: (path: string, text: string) => Promise<{ readonly ok: true, readonly saved: NamedFile } | FileFailure>
}

const TOO_LARGE = `more than ${HANGER_BYTES_LIMIT} bytes`

const fingerprintOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

// Null where there is no file to be overwritten.
async function fingerprintOnDisk(path: string): Promise<string | null> {
  try {
    const bytes = await readLimited(path, HANGER_BYTES_LIMIT)
    return bytes ? fingerprintOf(bytes) : TOO_LARGE
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null
    throw error
  }
}

export function createHangerFiles(): HangerFiles {
  const byToken = new Map<FileToken, KnownFile>()
  const byPath = new Map<string, KnownFile>()
  let lastWrite: Promise<unknown> = Promise.resolve()

  function know(path: string, fingerprint: string | null): KnownFile {
    const known = { token: randomUUID(), path: resolve(path), fingerprint }
    byToken.set(known.token, known)
    return known
  }

  function knowByPath(path: string): KnownFile {
    const known = byPath.get(resolve(path)) ?? know(path, null)
    byPath.set(known.path, known)
    return known
  }

  function find(token: FileToken): KnownFile {
    const known = byToken.get(token)
    if (!known) throw new Error('No file goes by this token')
    return known
  }

  // One after the other: two saves of one file that overlap would take each other for somebody else.
  function inTurn<Value>(work: () => Promise<Value>): Promise<Value> {
    const result = lastWrite.then(work)
    lastWrite = result.catch(() => undefined)
    return result
  }

  async function write(file: KnownFile, text: string, overwrite: boolean): Promise<SaveOutcome> {
    const bytes = new TextEncoder().encode(text)
    if (bytes.length > HANGER_BYTES_LIMIT) return fileFailure('TOO_LARGE', TOO_LARGE)
    const mine = fingerprintOf(bytes)
    // What is there already is nobody else's, though it be written by another.
    const lastLook = async (): Promise<void> => {
      const found = await fingerprintOnDisk(file.path)
      if (found !== null && found !== file.fingerprint && found !== mine) throw new FileError('CHANGED_ON_DISK', 'the content is not what was last read or saved')
    }
    try {
      await writeAtomic(file.path, bytes, overwrite ? { backup: true } : { backup: true, lastLook })
    } catch (error) {
      // A save that failed at its very end has written: the next must not take that for somebody else's.
      if (await fingerprintOnDisk(file.path).catch(() => null) === mine) file.fingerprint = mine
      return failureOf(error)
    }
    file.fingerprint = mine
    return { ok: true }
  }

  return {
    tokenFor: (path) => knowByPath(path).token,
    pathOf: (token) => find(token).path,
    async open(path) {
      try {
        const bytes = await readLimited(path, HANGER_BYTES_LIMIT)
        if (!bytes) return fileFailure('TOO_LARGE', TOO_LARGE)
        const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
        // Not the one by path: what the page still holds may be of an earlier opening, if it does not take this one.
        const file = know(path, fingerprintOf(bytes))
        return { ok: true, hanger: { token: file.token, name: basename(file.path), text } }
      } catch (error) {
        return failureOf(error)
      }
    },
    async look(token) {
      try {
        const bytes = await readLimited(find(token).path, HANGER_BYTES_LIMIT)
        return bytes ? { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) } : fileFailure('TOO_LARGE', TOO_LARGE)
      } catch (error) {
        return failureOf(error)
      }
    },
    save: (token, text, { overwrite }) => {
      const file = find(token)
      return inTurn(() => write(file, text, overwrite))
    },
    async saveAs(path, text) {
      const file = knowByPath(path)
      const outcome = await inTurn(() => write(file, text, true))
      return outcome.ok ? { ok: true, saved: { token: file.token, name: basename(file.path) } } : outcome
    },
  }
}
