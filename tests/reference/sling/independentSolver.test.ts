import { describe, expect, it } from 'vitest'
import type { Balance, SlingInput, Vec3, Wall } from '../../../src/statics/sling/result'
import { solveSling } from '../../../src/statics/sling/solveSling'
import reference from './independentSolver.json'

// The cases were computed by an independent energy-minimising solver in another language and checked by
// a finite-element program; independentSolver.json says more. Agreement is asked to its own tolerances.
interface Case {
  readonly id: string
  readonly desc: string
  readonly input: Omit<SlingInput, 'gravity' | 'wall'> & { readonly wall?: Wall }
  readonly output: Expected & { readonly status: string; readonly error?: string; readonly upright?: Expected & { readonly negative: number } }
}
interface Expected {
  readonly T?: readonly number[]
  readonly slack?: readonly boolean[]
  readonly tilt_deg?: number
  readonly cg?: Vec3
  readonly wall_N?: readonly number[]
  readonly eig_min_nonzero?: number
  readonly stable?: boolean
  readonly zero_is_symmetry?: boolean
}
const cases = reference.cases as unknown as readonly Case[]

function expectBalance(balance: Balance, expected: Expected): void {
  expected.T!.forEach((T, i) => expect(Math.abs(balance.T[i]! - T), `T of leg ${i}`).toBeLessThanOrEqual(1e-4))
  expect(balance.T).toHaveLength(expected.T!.length)
  expect(balance.slack).toEqual(expected.slack)
  expect(Math.abs((balance.tiltRadians * 180) / Math.PI - expected.tilt_deg!)).toBeLessThanOrEqual(1e-4)
  expected.cg!.forEach((x, i) => expect(Math.abs(balance.cg[i]! - x), `cg ${i}`).toBeLessThanOrEqual(1e-6))
  expect(Math.abs(balance.eigMinNonzero / expected.eig_min_nonzero! - 1)).toBeLessThanOrEqual(1e-4)
  expect(balance.wallN).toHaveLength(expected.wall_N?.length ?? 0)
  expected.wall_N?.forEach((N, i) => expect(Math.abs(balance.wallN[i]! - N), `wall ${i}`).toBeLessThanOrEqual(1e-4))
}

describe('solveSling against an independent solver', () => {
  it.each(cases.map((one) => [one.id, one] as const))('%s', (_, { input, output }) => {
    const result = solveSling({ ...input, gravity: reference.gravity, wall: input.wall ?? null })
    expect(result.status).toBe(output.status)
    if (result.status === 'NOT_CONVERGED') expect.unreachable()
    else if (result.status === 'ERROR') expect(result.error).toBe(output.error)
    else if (result.status === 'UNSTABLE') {
      expectBalance(result.upright!, output.upright!)
      expect(result.upright!.negative).toBe(output.upright!.negative)
    } else {
      expectBalance(result, output)
      expect(result.stable).toBe(output.stable)
      expect(result.zeroIsSymmetry).toBe(output.zero_is_symmetry)
      expect(result.residualRel).toBeLessThan(1e-10)
    }
  })
})
