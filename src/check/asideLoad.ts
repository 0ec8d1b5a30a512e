import type { CaseCode } from '../load/loadCases'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Term } from './linkResult'
import type { PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
import { hookShare } from './stickBeam'
import { entering, worked } from './term'

/** The largest pull to one side on one hook or bracket, N. */
export interface AsidePull {
  readonly side: number
  /** Over this hanger's own: the larger part of it on one of two hooks, or with all else that a gust blows at. */
  readonly share: number
  /** How it came about, by the symbol S. */
  readonly terms: readonly Term[]
}

/** The pull aside of a case; null where nothing pulls aside. A gust blows at all that hangs there, alike by weight; else only this hanger is pulled. */
export function asidePull(solved: Solved, code: CaseCode): AsidePull | null {
  const { side, sideShare, sideSource, weight, factor } = solved.loads[code]
  if (side === 0) return null
  const { own, all } = hookShare(solved, code)
  const blown = code === 'gust'
  const others = ((solved.hanger.answers['rail.others'] ?? 0) * STANDARD_GRAVITY * factor) / weight
  const share = blown ? all + others : own
  return {
    side: side * share, share,
    terms: [
      ...(share === 1 ? [] : [entering('hookShare', 'k_o', share, '1', 'computed', blown ? 'all that hangs there and is blown at, over this hanger’s own weight' : 'the larger part of this hanger’s own weight on one hook, by lever')]),
      entering('sidePull', 's', sideShare, '1', 'computed', sideSource),
      worked('asidePull', 'S', side * share, 'N', share === 1 ? 'W / phi * s' : 'W / phi * s * k_o', 'largest pull to one side'),
    ],
  }
}

/** What pulls at a hook or bracket while it is pulled most to one side, N: aside, and all that hangs there downwards. */
export interface AsideLoad extends AsidePull {
  /** By the symbol P_d. */
  readonly down: number
}

/** The pull aside of a case and what pulls down with it; null where nothing pulls aside. What is not pulled stays at rest. */
export function asideLoad(solved: Solved, code: CaseCode, { load, symbol }: Pick<PlaceLoad, 'load' | 'symbol'>): AsideLoad | null {
  const { sideDown, weight, factor } = solved.loads[code]
  const aside = asidePull(solved, code)
  if (aside === null) return null
  const down = load + (sideDown - weight) * aside.share
  const own = aside.share === 1 ? '' : ' * k_o'
  return {
    ...aside, down,
    terms: [
      ...aside.terms,
      entering('endWeight', 'c_e', (sideDown * factor) / weight, '1', 'computed', 'pull downwards over the weight at that moment'),
      worked('asideDown', 'P_d', down, 'N', `${symbol} - W${own} + W / phi * c_e${own}`, 'what pulls down at that moment'),
    ],
  }
}
