import type { LinkResult } from '../check/linkResult'
import { isWorse, type Verdict } from '../check/verdict'

/** Which of two is the better; `untold` where too little is known of one of them to say so. */
export type Better = 'first' | 'second' | 'alike' | 'untold'

/** What is judged of a part: its verdict, and the share of what it may bear that is asked of it. */
export type Judged = Pick<LinkResult, 'verdict' | 'utilisation'>

/** Shares closer than this are read as the same, for they are told in whole per cent. */
const ALIKE = 0.005

const isUnknown = (verdict: Verdict): boolean => verdict === 'not enough known'

/**
 * The better of two: by verdict, then by how much is asked of it. What is not known well enough is worse than what holds or
 * just holds, but of it and what fails, or of two such, nothing is told.
 * @example betterOf({ verdict: 'holds', utilisation: 0.4 }, { verdict: 'holds', utilisation: 0.3 }) // 'second'
 * @example betterOf({ verdict: 'not enough known', utilisation: 0.4 }, { verdict: 'fails', utilisation: 1.3 }) // 'untold'
 */
export function betterOf(first: Judged, second: Judged): Better {
  if (isUnknown(first.verdict) || isUnknown(second.verdict)) {
    const known = isUnknown(first.verdict) ? second : first
    if (isUnknown(known.verdict) || known.verdict === 'fails') return 'untold'
    return known === first ? 'first' : 'second'
  }
  if (first.verdict !== second.verdict) return isWorse(first.verdict, second.verdict) ? 'second' : 'first'
  if (first.utilisation === null || second.utilisation === null) return 'untold'
  if (Math.abs(first.utilisation - second.utilisation) < ALIKE) return 'alike'
  return first.utilisation < second.utilisation ? 'first' : 'second'
}
