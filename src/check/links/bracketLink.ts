import { YIELD_STRESS } from '../../catalogue/metals'
import type { CaseCode } from '../../load/loadCases'
import { asideLoad } from '../asideLoad'
import type { Evidence, LinkResult, Term } from '../linkResult'
import { reserve } from '../linkResult'
import { placeLoad } from '../placeLoad'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'
import { temperAssumed } from './assumedPart'
import { assessPlace } from './fixing/assessPlace'
import { ratedFactors } from './ringLink'

/**
 * The arm of a wall bracket or swing arm, as a cantilever, N at its end: rated, or a plastic hinge at the wall, f_y b h^2 / 6 over its
 * reach (the oval that fits in its section, exact for a round bar). What pulls a fixed arm aside bends it sideways as well; a rated one is taken to bear as much that way as down. Without rating or section
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
  const { demand, terms } = atEnd(solved, code, 1, '')
  const { factors, terms: ratedTerms } = ratedFactors(solved, code)
  return assessPlace(solved, {
    ...base(code), part: 'rated', demand: { value: demand, unit: 'N' }, capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the bracket' },
    factors, grade: 'rated', atLeast: 'holds', findings: [], terms: [...terms, ...ratedTerms],
  })
}

function byHinge(solved: Solved, code: CaseCode, thick: number, high: number): LinkResult {
  const { answers } = solved.hanger
  const yieldStress = YIELD_STRESS[answers['bracket.metal']]
  const reach = answers['bracket.reach']
  const moment = (yieldStress.value * thick * high ** 2) / 6
  const reserveOf = strengthReserve(answers, solved.loads[code].case)
  const { demand, terms } = atEnd(solved, code, high / thick, ' * h / b')
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

/**
 * What bends the arm: the weight; pulled aside what is left of it, with the side pull on the weaker way of a fixed arm, where that is
 * more. `slender`: how much weaker it is sideways.
 */
function atEnd(solved: Solved, code: CaseCode, slender: number, ratio: string): { readonly demand: number; readonly terms: readonly Term[] } {
  const { load, symbol, terms } = placeLoad(solved, code)
  const aside = solved.hanger.answers['place.support'] === 'bracket' ? asideLoad(solved, code, { load, symbol }) : null
  if (aside === null) return { demand: load, terms: [...terms, worked('demand', 'E', load, 'N', symbol, 'all of it hangs at the end of the arm')] }
  const demand = Math.max(load, aside.down + aside.side * slender)
  return {
    demand,
    terms: [...terms, ...aside.terms, worked('demand', 'E', demand, 'N', `max(${symbol}, P_d + S${ratio})`, 'all of it hangs at the end of the arm, or less of it and the arm is bent sideways too, by its weaker way')],
  }
}
