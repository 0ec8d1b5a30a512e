import type { FileToken } from '../../../electron/contract'

/** A hanger used before. A browser forgets which file it was, so its text is kept. */
export interface RecentText {
  readonly token: FileToken
  readonly name: string
  readonly text: string
}

const KEY = 'strandwise.recent'
const LIMIT = 8

const isRecentText = (value: unknown): value is RecentText =>
  typeof value === 'object' && value !== null
  && ['token', 'name', 'text'].every((key) => typeof (value as Record<string, unknown>)[key] === 'string')

/**
 * The latest first; none where the browser keeps nothing.
 *
 * @param storageOf may throw, where the browser keeps nothing for anyone
 */
export function recentTexts(storageOf: () => Storage): readonly RecentText[] {
  try {
    const stored: unknown = JSON.parse(storageOf().getItem(KEY) ?? '[]')
    return Array.isArray(stored) ? stored.filter(isRecentText).slice(0, LIMIT) : []
  } catch {
    return []
  }
}

/** Puts a hanger first, in place of an earlier one of its name; the oldest give way where room is short. */
export function rememberText(storageOf: () => Storage, latest: RecentText): void {
  const others = recentTexts(storageOf).filter(({ name }) => name !== latest.name)
  for (let texts = [latest, ...others].slice(0, LIMIT); texts.length > 0; texts = texts.slice(0, -1)) {
    try {
      storageOf().setItem(KEY, JSON.stringify(texts))
      return
    } catch {
      // Too much: once more with one less.
    }
  }
}
