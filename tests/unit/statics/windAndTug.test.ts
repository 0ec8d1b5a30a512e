import { describe, expect, test } from 'vitest'
import { metres, metresPerSecond, newtons, pascals, radians } from '../../../src/quantity/si'
import { tug, type Tug } from '../../../src/statics/tug'
import { foliageShareAt, steadySwing, suddenAside, suddenSwing, windForce, type FoliageShare } from '../../../src/statics/wind'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(61)
const between = (low: number, high: number): number => low + (high - low) * random()

describe('wind', () => {
  const CURVE: readonly FoliageShare[] = [[4, 0.95], [11, 0.52], [13, 0.52], [21, 0.3]].map(([speed = 0, share = 0]) => ({ speed: metresPerSecond(speed), share }))

  test('a foliage curve is level beyond its ends, straight between its points and falls nowhere from point to point', () => {
    const shares = [0, 4, 7.5, 12, 17, 21, 60].map((speed) => foliageShareAt(CURVE, metresPerSecond(speed)))
    ;[0.95, 0.95, 0.735, 0.52, 0.41, 0.3, 0.3].forEach((share, i) => expect(shares[i]).toBeCloseTo(share, 12))
  })

  test('a curve without points or with speeds that do not rise is a mistake', () => {
    expect(() => foliageShareAt([], metresPerSecond(8))).toThrow(RangeError)
    expect(() => foliageShareAt([...CURVE].reverse(), metresPerSecond(8))).toThrow(RangeError)
    expect(() => foliageShareAt([...CURVE, ...CURVE.slice(-1)], metresPerSecond(8))).toThrow(RangeError)
  })

  test('nothing in the wind, or no wind, leaves the hanger plumb with its weight alone', () => {
    expect(windForce(pascals(130), [])).toBe(0)
    for (const swing of [steadySwing, suddenSwing]) expect(swing(newtons(47), newtons(0))).toEqual({ lean: 0, tension: 47 })
  })

  test('a sudden wind swings farther and pulls harder than the same wind steady, never beyond three times it', () => {
    for (let i = 0; i < 50; i++) {
      const [weight, force] = [newtons(between(5, 150)), newtons(between(0.5, 90))]
      const [steady, sudden] = [steadySwing(weight, force), suddenSwing(weight, force)]
      expect(sudden.lean).toBeCloseTo(2 * steady.lean, 12)
      expect(sudden.tension).toBeGreaterThan(steady.tension)
      expect(sudden.tension).toBeLessThan(3 * steady.tension)
    }
  })
})

describe('a tug', () => {
  const rest = (weight: number, pull: number, angle: number, centre: number, at: number): Tug => {
    const found = tug({ weight: newtons(weight), pull: newtons(pull), angle: radians(angle), centreDepth: metres(centre), pullDepth: metres(at) })
    if (!found.ok) throw new Error(found.reason)
    return found
  }

  test('is in balance, forces and moments about the hook', () => {
    for (let i = 0; i < 100; i++) {
      const [weight, pull, angle, centre] = [between(20, 120), between(0, 19), between(-1.7, 1.7), between(0.3, 1.2)]
      const at = centre + between(0, 0.2)
      const { tension, direction, lean } = rest(weight, pull, angle, centre, at)
      expect(tension * Math.cos(direction)).toBeCloseTo(weight + pull * Math.cos(angle), 10)
      expect(tension * Math.sin(direction)).toBeCloseTo(pull * Math.sin(angle), 10)
      expect(pull * at * Math.sin(angle - lean)).toBeCloseTo(weight * centre * Math.sin(lean), 10)
    }
  })

  test('straight down only adds, from the other side only mirrors', () => {
    expect(rest(62, 31, 0, 0.7, 0.8)).toEqual({ ok: true, tension: 93, down: 93, aside: 0, direction: 0, lean: 0 })
    const [right, left] = [rest(62, 31, 0.8, 0.7, 0.8), rest(62, 31, -0.8, 0.7, 0.8)]
    expect(left.lean).toBe(0 - right.lean)
    expect(left.aside).toBe(0 - right.aside)
    expect(left.tension).toBe(right.tension)
  })

  test('lifts the pot where it pulls up as hard as it weighs', () => {
    const up = { weight: newtons(62), angle: radians(Math.PI), centreDepth: metres(0.7), pullDepth: metres(0.7) }
    expect(tug({ ...up, pull: newtons(62.01) })).toEqual({ ok: false, reason: 'lifted' })
    expect(tug({ ...up, pull: newtons(61.99) }).ok).toBe(true)
    // Below the centre of gravity it throws the pot over before it lifts it.
    expect(tug({ ...up, pullDepth: metres(0.8), pull: newtons(61) })).toEqual({ ok: false, reason: 'lifted' })
  })
})

describe('the pull aside in a sudden wind', () => {
  test('is the greatest of the whole swing, and twice the wind where that is slight', () => {
    for (const [W = 0, F = 0] of [[50, 2], [50, 20], [50, 49], [31, 62], [12, 140]]) {
      const lean = Math.atan2(F, W)
      const pulls = Array.from({ length: 4001 }, (_, i) => {
        const p = lean * (i / 2000 - 1)
        return Math.hypot(W, F) * (3 * Math.cos(p) - 2 * Math.cos(lean)) * Math.sin(lean + p)
      })
      expect(suddenAside(newtons(W), newtons(F)) / Math.max(...pulls)).toBeCloseTo(1, 6)
    }
    expect(suddenAside(newtons(1000), newtons(1))).toBeCloseTo(2, 4)
  })
})
