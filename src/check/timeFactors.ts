import { strengthAfter, UNDER_DRAIN_HOLE } from '../catalogue/ageing'
import type { Value } from '../catalogue/basis'
import { FIBRE_PROPERTIES } from '../catalogue/cords'
import { TEST_TIME } from '../catalogue/duration'
import { RESERVE_IN_ACCIDENT, RESERVE_ON_ALLOWABLE, type Beneath } from '../catalogue/reserves'
import type { Answers } from '../hanger/fields'
import type { LoadCase } from '../load/loadCases'
import { knotWetness } from './knotWetness'
import { factor, reserve, type Factor, type Term } from './linkResult'
import { reserveOnSafeValue, reserveOnStrength } from './ownReserve'
import { entering, fromCatalogue, worked } from './term'

/**
 * Strength of fibre left under a load lasting t, s: 1 - k log10(t / 10 s), at most 1 (Meredith's
 * relation, see FIBRE_PROPERTIES). Cotton under ten years:
 * @example fibreDuration(0.088, 3.156e8) // 0.340
 */
export const fibreDuration = (slope: number, time: number): number => Math.min(1, 1 - slope * Math.log10(time / TEST_TIME.value))

/**
 * The factors that time, wet, weather and reserve put on a cord in a load case, with the lines that
 * explain them. `underHole`: cord that a drain hole may drip on; see knotWetness for what spares it.
 */
export function cordFactors(answers: Answers, loadCase: LoadCase, underHole: boolean): { readonly factors: readonly Factor[]; readonly terms: readonly Term[] } {
  const fibre = FIBRE_PROPERTIES[answers['cord.fibre']]
  const ageing = strengthAfter(answers['cord.fibre'], answers['place.exposure'], answers['place.life'])
  const duration = fibreDuration(fibre.duration.value, loadCase.time)
  const reserveOf = strengthReserve(answers, loadCase)
  const factors: Factor[] = []
  if (loadCase.wet) factors.push(factor('wet', fibre.wet))
  factors.push(factor('ageing', ageing))
  if (underHole && knotWetness(answers) !== 'dry') factors.push(factor('drainHole', UNDER_DRAIN_HOLE))
  factors.push({ code: 'duration', value: duration, basis: fibre.duration.basis, source: fibre.duration.source }, reserve(reserveOf))
  return {
    factors,
    terms: [
      fromCatalogue('durationSlope', 'k_t', fibre.duration),
      entering('loadTime', 't', loadCase.time, 's', 'common practice', 'time under this load over the service life'),
      fromCatalogue('testTime', 't_0', TEST_TIME),
      worked('duration', 'k_dur', duration, '1', 'min(1, 1 - k_t * log10(t / t_0))', fibre.duration.source),
      ...reserveTerms(reserveOf),
    ],
  }
}

/** The lines that show a reserve as the factor it enters with. */
export const reserveTerms = (reserveOf: Value): readonly Term[] => [
  fromCatalogue('reserveOf', 'gamma', reserveOf),
  worked('reserve', 'k_res', 1 / reserveOf.value, '1', '1 / gamma', reserveOf.source),
]

/** The reserve on strengths that hold no safety of their own, by what is beneath or the maker's own; 1 in an accident. */
export const strengthReserve = (answers: Answers, loadCase: LoadCase): Value => (loadCase.accidental ? RESERVE_IN_ACCIDENT : reserveOnStrength(answers))

/** The reserve on values that hold some safety of their own, from its table; 1 in an accident. */
export const safeValueReserve = (answers: Answers, loadCase: LoadCase, table: Readonly<Record<Beneath, Value>>): Value =>
  (loadCase.accidental ? RESERVE_IN_ACCIDENT : reserveOnSafeValue(answers, table))

/** The reserve on rated loads, published allowables and what a test hang showed. */
export const allowableReserve = (answers: Answers, loadCase: LoadCase): Value => safeValueReserve(answers, loadCase, RESERVE_ON_ALLOWABLE)
