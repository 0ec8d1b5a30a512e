import { YIELD_STRESS } from '../../catalogue/metals'
import { BUMP_SIDE_PULL, type CaseCode } from '../../load/loadCases'
import { BUMP_ANGLE } from '../../catalogue/jolts'
import type { Evidence, LinkResult, Term } from '../linkResult'
import { reserve } from '../linkResult'
import { placeLoad } from '../placeLoad'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { temperAssumed } from './assumedPart'
import { assessPlace } from './fixing/assessPlace'
import { ratedFactors } from './ringLink'

/** Weight along the cord at the end of a swing, upright part of it: cos^2 a. */
const WEIGHT_AT_END = Math.cos(BUMP_ANGLE.value) ** 2

/**
 * The arm of a wall bracket or swing arm, as a cantilever, N at its end: rated, or a plastic hinge at the wall, f_y b h^2 / 6 over its
 * reach (the oval that fits in its section, exact for a round bar). A bump bends a fixed arm to the side as well. Without rating or section
 * it is not known (BRACKET_UNRATED). No result for other supports.
 */
export function bracketLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (answers['place.support'] !== 'bracket' && answers['place.support'] !== 'swingArm') return []
  const rated = answers['bracket.rated']
  if (rated !== null) return solved.wholeCases.map((code) => byRating(solved, code, rated))
  const [thick, high] = [answers['bracket.thick'], answers['bracket.high']]
  if (thick === null || high === null) return solved.wholeCases.map((code) => unknown(solved, code))
  return temperAssumed(solved, ['bracket.reach'], solved.wholeCases.map((code) => byHinge(solved, code, thick, high)))
}

const base = (code: CaseCode): Pick<Evidence, 'link' | 'side' | 'case' | 'overallFactor'> => ({ link: 'bracket', side: 'place', case: code, overallFactor: null })

function unknown(solved: Solved, code: CaseCode): LinkResult {
  const { load, symbol, terms } = placeLoad(solved, code)
  return assessPlace(solved, {
    ...base(code), part: 'whole', demand: { value: load, unit: 'N' }, capacity: null, factors: [], grade: 'table', atLeast: 'not enough known', findings: [{ code: 'BRACKET_UNRATED' }],
    terms: [...terms, worked('demand', 'E', load, 'N', symbol, 'all of it hangs at the end of the arm')],
  })
}

function byRating(solved: Solved, code: CaseCode, rated: number): LinkResult {
  const { load, symbol, terms } = placeLoad(solved, code)
  const { factors, terms: ratedTerms } = ratedFactors(solved, code)
  return assessPlace(solved, {
    ...base(code), part: 'rated', demand: { value: load, unit: 'N' }, capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the bracket' },
    factors, grade: 'rated', atLeast: 'holds', findings: [], terms: [...terms, worked('demand', 'E', load, 'N', symbol, 'all of it hangs at the end of the arm'), ...ratedTerms],
  })
}

function byHinge(solved: Solved, code: CaseCode, thick: number, high: number): LinkResult {
  const { answers } = solved.hanger
  const yieldStress = YIELD_STRESS[answers['bracket.metal']]
  const reach = answers['bracket.reach']
  const moment = (yieldStress.value * thick * high ** 2) / 6
  const reserveOf = strengthReserve(answers, solved.loads[code].case)
  const { demand, terms } = atEnd(solved, code, high / thick)
  return assessPlace(solved, {
    ...base(code), part: 'armHinge', demand: { value: demand, unit: 'N' },
    capacity: { value: moment / reach, unit: 'N', basis: 'computed', source: 'the weight at its end that bends the arm down for good' },
    factors: [reserve(reserveOf)], grade: 'table', atLeast: 'holds', findings: [],
    terms: [
      entering('armThick', 'b', thick, 'm', 'your own', 'thickness of the arm, sideways'),
      entering('armHigh', 'h', high, 'm', 'your own', 'height of the arm, upright'),
      ...terms,
      entering('reach', 'a', reach, 'm', 'your own', 'from the wall to where it hangs'),
      fromCatalogue('yieldStress', 'f_y', yieldStress),
      worked('plasticMoment', 'M_p', moment, 'N m', 'f_y * b * h^2 / 6', 'plastic moment of the oval that fits in the arm’s section'),
      worked('capacity', 'R', moment / reach, 'N', 'M_p / a', 'a hinge at the wall'),
      ...reserveTerms(reserveOf),
    ],
  })
}

/** What bends the arm: the weight; at the end of a swing what is left of it, with the side pull on the weaker way of a fixed arm, where that is more. */
function atEnd(solved: Solved, code: CaseCode, slender: number): { readonly demand: number; readonly terms: readonly Term[] } {
  const { load, symbol, terms } = placeLoad(solved, code)
  const { weight, factor } = solved.loads[code]
  if (code !== 'bump' || solved.hanger.answers['place.support'] !== 'bracket') return { demand: load, terms: [...terms, worked('demand', 'E', load, 'N', symbol, 'all of it hangs at the end of the arm')] }
  const aside = load - weight + (weight / factor) * (WEIGHT_AT_END + BUMP_SIDE_PULL * slender)
  return {
    demand: Math.max(load, aside),
    terms: [
      ...terms,
      entering('sidePull', 's', BUMP_SIDE_PULL, '1', 'computed', 'side pull over the weight at the end of a swing of 30 degrees, sin a cos a'),
      entering('endWeight', 'c_e', WEIGHT_AT_END, '1', 'computed', 'upright part over the weight at the end of a swing of 30 degrees, cos^2 a'),
      worked('demand', 'E', Math.max(load, aside), 'N', `max(${symbol}, ${symbol} - W + W / phi * (c_e + s * h / b))`, 'at the bottom of the swing, or at its end, where the arm is bent sideways too, by its weaker way'),
    ],
  }
}
