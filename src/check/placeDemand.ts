import { COUNTED_FIXINGS } from '../catalogue/places'
import type { CaseCode } from '../load/loadCases'
import { newtons } from '../quantity/si'
import { sharedLoad } from '../statics/railShare'
import { asidePull } from './asideLoad'
import { bracketDemand } from './bracketDemand'
import type { Term } from './linkResult'
import { placeLoad, type PlaceDemand, type PlaceDemandOutcome, type PlaceLoad } from './placeLoad'
import type { Solved } from './solved'
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
  const aside = asidePull(solved, code)
  return {
    ok: true, pull: load, shear: aside?.side ?? 0, load,
    terms: [
      ...terms,
      worked('pullOut', 'E_N', load, 'N', symbol, 'all of it hangs straight down'),
      ...(aside === null ? [] : [...aside.terms, worked('along', 'E_V', aside.side, 'N', 'S', 'balance along the ceiling')]),
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
