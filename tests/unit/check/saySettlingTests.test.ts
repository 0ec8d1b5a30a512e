import { describe, expect, test } from 'vitest'
import type { LinkResult } from '#core'
import { factorForTests } from '../../../src/check/factorForTests'
import { logDeviation } from '../../../src/check/pullTests'
import { saySettlingTests } from '../../../src/check/saySettlingTests'
import { K_SCATTER_UNKNOWN, LEAST_SCATTER, TESTS_WORTH_MAKING } from '../../../src/catalogue/pullTests'
import { HOLDS_LIMIT, LEAST_OVERALL_FACTOR } from '../../../src/catalogue/reserves'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { linkIn } from './linkOf'

const check = checkOf(ORDINARY)
const leg = linkIn(check, 'leg', 'watered')
/** A leg that holds by its use and only just by its overall factor, unless the change says otherwise. */
const result = (change: Partial<LinkResult>): LinkResult => ({ ...leg, findings: [], grade: 'weighed', utilisation: 0.2, overallFactor: 4, verdict: 'just holds', ...change })
const saidOf = (...results: readonly LinkResult[]) => saySettlingTests(check.solved, results).map(({ findings }) => findings.find((f) => f.code === 'PULL_TESTS_WOULD_SETTLE'))
const meanOf = (...results: readonly LinkResult[]): number => {
  const said = saidOf(...results)[0]
  return said?.code === 'PULL_TESTS_WOULD_SETTLE' ? said.mean : NaN
}
/** What the mean of a few tests must be for nineteen of twenty strands to bear a force (EN 1990, annex D). */
const meanFor = (force: number): number => force * Math.exp(factorForTests(K_SCATTER_UNKNOWN.points, TESTS_WORTH_MAKING.value) * logDeviation(LEAST_SCATTER.value))
const factors = leg.factors.reduce((product, f) => product * f.value, 1)

describe('what a few pull tests would have to show', () => {
  test('is a strand as much stronger as the overall factor falls short, or one that is used no more than holds', () => {
    const capacity = leg.capacity?.value ?? NaN
    const small = { demand: { value: 0.1, unit: 'N' } } as const
    expect(meanOf(result(small))).toBeCloseTo(meanFor((capacity * LEAST_OVERALL_FACTOR.value) / 4), 9)
    const byUse = (value: number): number => value / (HOLDS_LIMIT.tested.value * factors)
    expect(meanOf(result({ demand: { value: 20, unit: 'N' }, overallFactor: null, utilisation: 0.9 }))).toBeCloseTo(meanFor(byUse(20)), 9)
  })

  test('is what the worst of them asks, and is said of those alone that do not hold', () => {
    const [short, shorter, holds] = [result({ overallFactor: 4.5 }), result({ overallFactor: 3.9 }), result({ verdict: 'holds', overallFactor: 8 })]
    expect(meanOf(short, shorter)).toBeCloseTo(meanOf(shorter), 9)
    const said = saidOf(holds, short)
    expect(said[0]).toBeUndefined()
    expect(said[1]).toBeDefined()
  })

  test('is not said where all hold, where any strength was pulled or rated, nor where something else is wrong', () => {
    expect(saidOf(result({ verdict: 'holds', overallFactor: 8 }))).toEqual([undefined])
    for (const grade of ['tested', 'rated'] as const) expect(saidOf(result({}), result({ grade, verdict: 'holds', overallFactor: null }))).toEqual([undefined, undefined])
    expect(saidOf(result({ verdict: 'fails' }))).toEqual([undefined])
    expect(saidOf(result({ verdict: 'just holds', overallFactor: 7 }))).toEqual([undefined])
    expect(saidOf(result({}), result({ utilisation: null, verdict: 'not enough known' }))).toEqual([undefined, undefined])
  })

  test('is not said where no such cord could be so strong', () => {
    expect(saidOf(result({ demand: { value: 1e5, unit: 'N' } }))).toEqual([undefined])
  })
})
