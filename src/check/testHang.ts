import { WATER_DENSITY } from '../catalogue/pottingMixes'
import { LEAST_TEST_TIME, MOST_TEST_SLIP, TEST_SHARE_AT_REST } from '../catalogue/testHang'
import type { Answers } from '../hanger/fields'
import { CASES_AT_REST, type CaseCode } from '../load/loadCases'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Finding } from './finding'
import { factor, reserve, type Capacity, type Factor, type Term } from './linkResult'
import type { CaseLoad, Solved } from './solved'
import { entering, fromCatalogue, worked } from './term'
import { allowableReserve, reserveTerms } from './timeFactors'

/**
 * What hung in the test, kg: the mass as told, or the water's, its bucket not counted; null if there was no test.
 * @example testHangMass({ 'testHang.mass': null, 'testHang.volume': 0.012 }) // 12
 */
export function testHangMass(answers: Pick<Answers, 'testHang.mass' | 'testHang.volume'>): number | null {
  const volume = answers['testHang.volume']
  return answers['testHang.mass'] ?? (volume === null ? null : volume * WATER_DENSITY.value)
}

/** Why a recorded test hang does not count; empty if it does, null if there is none. Slip matters to the knot only. */
export function testHangFaults(solved: Solved, ofKnot: boolean): readonly Finding[] | null {
  const { answers, given } = solved.hanger
  if (testHangMass(answers) === null) return null
  const faults: Finding[] = []
  if (answers['testHang.time'] < LEAST_TEST_TIME.value) faults.push({ code: 'TEST_HANG_TOO_SHORT', time: answers['testHang.time'], least: LEAST_TEST_TIME.value })
  if (ofKnot && answers['testHang.slip'] >= MOST_TEST_SLIP.value) {
    faults.push(given.has('testHang.slip') ? { code: 'TEST_HANG_SLIPPED', slip: answers['testHang.slip'], most: MOST_TEST_SLIP.value } : { code: 'TEST_HANG_SLIP_UNSAID', most: MOST_TEST_SLIP.value })
  }
  return faults
}

export interface TestedEvidence {
  readonly demand: { readonly value: number; readonly unit: 'N' }
  readonly capacity: Capacity
  readonly factors: readonly Factor[]
  readonly terms: readonly Term[]
}

/** Wind and whoever pulls add their force, however light the hanger is; a jolt multiplies what hangs. */
const adds = ({ case: { code } }: CaseLoad): boolean => code === 'gust' || code === 'tug'

/** The pull of the potted plant in a case, N, without the hanger's own: what a test mass stands for. */
export const pottedPull = (load: CaseLoad): number =>
  (adds(load) ? load.weight - load.hanger * STANDARD_GRAVITY : load.potted * STANDARD_GRAVITY * load.factor)

/** What a counting test hang says of a part in a load case: the test mass stood for the potted plant. */
export function byTestHang(solved: Solved, code: CaseCode): TestedEvidence {
  const { answers } = solved.hanger
  const load = solved.loads[code]
  const mass = testHangMass(answers) ?? 0
  const capacity = mass * STANDARD_GRAVITY
  const pulled = pottedPull(load)
  const reserveOf = allowableReserve(answers, load.case)
  const atRest = (CASES_AT_REST as readonly CaseCode[]).includes(code)
  return {
    demand: { value: pulled, unit: 'N' },
    capacity: { value: capacity, unit: 'N', basis: 'your own', source: 'test hang' },
    factors: [...(atRest ? [factor('atRest', TEST_SHARE_AT_REST)] : []), reserve(reserveOf)],
    terms: [
      entering('pottedMass', 'm_pot', load.potted, 'kg', 'computed', 'potted plant in this state, high value'),
      entering('gravity', 'g', STANDARD_GRAVITY, 'm/s2', 'published', 'standard acceleration of free fall (3rd CGPM, 1901)'),
      ...(adds(load) ? [entering('hangerMass', 'm_h', load.hanger, 'kg', 'computed', 'the hanger’s own cords and ring, high value')] : []),
      ...load.factorTerms,
      worked('demand', 'E', pulled, 'N', adds(load) ? '(m_pot + m_h) * g * phi - m_h * g' : 'm_pot * g * phi', 'what the test mass stood for'),
      ...testMassTerms(answers, mass),
      worked('capacity', 'R', capacity, 'N', 'm_test * g', 'test hang'),
      ...reserveTerms(reserveOf),
    ],
  }
}

function testMassTerms(answers: Answers, mass: number): readonly Term[] {
  const volume = answers['testHang.volume']
  if (answers['testHang.mass'] !== null || volume === null) return [entering('testMass', 'm_test', mass, 'kg', 'your own', 'mass of the test hang')]
  return [
    entering('testVolume', 'V_test', volume, 'm3', 'your own', 'water of the test hang, its bucket not counted'),
    fromCatalogue('waterDensity', 'rho_w', WATER_DENSITY),
    worked('testMass', 'm_test', mass, 'kg', 'V_test * rho_w', 'mass of the test hang'),
  ]
}

/** Mass of a test hang that settles a part in every case, kg. */
export function testMassFor(solved: Solved): number {
  return Math.max(...solved.wholeCases.map((code) => {
    const { demand, factors } = byTestHang(solved, code)
    return demand.value / STANDARD_GRAVITY / factors.reduce((product, f) => product * f.value, 1)
  }))
}

/** What a counting test hang lets a part carry, kg: potted plant at rest for good, and with its jolts for a moment. */
export interface TestHangLift {
  readonly mass: number
  readonly atRest: number
  readonly forAMoment: number
}

/** What the recorded test hang lifts a part to; null where there is none, or where it does not count for that part (the knot must not have slipped). */
export function testHangLifts(solved: Solved, ofKnot: boolean): TestHangLift | null {
  const mass = testHangMass(solved.hanger.answers)
  if (mass === null || testHangFaults(solved, ofKnot)?.length !== 0) return null
  const forAMoment = mass / allowableReserve(solved.hanger.answers, solved.loads.setDown.case).value
  return { mass, atRest: forAMoment * TEST_SHARE_AT_REST.value, forAMoment }
}

/** That, as a finding; none where nothing is lifted. */
export function liftFindings(solved: Solved, ofKnot: boolean): readonly Finding[] {
  const lift = testHangLifts(solved, ofKnot)
  return lift === null ? [] : [{ code: 'TEST_HANG_LIFTS', ...lift }]
}
