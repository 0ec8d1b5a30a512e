import { describe, expect, test } from 'vitest'
import { metres, newtons, radians } from '../../../src/quantity/si'
import { wrapGrip } from '../../../src/statics/friction'
import { overBeam, sharedOverBeam } from '../../../src/statics/overBeam'
import { bundleDiameter, wrappingCord, wrapsForGrip, wrapsFrom } from '../../../src/statics/wrappingCord'
import { seededRandom } from '../quantity/seededRandom'

const random = seededRandom(62)
const between = (low: number, high: number): number => low + (high - low) * random()
const HALF = radians(Math.PI)

describe('a cord over a beam', () => {
  test('just stays at the friction it needs, runs below it, in either direction', () => {
    for (let i = 0; i < 50; i++) {
      const [one, other, turn] = [newtons(between(5, 80)), newtons(between(5, 80)), radians(between(1, 3.5))]
      const { frictionNeeded, leastLight, largestRatio } = overBeam({ pulls: [one, other], friction: 0.2, turn })
      expect(overBeam({ pulls: [other, one], friction: frictionNeeded * 1.0001, turn }).runs).toBe(false)
      expect(overBeam({ pulls: [one, other], friction: frictionNeeded * 0.9999, turn }).runs).toBe(true)
      expect(leastLight * largestRatio).toBeCloseTo(Math.max(one, other), 10)
    }
  })

  test('equal sides need no friction; a slack side cannot be held; the beam bears both', () => {
    expect(overBeam({ pulls: [newtons(33), newtons(33)], friction: 0, turn: HALF })).toMatchObject({ ratio: 1, runs: false, frictionNeeded: 0 })
    expect(overBeam({ pulls: [newtons(0), newtons(33)], friction: 0.5, turn: HALF })).toMatchObject({ ratio: Infinity, runs: true, frictionNeeded: Infinity })
    expect(overBeam({ pulls: [newtons(0), newtons(0)], friction: 0.5, turn: HALF })).toMatchObject({ ratio: 1, runs: false })
    expect(overBeam({ pulls: [newtons(21), newtons(33)], friction: 0.2, turn: HALF }).onBeam).toBeCloseTo(54, 12)
    expect(overBeam({ pulls: [newtons(33), newtons(33)], friction: 0.2, turn: radians(Math.PI / 3) }).onBeam).toBeCloseTo(33, 12)
  })

  test('two unequal sides under one load bear it between them, stretch alike while held and stop at the ratio of friction once it runs', () => {
    for (let i = 0; i < 60; i++) {
      const [weight, first, second, friction] = [newtons(between(10, 150)), metres(between(0.2, 1.5)), metres(between(0.2, 1.5)), between(0, 0.4)]
      const { pulls, runs } = sharedOverBeam({ weight, lengths: [first, second], friction, turn: HALF })
      expect(pulls[0] + pulls[1]).toBeCloseTo(weight, 10)
      if (runs) expect(Math.max(...pulls) / Math.min(...pulls)).toBeCloseTo(Math.exp(friction * Math.PI), 10)
      else expect(pulls[0] * first).toBeCloseTo(pulls[1] * second, 10)
      const swapped = sharedOverBeam({ weight, lengths: [second, first], friction, turn: HALF })
      expect(swapped.pulls[0]).toBeCloseTo(pulls[1], 10)
      expect(overBeam({ pulls, friction: friction + 1e-9, turn: HALF }).runs).toBe(false)
    }
    expect(sharedOverBeam({ weight: newtons(70), lengths: [metres(0.3), metres(0.9)], friction: 0, turn: HALF })).toEqual({ pulls: [35, 35], runs: true })
  })
})

describe('wrapping cord', () => {
  const KNOT = { bundle: metres(0.023), cord: metres(0.0035), tails: metres(0.24) }

  test('a cord cut for so many wraps makes them, one a little shorter makes one less', () => {
    for (const wraps of [1, 4, 7, 12]) {
      const { length, height, fold } = wrappingCord({ ...KNOT, wraps })
      expect(wrapsFrom({ ...KNOT, length })).toBe(wraps)
      expect(wrapsFrom({ ...KNOT, length: metres(length - 0.0001) })).toBe(wraps - 1)
      expect(fold).toBeCloseTo(2 * height, 12)
    }
    expect(wrapsFrom({ ...KNOT, length: metres(0.1) })).toBe(0)
  })

  test('no wraps ask for the tails alone', () => {
    expect(wrappingCord({ ...KNOT, wraps: 0 }).length).toBe(0.24)
  })

  test('a bundle fills its share of its circle', () => {
    const bundle = bundleDiameter(19, metres(0.0042), 0.77)
    expect((19 * 0.0042 ** 2) / bundle ** 2).toBeCloseTo(0.77, 12)
  })

  test('the wraps asked for grip, one less would not', () => {
    for (let i = 0; i < 50; i++) {
      const [pull, friction, tension] = [newtons(between(80, 600)), between(0.15, 0.4), newtons(between(5, 40))]
      const found = wrapsForGrip(pull, friction, tension)
      if (!found.ok) throw new Error(found.reason)
      expect(wrapGrip(friction, found.wraps, tension)).toBeGreaterThanOrEqual(pull * (1 - 1e-8))
      if (found.wraps > 1) expect(wrapGrip(friction, found.wraps - 1, tension)).toBeLessThan(pull)
    }
    expect(wrapsForGrip(wrapGrip(0.3, 7, newtons(11)), 0.3, newtons(11))).toEqual({ ok: true, wraps: 7 })
    expect(wrapsForGrip(newtons(0), 0.3, newtons(11))).toEqual({ ok: true, wraps: 1 })
  })

  test('slack or slippery wraps never grip', () => {
    for (const [friction, tension] of [[0, 30], [0.3, 0]] as const) expect(wrapsForGrip(newtons(50), friction, newtons(tension))).toEqual({ ok: false, reason: 'noGrip' })
  })
})
