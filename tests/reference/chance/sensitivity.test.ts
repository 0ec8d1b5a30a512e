import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { describe, expect, test } from 'vitest'
import { chunkGenerators } from '../../../src/chance/normals'
import { addPair, indicesOf, newSums } from '../../../src/chance/sensitivity'

/** Indices of a function of numbers evenly between 0 and 1, from so many pairs. */
function indices(size: number, places: readonly (readonly number[])[], f: (u: Float64Array) => number, pairs: number) {
  const generator = chunkGenerators(7)(0)
  const [a, b, mixed] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)]
  const fill = (u: Float64Array): void => { for (let i = 0; i < size; i += 1) u[i] = uniformFloat64(generator) }
  const sums = newSums(places.length)
  for (let i = 0; i < pairs; i += 1) {
    fill(a)
    fill(b)
    addPair(sums, f, a, b, mixed, places)
  }
  return indicesOf(sums)
}

describe('Sobol indices', () => {
  /**
   * T. Ishigami and T. Homma, ISUMA '90: sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, x evenly within +-pi. In closed form
   * V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2, V1 = (1 + b pi^4/5)^2 / 2, V2 = a^2/8, V13 = 8 b^2 pi^8 / 225.
   */
  test('of the Ishigami function', () => {
    const [a, b] = [7, 0.1]
    const angle = (u: number): number => Math.PI * (2 * u - 1)
    const found = indices(3, [[0], [1], [2]], (u) => Math.sin(angle(u[0]!)) + a * Math.sin(angle(u[1]!)) ** 2 + b * angle(u[2]!) ** 4 * Math.sin(angle(u[0]!)), 20_000)
    const v13 = (8 * b ** 2 * Math.PI ** 8) / 225
    const [v1, v2] = [(1 + (b * Math.PI ** 4) / 5) ** 2 / 2, a ** 2 / 8]
    const all = v1 + v2 + v13
    expect(all).toBeCloseTo(a ** 2 / 8 + (b * Math.PI ** 4) / 5 + (b ** 2 * Math.PI ** 8) / 18 + 0.5, 9)
    const exact = [{ alone: v1 / all, total: (v1 + v13) / all }, { alone: v2 / all, total: v2 / all }, { alone: 0, total: v13 / all }]
    found.forEach(({ alone, total }, i) => {
      expect(Math.abs(alone - exact[i]!.alone)).toBeLessThan(0.03)
      expect(Math.abs(total - exact[i]!.total)).toBeLessThan(0.02)
    })
  })

  /**
   * Sobol's g-function, product of (|4 u - 2| + a) / (1 + a) (A. Saltelli and I. M. Sobol, Reliab. Eng. Syst. Saf. 50, 1995): V_i = 1 / (3 (1 + a_i)^2),
   * of a group of inputs prod(1 + V_i) - 1, of all V = prod(1 + V_i) - 1.
   */
  test('of a group of inputs of the g-function', () => {
    const a = [0, 1, 4.5, 9]
    const v = a.map((one) => 1 / (3 * (1 + one) ** 2))
    const together = (which: readonly number[]): number => which.reduce((product, i) => product * (1 + v[i]!), 1) - 1
    const all = together([0, 1, 2, 3])
    const found = indices(4, [[0], [1, 2], [3]], (u) => a.reduce((product, one, i) => product * ((Math.abs(4 * u[i]! - 2) + one) / (1 + one)), 1), 20_000)
    const exact = [[0], [1, 2], [3]].map((own) => ({ alone: together(own) / all, total: 1 - together([0, 1, 2, 3].filter((i) => !own.includes(i))) / all }))
    found.forEach(({ alone, total }, i) => {
      expect(Math.abs(alone - exact[i]!.alone)).toBeLessThan(0.03)
      expect(Math.abs(total - exact[i]!.total)).toBeLessThan(0.02)
    })
  })

  test('where nothing varies nothing decides', () => {
    expect(indices(2, [[0], [1]], () => 0.1 + 0.2, 50)).toEqual([{ total: 0, alone: 0 }, { total: 0, alone: 0 }])
  })
})
