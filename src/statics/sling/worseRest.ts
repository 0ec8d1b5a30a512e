import type { SlingRest } from './result'

/** Whether one rest of a pot is worse than another: on fewer than three legs before any other, then by the greatest tension in a leg. */
export function isWorse(a: Pick<SlingRest, 'status' | 'T'>, b: Pick<SlingRest, 'status' | 'T'>): boolean {
  const [lostA, lostB] = [a, b].map(({ status }) => status === 'LOST_SUPPORT')
  return lostA === lostB ? Math.max(...a.T) > Math.max(...b.T) : lostA === true
}
