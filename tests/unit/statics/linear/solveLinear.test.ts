import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { solveLinear } from '../../../../src/statics/linear/solveLinear'
import { seededRandom } from '../../quantity/seededRandom'

const random = seededRandom(7)
const entries = (n: number): number[] => Array.from({ length: n }, () => random() * 2 - 1)
const oracle = (M: number[][], b: number[]): number[] => (lusolve(M, b) as number[][]).map(([x]) => x!)

describe('solveLinear', () => {
  it.each([1, 2, 6, 9, 24])('agrees with a general library on systems of %i', (n) => {
    const M = Array.from({ length: n }, () => entries(n))
    const b = entries(n)
    const solved = solveLinear(M, b)
    expect(solved.ok).toBe(true)
    if (!solved.ok) return
    oracle(M, b).forEach((x, i) => expect(Math.abs(solved.x[i]! - x)).toBeLessThan(1e-9 * (1 + Math.abs(x))))
    expect(solved.residual).toBeLessThan(1e-14)
  })

  it('refuses a singular system that a general library accepts because its equations do not contradict each other', () => {
    const M = [[1, 2], [2, 4]]
    expect(oracle(M, [1, 2])).toEqual([1, 0])
    expect(solveLinear(M, [1, 2])).toEqual({ ok: false, reason: 'singular', rank: 1 })
  })

  it('refuses the stiffness of a mechanism under a load that happens to balance it', () => {
    // Two springs in a row with nothing holding them: any displacement of all three joints is free.
    const k = 2900
    const M = [[k, -k, 0], [-k, 2 * k, -k], [0, -k, k]]
    expect(solveLinear(M, [5, 0, -5])).toEqual({ ok: false, reason: 'singular', rank: 2 })
    expect(solveLinear([[0, 0], [0, 3]], [0, 1])).toMatchObject({ ok: false, reason: 'singular' })
  })

  it('does not take small units for a singular matrix', () => {
    expect(oracle([[1e-15, 0], [0, 1e-15]], [1e-15, 1e-15])).toEqual([0, 0])
    const solved = solveLinear([[1e-15, 0], [0, 1e6]], [1e-15, 3e6])
    expect(solved.ok && solved.x).toEqual([1, 3])
  })

  it('swaps rows where the pivot is zero or small beside its row', () => {
    expect(solveLinear([[0, 2], [3, 0]], [4, 9])).toMatchObject({ ok: true, x: [3, 2] })
    const solved = solveLinear([[10, 1e17], [1, 1]], [1e17, 2])
    expect(solved.ok && solved.x[0]).toBeCloseTo(1, 12)
    expect(solved.ok && solved.x[1]).toBeCloseTo(1, 12)
  })

  it('says so when rounding spoilt the solution', () => {
    // Wilkinson's matrix (The Algebraic Eigenvalue Problem, 1965, ch. 4): elimination doubles the last column row by row.
    const n = 90
    const M = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (j === n - 1 || i === j ? 1 : i > j ? -1 : 0)))
    expect(solveLinear(M, entries(n))).toMatchObject({ ok: false, reason: 'inexact' })
  })

  it('does not compute with what is not a number', () => {
    expect(solveLinear([[1, NaN], [0, 1]], [1, 1])).toEqual({ ok: false, reason: 'not finite' })
    expect(solveLinear([[1, 0], [0, 1]], [1, Infinity])).toEqual({ ok: false, reason: 'not finite' })
    expect(solveLinear([[1e-300]], [1e300])).toEqual({ ok: false, reason: 'not finite' })
  })

  it('throws when the matrix is not square', () => {
    expect(() => solveLinear([[1, 2]], [1])).toThrow(RangeError)
    expect(() => solveLinear([[1]], [1, 2])).toThrow(RangeError)
  })
})
