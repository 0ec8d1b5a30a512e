import { MOMENT } from '../../catalogue/duration'
import { YIELD_STRESS } from '../../catalogue/metals'
import { RATED_FOR_A_MOMENT, RATED_IN_ACCIDENT } from '../../catalogue/reserves'
import type { CaseCode } from '../../load/loadCases'
import { LOWER_TAIL, WEAKEST_ACROSS, WOOD_SCATTER } from '../../catalogue/sticks'
import { hangsFrom, liesLevel } from '../../hanger/arrangement'
import { metres, newtons, pascals } from '../../quantity/si'
import { woodenRing } from '../../statics/woodenRing'
import { closedRingLoad, plasticMoment, ringFirstYield } from '../../statics/wire'
import type { Finding } from '../finding'
import { assessLink, factor, reserve, type Factor, type LinkResult, type Term } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { byTestHang, liftFindings, testHangFaults, testMassFor } from '../testHang'
import { allowableReserve, reserveTerms, strengthReserve } from '../timeFactors'
import { lowerTail } from '../woodStrength'
import { temperAssumed } from './assumedPart'
import { weightTerms } from './weightTerms'

/**
 * The ring the legs hang from, under the whole weight, N: rated, or a closed metal ring by plastic
 * collapse (RING_MAY_OPEN from its first yield on). Wooden rings are not known until test-hung
 * (RING_UNRATED), with an estimate across their grain, nor are rings that lie level (RING_LEVEL_UNTESTED). No results where the legs are bunched on the hook.
 */
export function ringLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (hangsFrom(answers) !== 'ring') return []
  const level = liesLevel(answers)
  const wired = !level && answers['ring.rated'] === null && answers['ring.metal'] !== 'wood'
  return temperAssumed(solved, wired ? ['ring.wire', 'ring.inside'] : [], solved.wholeCases.map((code) => {
    const load = solved.loads[code]
    const demand = { value: load.weight, unit: 'N' } as const
    const rated = answers['ring.rated']
    const base = { link: 'ring', side: 'hanger', case: code, demand, overallFactor: null, atLeast: 'holds' } as const
    if (rated !== null && !level) {
      const { factors, terms } = ratedFactors(solved, code)
      return assessLink({ ...base, part: 'rated', capacity: { value: rated, unit: 'N', basis: 'your own', source: 'rated load of the ring' }, factors, grade: 'rated', findings: [], terms: [...weightTerms(solved, code), ...terms] })
    }
    const metal = answers['ring.metal']
    if ((metal === 'wood' || level) && testHangFaults(solved, false)?.length === 0) {
      const tested = assessLink({ ...base, part: 'testHang', ...byTestHang(solved, code), grade: 'tested', findings: liftFindings(solved, false) })
      // A ring that held its test mass holds at least that; beyond it nothing is known, as without a test.
      if (tested.utilisation !== null && tested.utilisation <= 1) return tested
    }
    if (level) {
      return assessLink({ ...base, part: 'whole', capacity: null, factors: [], grade: 'table', atLeast: 'not enough known', findings: [{ code: 'RING_LEVEL_UNTESTED', testMass: testMassFor(solved) }], terms: weightTerms(solved, code) })
    }
    if (metal === 'wood') {
      return assessLink({ ...base, part: 'whole', capacity: null, factors: [], grade: 'table', atLeast: 'not enough known', ...acrossGrain(solved, code) })
    }
    const yieldStress = YIELD_STRESS[metal]
    const stress = pascals(yieldStress.value)
    const wire = answers['ring.wire']
    const inside = answers['ring.inside']
    const collapse = closedRingLoad(wire, inside, stress)
    const reserveOf = strengthReserve(answers, load.case)
    const opens = load.weight > ringFirstYield(wire, inside, stress)
    return assessLink({
      ...base,
      part: 'ringCollapse',
      capacity: { value: collapse, unit: 'N', basis: 'computed', source: 'the pull that bends a closed ring of this wire for good' },
      factors: [reserve(reserveOf)],
      grade: 'table',
      findings: opens ? [{ code: 'RING_MAY_OPEN', force: load.weight }] : [],
      terms: [
        ...weightTerms(solved, code),
        ...wireTerms('d_r', wire, inside, fromCatalogue('yieldStress', 'f_y', yieldStress), plasticMoment(wire, stress)),
        worked('capacity', 'R', collapse, 'N', '4 * M_p / r_m', 'plastic collapse of a ring: four hinges, each arm the mean radius'),
        ...reserveTerms(reserveOf),
      ],
    })
  }))
}

/**
 * What a ring cut from a board would be asked across its grain, bar as high as thick, beside what the weakest listed wood
 * bears there: an estimate, for the make of the ring is not known. Where it is more, RING_ACROSS_GRAIN.
 */
function acrossGrain(solved: Solved, code: CaseCode): { readonly findings: readonly Finding[]; readonly terms: readonly Term[] } {
  const { answers } = solved.hanger
  const [bar, inside] = [answers['ring.wire'], answers['ring.inside']]
  const mean = metres((inside + bar) / 2)
  const { weight } = solved.loads[code]
  const { atLoad, splitting } = woodenRing({ load: newtons(weight), mean, thickness: bar, width: bar })
  const bears = WEAKEST_ACROSS.value * lowerTail(WOOD_SCATTER.tensionAcross.value)
  const unrated: Finding = { code: 'RING_UNRATED', testMass: testMassFor(solved) }
  return {
    findings: atLoad > bears ? [unrated, { code: 'RING_ACROSS_GRAIN', asked: atLoad, bears }] : [unrated],
    terms: [
      ...weightTerms(solved, code),
      entering('ringBar', 'b_r', bar, 'm', 'your own', 'thickness of the ring'),
      entering('insideWidth', 'w_in', inside, 'm', 'your own', 'width inside'),
      worked('meanRadius', 'r_m', mean, 'm', '(w_in + b_r) / 2', 'to the middle of the bar'),
      worked('ringBending', 'f_r', atLoad, 'Pa', '6 * (E * r_m / pi) / b_r^3', 'bending under the load (Roark, ring case 1)'),
      worked('ringSplitting', 'f_sp', splitting, 'Pa', '3 * (E * r_m * (1 / 2 - 1 / pi)) / (2 * r_m * b_r^2)', 'pulled apart at the side (National Design Specification, 5.4.1)'),
      fromCatalogue('acrossStrength', 'f_90', WEAKEST_ACROSS),
      fromCatalogue('acrossScatter', 'v_90', WOOD_SCATTER.tensionAcross),
      worked('acrossLow', 'f_90k', bears, 'Pa', `f_90 * (1 - ${LOWER_TAIL.value} * v_90)`, 'what a weak piece bears across its grain'),
    ],
  }
}

/** The factors on a rated load: the reserve it is used with, and what it may be asked for a moment. */
export function ratedFactors(solved: Solved, code: CaseCode): { readonly factors: readonly Factor[]; readonly terms: readonly Term[] } {
  const { accidental, time } = solved.loads[code].case
  const reserveOf = allowableReserve(solved.hanger.answers, solved.loads[code].case)
  const moment = accidental ? RATED_IN_ACCIDENT : RATED_FOR_A_MOMENT
  const factors = time <= MOMENT.value ? [factor('forAMoment', moment), reserve(reserveOf)] : [reserve(reserveOf)]
  return { factors, terms: reserveTerms(reserveOf) }
}

/** Lines for round wire bent plastically: wire and width in m, moment in N m. */
export function wireTerms(symbol: string, wire: number, inside: number, yieldTerm: Term, moment: number): readonly Term[] {
  return [
    entering('wire', symbol, wire, 'm', 'your own', 'diameter of the wire'),
    entering('insideWidth', 'w_in', inside, 'm', 'your own', 'width inside'),
    worked('meanRadius', 'r_m', (inside + wire) / 2, 'm', `(w_in + ${symbol}) / 2`, 'to the wire’s centre line'),
    yieldTerm,
    worked('plasticMoment', 'M_p', moment, 'N m', `f_y * ${symbol}^3 / 6`, 'plastic moment of round wire'),
  ]
}
