import { LEAST_TEST_TIME, MOST_TEST_SLIP, TEST_SHARE_AT_REST } from '../catalogue/testHang'
import { CASES_AT_REST, type CaseCode } from '../load/loadCases'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Finding } from './finding'
import { factor, reserve, type Capacity, type Factor, type Term } from './linkResult'
import type { Solved } from './solved'
import { entering, worked } from './term'
import { allowableReserve, reserveTerms } from './timeFactors'

/** Why a recorded test hang does not count; empty if it does, null if there is none. Slip matters to the knot only. */
export function testHangFaults(solved: Solved, ofKnot: boolean): readonly Finding[] | null {
  const { answers, given } = solved.hanger
  if (answers['testHang.mass'] === null) return null
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

/** What a counting test hang says of a part in a load case: the test mass stood for the potted plant. */
export function byTestHang(solved: Solved, code: CaseCode): TestedEvidence {
  const { answers } = solved.hanger
  const load = solved.loads[code]
  const mass = answers['testHang.mass'] ?? 0
  const capacity = mass * STANDARD_GRAVITY
  const pulled = load.potted * STANDARD_GRAVITY * load.factor
  const reserveOf = allowableReserve(answers, load.case)
  const atRest = (CASES_AT_REST as readonly CaseCode[]).includes(code)
  return {
    demand: { value: pulled, unit: 'N' },
    capacity: { value: capacity, unit: 'N', basis: 'your own', source: 'test hang' },
    factors: [...(atRest ? [factor('atRest', TEST_SHARE_AT_REST)] : []), reserve(reserveOf)],
    terms: [
      entering('pottedMass', 'm_pot', load.potted, 'kg', 'computed', 'potted plant in this state, high value'),
      entering('gravity', 'g', STANDARD_GRAVITY, 'm/s2', 'published', 'standard acceleration of free fall (3rd CGPM, 1901)'),
      entering('caseFactor', 'phi', load.factor, '1', 'computed', load.factorSource),
      worked('demand', 'E', pulled, 'N', 'm_pot * g * phi', 'what the test mass stood for'),
      entering('testMass', 'm_test', mass, 'kg', 'your own', 'mass of the test hang'),
      worked('capacity', 'R', capacity, 'N', 'm_test * g', 'test hang'),
      ...reserveTerms(reserveOf),
    ],
  }
}
