import { describe, expect, test } from 'vitest'
import { metres, newtons, pascals } from '../../../src/quantity/si'
import { hookFirstYield, hookPeakStress } from '../../../src/statics/curvedBar'
import { ringBending, ringStretch } from '../../../src/statics/ring'
import { fibreStress, roundSection } from '../../../src/statics/section'
import { woodenRing, type WoodenRingInput } from '../../../src/statics/woodenRing'

describe('an open hook', () => {
  test('is never weaker of thicker wire, nor stronger with a wider bowl', () => {
    const wires = [1.5, 2.3, 4, 7, 20].map((d) => hookFirstYield(metres(d / 1000), metres(0.021), pascals(250e6)))
    wires.slice(1).forEach((more, i) => expect(more).toBeGreaterThan(wires[i]!))
    const bowls = [8, 12, 21, 50].map((w) => hookFirstYield(metres(0.0041), metres(w / 1000), pascals(250e6)))
    bowls.slice(1).forEach((less, i) => expect(less).toBeLessThan(bowls[i]!))
  })

  test('of a very wide bowl is a straight bar: 32 M / (pi d3) + F / A', () => {
    const straight = fibreStress(roundSection(metres(0.004)), 7 * 2.002, newtons(7))
    expect(hookPeakStress(metres(0.004), metres(4), newtons(7)) / straight).toBeCloseTo(1, 2)
    expect(hookPeakStress(metres(0.004), metres(4), newtons(7))).toBeGreaterThan(straight)
  })

  test('is stressed in proportion to its load, and alike at any scale', () => {
    const once = hookPeakStress(metres(0.0033), metres(0.019), newtons(40))
    expect(hookPeakStress(metres(0.0033), metres(0.019), newtons(100)) / once).toBeCloseTo(2.5, 12)
    expect(hookPeakStress(metres(0.0099), metres(0.057), newtons(360)) / once).toBeCloseTo(1, 12)
  })
})

describe('a ring', () => {
  test('cut in half is in balance: moments of load and side differ by half the load at the radius', () => {
    const { atLoad, atSide, sidePull } = ringBending(newtons(57), metres(0.038))
    expect(atLoad - atSide).toBeCloseTo(sidePull * 0.038, 12)
    expect(2 * sidePull).toBe(57)
  })

  test('grows along the pull more than it narrows, eight times as much at twice the radius', () => {
    const { along, across } = ringStretch(newtons(57), metres(0.038), 2.4)
    expect(along).toBeGreaterThan(Math.abs(across))
    expect(across).toBeLessThan(0)
    expect(ringStretch(newtons(57), metres(0.076), 2.4).along / along).toBeCloseTo(8, 12)
  })
})

describe('a wooden ring', () => {
  const RING: WoodenRingInput = { load: newtons(66), mean: metres(0.05), thickness: metres(0.012), width: metres(0.017) }

  test('is never more stressed when it is thicker or wider', () => {
    const usual = woodenRing(RING)
    for (const change of [{ thickness: metres(0.015) }, { width: metres(0.02) }]) {
      const thicker = woodenRing({ ...RING, ...change })
      for (const key of ['atLoad', 'atSide', 'splitting'] as const) expect(thicker[key]).toBeLessThan(usual[key])
    }
  })

  test('is bent most under the load', () => {
    const { atLoad, atSide } = woodenRing(RING)
    expect(atLoad).toBeGreaterThan(atSide)
  })
})
