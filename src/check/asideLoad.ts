import type { CaseCode } from '../load/loadCases'
import type { Term } from './linkResult'
import type { PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
import { hookShare } from './stickBeam'
import { entering, worked } from './term'

/** What pulls at a hook or bracket while it is pulled most to one side, N: aside, and all that hangs there downwards. */
export interface AsideLoad {
  readonly side: number
  readonly down: number
  /** How they came about, by the symbols S and P_d. */
  readonly terms: readonly Term[]
}

/** The pull aside of a case, of a stick on two hooks the larger part of it; null where nothing pulls aside. What else hangs there stays at rest. */
export function asideLoad(solved: Solved, code: CaseCode, { load, symbol }: Pick<PlaceLoad, 'load' | 'symbol'>): AsideLoad | null {
  const { side, sideShare, sideSource, sideDown, weight, factor } = solved.loads[code]
  if (side === 0) return null
  const share = hookShare(solved, code).own
  const [aside, down] = [side * share, load - weight * share + sideDown * share]
  const own = share === 1 ? '' : ' * k_o'
  return {
    side: aside, down,
    terms: [
      ...(share === 1 ? [] : [entering('hookShare', 'k_o', share, '1', 'computed', 'the larger part of this hanger’s own weight on one hook, by lever')]),
      entering('sidePull', 's', sideShare, '1', 'computed', sideSource),
      entering('endWeight', 'c_e', (sideDown * factor) / weight, '1', 'computed', 'pull downwards over the weight at that moment'),
      worked('asidePull', 'S', aside, 'N', `W / phi * s${own}`, 'largest pull to one side'),
      worked('asideDown', 'P_d', down, 'N', `${symbol} - W${own} + W / phi * c_e${own}`, 'what pulls down at that moment'),
    ],
  }
}
