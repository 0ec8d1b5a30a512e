import { COUNTED_FIXINGS } from '../catalogue/places'
import type { CaseCode } from '../load/loadCases'
import { newtons } from '../quantity/si'
import { sharedLoad } from '../statics/railShare'
import { bracketDemand } from './bracketDemand'
import type { Term } from './linkResult'
import { placeLoad, type PlaceDemand, type PlaceDemandOutcome, type PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
import { hookShare } from './stickBeam'
import { entering, fromCatalogue, worked } from './term'
import { wallHookDemand } from './wallHookDemand'

/**
 * What the place is asked in one case, by equilibrium: from a ceiling hook the weight straight out and, when
 * pulled aside, by a bump or otherwise, that besides; from a wall hook its weight along the wall
 * and the pull of a pot that leans on it; from a bracket what its worst screw bears. Of several fixings of
 * one plate at most two are counted to share.
 */
export function placeDemand(solved: Solved, code: CaseCode): PlaceDemandOutcome {
  const { answers } = solved.hanger
  const whole = placeLoad(solved, code)
  if (answers['place.support'] === 'bracket' || answers['place.support'] === 'swingArm') return bracketDemand(solved, code, whole)
  if (answers['place.support'] === 'wallHook') return shared(answers['fixing.count'], wallHookDemand(solved, code, whole))
  return shared(answers['fixing.count'], underCeiling(solved, code, whole))
}

function underCeiling(solved: Solved, code: CaseCode, { load, symbol, terms }: PlaceLoad): PlaceDemand {
  const share = hookShare(solved, code).own
  const { side: whole, sideShare, sideSource } = solved.loads[code]
  const side = whole * share
  return {
    ok: true, pull: load, shear: side, load,
    terms: [
      ...terms,
      worked('pullOut', 'E_N', load, 'N', symbol, 'all of it hangs straight down'),
      ...(side > 0 ? [
        ...(share === 1 ? [] : [entering('hookShare', 'k_o', share, '1', 'computed', 'the larger part of this hanger’s own weight on one hook, by lever')]),
        entering('sidePull', 's', sideShare, '1', 'computed', sideSource),
        worked('along', 'E_V', side, 'N', share === 1 ? 'W / phi * s' : 'W / phi * k_o * s', 'balance along the ceiling'),
      ] : []),
    ],
  }
}

/** Of several fixings the worst. */
function shared(count: number, demand: PlaceDemandOutcome): PlaceDemandOutcome {
  if (!demand.ok || count <= 1) return demand
  const one = (load: number): number => sharedLoad(newtons(load), count, COUNTED_FIXINGS.value)
  return {
    ...demand, pull: one(demand.pull), shear: one(demand.shear),
    terms: [
      ...demand.terms.filter((t) => t.code !== 'pullOut' && t.code !== 'along'),
      entering('fixings', 'n_f', count, '1', 'your own', 'fixings of one plate'),
      fromCatalogue('countedFixings', 'n_2', COUNTED_FIXINGS),
      ...demand.terms.filter((t) => t.code === 'pullOut' || t.code === 'along').map((t): Term => ({ ...t, value: one(t.value), formula: `(${t.formula ?? ''}) / min(n_f, n_2)` })),
    ],
  }
}
