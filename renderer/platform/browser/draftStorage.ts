import type { Platform } from '../platform'
import { failureOf } from './fileProblem'

const KEY = 'strandwise.draft.'

/** What tells pages apart that are open at once; `null` where the browser cannot. */
export interface OpenPages {
  /** Says that the page of this name is open, until it is gone. */
  readonly hold: (name: string) => void
  /** Names of all pages open now. */
  readonly held: () => Promise<ReadonlySet<string>>
}

/** Pages hold a lock of their name as long as they live, however they end. */
export function pagesByLocks(locks: LockManager | null | undefined): OpenPages | null {
  if (!locks) return null
  return {
    hold: (name) => { void locks.request(KEY + name, () => new Promise(() => undefined)).catch(() => undefined) },
    held: async () => new Set((await locks.query()).held?.flatMap((lock) => (lock.name?.startsWith(KEY) ? [lock.name.slice(KEY.length)] : [])) ?? []),
  }
}

/**
 * What is not saved yet, in what the browser keeps for this page. Each open page keeps its own; one whose page is gone
 * is taken by the next that starts.
 */
export function createDraftStorage(storageOf: () => Storage, pages: OpenPages | null, name: string): Pick<Platform, 'keepDraft' | 'takeDraft'> {
  pages?.hold(name)
  return {
    keepDraft: async (draft) => {
      try {
        if (draft === null) storageOf().removeItem(KEY + name)
        else storageOf().setItem(KEY + name, draft)
        return { ok: true }
      } catch (error) {
        return failureOf(error) // the browser keeps nothing, or no more
      }
    },
    takeDraft: async () => {
      try {
        const storage = storageOf()
        const left = Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? '').filter((key) => key.startsWith(KEY))
        const open = await pages?.held() ?? new Set<string>()
        const key = left.find((k) => !open.has(k.slice(KEY.length)))
        if (key === undefined) return null
        const draft = storage.getItem(key)
        storage.removeItem(key)
        // At once its own, should this page end before it keeps another; no larger than what has just gone.
        if (draft !== null) storage.setItem(KEY + name, draft)
        return draft
      } catch {
        return null
      }
    },
  }
}
