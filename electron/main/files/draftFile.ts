import { mkdir, readFile, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import { DRAFT_BYTES_LIMIT } from '../../contract'
import { writeAtomic } from './writeAtomic'

/** What is not saved yet, kept for the next start should this one end without closing. */
export interface DraftFile {
  /** Keeps it in place of the last; null: nothing is unsaved any more. Done in turn; where it fails the app does without. */
  readonly keep: (draft: string | null) => Promise<void>
  /** What was kept last; null if there is none or it cannot be read. It stays where it is until another is kept. */
  readonly take: () => Promise<string | null>
}

export function createDraftFile(path: string): DraftFile {
  let turn: Promise<void> = Promise.resolve()

  async function put(draft: string | null): Promise<void> {
    if (draft === null) return rm(path, { force: true })
    const bytes = new TextEncoder().encode(draft)
    if (bytes.length > DRAFT_BYTES_LIMIT) return
    await mkdir(dirname(path), { recursive: true })
    await writeAtomic(path, bytes, { backup: false })
  }

  return {
    keep: (draft) => {
      turn = turn.then(() => put(draft)).catch(() => undefined)
      return turn
    },
    take: async () => {
      await turn
      const bytes = await readFile(path).catch(() => null)
      return bytes === null || bytes.length > DRAFT_BYTES_LIMIT ? null : new TextDecoder().decode(bytes)
    },
  }
}
