import jStat from 'jstat'
import { describe, expect, test } from 'vitest'
import { bundleStrength } from '../../../src/chance/bundle'
import { chanceInterval } from '../../../src/chance/interval'
import { massAt } from '../../../src/chance/masses'
import { chunkGenerators, fillNormals } from '../../../src/chance/normals'
import { logDeviation, overCounted } from '../../../src/chance/spread'
import { ROLL } from '../../../src/catalogue/scatter'
import { chainOfUses, overloadedOf } from './chains'

const { cdf, pdf } = jStat.normal

/** Simpson's rule. */
function integral(f: (x: number) => number, from: number, to: number, steps: number): number {
  const h = (to - from) / steps
  let sum = f(from) + f(to)
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h)
  return (sum * h) / 3
}

/** Strength of a roll of weighed cord, by the catalogue's own spread: its distribution function at a strength over the counted one. */
const spread = ROLL.weighed
const deviation = logDeviation(spread.scatter.value)
const weaker = (ratio: number): number => cdf(Math.log(ratio * spread.counted.value) / deviation, 0, 1)

describe('drawn against closed forms', () => {
  // Classical stress-strength interference: P = integral of F_R(s) f_S(s) ds (Freudenthal, Garrelts and Shinozuka, J. Struct. Div. ASCE 92, 1966).
  test.each([[0.9, 0.08], [0.8, 0.1], [1.1, 0.05]])('a normal load %f +- %f on a lognormal strength, by quadrature', (mean, sigma) => {
    const exact = integral((s) => weaker(s) * pdf(s, mean, sigma), mean - 8 * sigma, mean + 8 * sigma, 2000)
    const strength = overCounted(spread)
    const mass = { low: mean - 1.6449 * sigma, likely: mean, high: mean + 1.6449 * sigma }
    const draws = 20_000
    const hits = overloadedOf(chainOfUses(2, [(z) => massAt(mass, z[0]!) / strength(z[1]!)]), draws, 11)
    const { low, high } = chanceInterval(hits, draws)
    expect(exact).toBeGreaterThan(low)
    expect(exact).toBeLessThan(high)
    // The interval itself is narrow enough to tell a scatter a tenth too large.
    expect(high - low).toBeLessThan(0.2 * exact + 0.004)
  })

  // The weakest of n independent strands: 1 - (1 - p)^n (F. T. Peirce, J. Text. Inst. 17, 1926).
  test('the weakest of four strands', () => {
    const strength = overCounted(spread)
    const load = 1.05
    const exact = 1 - (1 - weaker(load)) ** 4
    const one = 1 - (1 - weaker(load))
    const hits = overloadedOf(chainOfUses(4, [0, 1, 2, 3].map((i) => (z: Float64Array) => load / strength(z[i]!))), 20_000, 5)
    const { low, high } = chanceInterval(hits, 20_000)
    expect([exact > low, exact < high, one < low]).toEqual([true, true, true])
  })

  /**
   * H. E. Daniels, Proc. Roy. Soc. A 183 (1945), 405: the chance that a bundle of n holds less than x a strand, by his recursion
   * G_n(x) = sum over k of (-1)^(k+1) C(n, k) F(x)^k G_(n-k)(n x / (n - k)), G_0 = 1.
   */
  test.each([2, 3, 5])('a bundle of %i strands by the recursion of Daniels', (n) => {
    const scatter = logDeviation(0.3)
    const F = (x: number): number => cdf(Math.log(x) / scatter, 0, 1)
    const choose = (a: number, b: number): number => (b === 0 ? 1 : (choose(a - 1, b - 1) * a) / b)
    const G = (count: number, x: number): number =>
      (count === 0 ? 1 : Array.from({ length: count }, (_, i) => i + 1).reduce((sum, k) => sum + (k % 2 === 1 ? 1 : -1) * choose(count, k) * F(x) ** k * G(count - k, k === count ? 1 : (count * x) / (count - k)), 0))
    const load = 0.75
    const exact = G(n, load)
    const draws = 20_000
    const scratch = new Float64Array(n)
    const hits = overloadedOf(chainOfUses(n, [(z) => {
      for (let i = 0; i < n; i += 1) scratch[i] = Math.exp(scatter * z[i]!)
      return (n * load) / bundleStrength(scratch, n)
    }]), draws, 3)
    const { low, high } = chanceInterval(hits, draws)
    expect(exact).toBeGreaterThan(low)
    expect(exact).toBeLessThan(high)
  })
})

/** xoroshiro128+ as published (D. Blackman and S. Vigna, 2018: shifts 24, 16, 37, with its jump of 2^64), in whole numbers of 64 bits. */
function published(seed: number): { next: () => bigint; jump: () => void } {
  const mask = (1n << 64n) - 1n
  const rotl = (x: bigint, k: bigint): bigint => ((x << k) | (x >> (64n - k))) & mask
  const half = (x: number): bigint => BigInt(x >>> 0)
  let [s0, s1] = [(half(-1) << 32n) | half(~seed), half(seed) << 32n]
  const next = (): bigint => {
    const out = (s0 + s1) & mask
    const mixed = s1 ^ s0
    s0 = (rotl(s0, 24n) ^ mixed ^ (mixed << 16n)) & mask
    s1 = rotl(mixed, 37n)
    return out
  }
  return {
    next,
    jump: () => {
      let [j0, j1] = [0n, 0n]
      for (const word of [0xdf900294d8f554a5n, 0x170865df4b3201fcn]) {
        for (let bit = 0n; bit < 64n; bit += 1n) {
          if ((word >> bit) & 1n) {
            j0 ^= s0
            j1 ^= s1
          }
          next()
        }
      }
      s0 = j0
      s1 = j1
    },
  }
}

describe('the generator', () => {
  test.each([[1, 0], [1, 3], [2_147_483_647, 1]])('of seed %i, chunk %i is xoroshiro128+ as published, jumped ahead', (seed, chunk) => {
    const theirs = published(seed)
    for (let i = 0; i <= chunk; i += 1) theirs.jump()
    const ours = chunkGenerators(seed)(chunk)
    expect(Array.from({ length: 50 }, () => ours.next() >>> 0)).toEqual(Array.from({ length: 50 }, () => Number(theirs.next() & 0xffffffffn)))
  })

  test('its normal numbers have the moments and tails of a normal distribution', () => {
    const z = new Float64Array(60_001)
    fillNormals(chunkGenerators(9)(0), z)
    const moment = (k: number): number => z.reduce((sum, x) => sum + x ** k, 0) / z.length
    expect(moment(1)).toBeCloseTo(0, 1.5)
    expect(moment(2)).toBeCloseTo(1, 1.5)
    expect(Math.abs(moment(3))).toBeLessThan(0.04)
    expect(Math.abs(moment(4) - 3)).toBeLessThan(0.1)
    const tail = chanceInterval(z.filter((x) => x > 2).length, z.length)
    const exact = 1 - cdf(2, 0, 1)
    expect([exact > tail.low, exact < tail.high]).toEqual([true, true])
  })
})

describe('intervals', () => {
  // R. G. Newcombe, Statistics in Medicine 17 (1998), 857, table I, method 3 (Wilson's score interval), four places printed.
  test.each([[81, 263, 0.2553, 0.3662], [15, 148, 0.0624, 0.1605], [1, 29, 0.0061, 0.1718]])('%i of %i by Wilson', (hits, draws, low, high) => {
    const found = chanceInterval(hits, draws)
    expect([found.low.toFixed(4), found.high.toFixed(4), found.method]).toEqual([low.toFixed(4), high.toFixed(4), 'wilson'])
  })

  // J. A. Hanley and A. Lippman-Hand, J. Am. Med. Assoc. 249 (1983), 1743: none of n, at most 3 / n; exactly 1 - 0.05^(1/n).
  test('none of n by the rule of three, which is no less than the exact bound', () => {
    for (const n of [30, 1000, 10_000]) {
      const { low, high } = chanceInterval(0, n)
      expect([low, high]).toEqual([0, 3 / n])
      expect(high).toBeGreaterThanOrEqual(1 - 0.05 ** (1 / n))
      expect(high).toBeLessThan(1.06 * (1 - 0.05 ** (1 / n)))
    }
  })
})
