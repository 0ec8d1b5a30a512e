import type { Platform } from '../platform'
import { BYTES_LIMIT } from './fileKind'
import { failureOf, fileFailure } from './fileProblem'

const KEY = 'strandwise.shelf'

/** Numbered, so that no shelf set aside takes the place of another. */
const asideKey = (storage: Storage): string => {
  for (let number = 1; ; number++) {
    const key = `${KEY}-set-aside-${number}`
    if (storage.getItem(key) === null) return key
  }
}

/**
 * The maker's own shelf in what the browser keeps for this page. Another window of the page may write it
 * too, so it is written only over what was last seen here.
 *
 * @param storageOf may throw, where the browser keeps nothing for anyone
 */
export function createShelfStorage(storageOf: () => Storage): Pick<Platform, 'loadShelf' | 'saveShelf' | 'setAsideShelf'> {
  let seen: string | null = null
  return {
    loadShelf: async () => {
      try {
        seen = storageOf().getItem(KEY)
        return { ok: true, text: seen }
      } catch (error) {
        return failureOf(error)
      }
    },
    saveShelf: async (text) => {
      if (new TextEncoder().encode(text).length > BYTES_LIMIT) return fileFailure('TOO_LARGE', `more than ${BYTES_LIMIT} bytes`)
      try {
        const storage = storageOf()
        const found = storage.getItem(KEY)
        if (found !== null && found !== seen) return fileFailure('CHANGED_ON_DISK', 'another window wrote it')
        storage.setItem(KEY, text)
        seen = text
        return { ok: true }
      } catch (error) {
        return failureOf(error)
      }
    },
    setAsideShelf: async () => {
      try {
        const storage = storageOf()
        const found = storage.getItem(KEY)
        if (found === null) return { ok: true, name: null }
        const key = asideKey(storage)
        storage.setItem(key, found)
        storage.removeItem(KEY)
        return { ok: true, name: key }
      } catch (error) {
        return failureOf(error)
      }
    },
  }
}
