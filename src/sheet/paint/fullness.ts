import type { Element } from '../element'

/** Letters of scripts that take a square each: twice as wide as others. */
const WIDE = /[\u2e80-\ud7ff\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60]|[\ud800-\udbff]/g

/** How many letters of usual width elements hold. */
export const lettersOf = (elements: readonly (Element | string)[]): number =>
  elements.reduce((sum, one) => sum + (typeof one === 'string' ? one.length + (one.match(WIDE)?.length ?? 0) : lettersOf(one.children)), 0)

/** Letters, foot and all, from which a page is set smaller to stay one page, and smaller again. */
const FULL = { front: [2000, 2450], back: [3950, 4350] } as const

/** The class of a page that is fuller than usual; null of one that is not. */
export function fullnessOf(side: 'front' | 'back', page: readonly Element[]): 'tight' | 'tightest' | null {
  const letters = lettersOf(page)
  const [tight, tightest] = FULL[side]
  return letters > tightest ? 'tightest' : letters > tight ? 'tight' : null
}
