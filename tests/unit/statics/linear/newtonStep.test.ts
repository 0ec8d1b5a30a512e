import { lusolve } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { newtonStep } from '../../../../src/statics/linear/newtonStep'
import { seededRandom } from '../../quantity/seededRandom'

const random = seededRandom(11)

describe('newtonStep', () => {
  it.each([1, 3, 6, 8])('agrees with a general library on %i unknowns', (n) => {
    const F = Array.from({ length: n }, () => Array.from({ length: n }, () => random() * 2 - 1))
    const M = F.map((row) => F.map((other) => row.reduce((sum, x, k) => sum + x * other[k]!, 0)))
    const b = Array.from({ length: n }, () => random() * 2 - 1)
    const x = new Float64Array(n)
    expect(newtonStep(n, Float64Array.from(M.flat()), 0.25, Float64Array.from(b), x)).toBe(true)
    const shifted = M.map((row, i) => row.map((entry, j) => entry + (i === j ? 0.25 : 0)))
    const expected = lusolve(shifted, b.map((entry) => -entry)) as number[][]
    expected.forEach(([value], i) => expect(x[i]).toBeCloseTo(value!, 10))
  })

  it('refuses what is not positive definite and leaves the step alone', () => {
    const x = new Float64Array([7, 8])
    const b = new Float64Array([1, 1])
    expect(newtonStep(2, new Float64Array([1, 2, 2, 1]), 0, b, x)).toBe(false)
    expect(newtonStep(2, new Float64Array([1, 0, 0, 0]), 0, b, x)).toBe(false)
    expect(newtonStep(2, new Float64Array([NaN, 0, 0, 1]), 0, b, x)).toBe(false)
    expect([...x]).toEqual([7, 8])
    expect(newtonStep(2, new Float64Array([1, 2, 2, 1]), 1.5, b, x)).toBe(true)
  })
})
