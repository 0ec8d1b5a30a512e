import { eigs } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { symmetricEigenvalues } from '../../../../src/statics/linear/symmetricEigenvalues'
import { seededRandom } from '../../quantity/seededRandom'

const random = seededRandom(13)
const flat = (M: number[][]): Float64Array => Float64Array.from(M.flat())

describe('symmetricEigenvalues', () => {
  it.each([1, 2, 4, 6, 9])('agrees with a general library on a matrix of %i', (n) => {
    const F = Array.from({ length: n }, () => Array.from({ length: n }, () => random() * 2 - 1))
    const M = F.map((row, i) => row.map((x, j) => x + F[j]![i]!))
    const expected = (eigs(M).values as number[]).sort((x, y) => x - y)
    symmetricEigenvalues(n, flat(M)).forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 10))
  })

  it('leaves the matrix as it was', () => {
    const M = new Float64Array([2, 1, 1, 2])
    expect(symmetricEigenvalues(2, M)).toEqual([expect.closeTo(1, 14), expect.closeTo(3, 14)])
    expect([...M]).toEqual([2, 1, 1, 2])
  })

  it('finds a small eigenvalue beside large ones, and an exact zero as rounding', () => {
    // D Q D' with a known turn: eigenvalues 1e8, 1e4 and 3e-3 in a plane turned by 0.4 and 1.1 rad.
    const values = [1e8, 1e4, 3e-3]
    const [c, s, d, t] = [Math.cos(0.4), Math.sin(0.4), Math.cos(1.1), Math.sin(1.1)]
    const Q = [[c, -s * d, s * t], [s, c * d, -c * t], [0, t, d]]
    const M = Q.map((row) => Q.map((other) => row.reduce((sum, x, k) => sum + x * other[k]! * values[k]!, 0)))
    const found = symmetricEigenvalues(3, flat(M))
    expect(found[2]! / 1e8).toBeCloseTo(1, 12)
    expect(found[1]! / 1e4).toBeCloseTo(1, 10)
    expect(Math.abs(found[0]! - 3e-3)).toBeLessThan(1e-6)
    const singular = symmetricEigenvalues(2, new Float64Array([4, 2, 2, 1]))
    expect(Math.abs(singular[0]!)).toBeLessThan(1e-15)
    expect(symmetricEigenvalues(3, new Float64Array(9))).toEqual([0, 0, 0])
  })
})
