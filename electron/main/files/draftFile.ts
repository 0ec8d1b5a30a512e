import { mkdir, readFile, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import { DRAFT_BYTES_LIMIT, type SaveOutcome } from '../../contract'
import { failureOf, fileFailure } from './fileProblem'
import { writeAtomic } from './writeAtomic'

/** What is not saved yet, kept for the next start should this one end without closing. */
export interface DraftFile {
  /** Keeps it in place of the last; null: nothing is unsaved any more. Done in turn; where it fails the last stays. */
  readonly keep: (draft: string | null) => Promise<SaveOutcome>
  /** What was kept last; null if there is none or it cannot be read. It stays where it is until another is kept. */
  readonly take: () => Promise<string | null>
}

export function createDraftFile(path: string): DraftFile {
  let turn: Promise<unknown> = Promise.resolve()

  async function put(draft: string | null): Promise<SaveOutcome> {
    try {
      if (draft === null) {
        await rm(path, { force: true })
        return { ok: true }
      }
      const bytes = new TextEncoder().encode(draft)
      if (bytes.length > DRAFT_BYTES_LIMIT) return fileFailure('TOO_LARGE', `more than ${DRAFT_BYTES_LIMIT} bytes`)
      await mkdir(dirname(path), { recursive: true })
      await writeAtomic(path, bytes, { backup: false })
      return { ok: true }
    } catch (error) {
      return failureOf(error)
    }
  }

  return {
    keep: (draft) => {
      const mine = turn.then(() => put(draft))
      turn = mine
      return mine
    },
    take: async () => {
      await turn
      const bytes = await readFile(path).catch(() => null)
      return bytes === null || bytes.length > DRAFT_BYTES_LIMIT ? null : new TextDecoder().decode(bytes)
    },
  }
}
