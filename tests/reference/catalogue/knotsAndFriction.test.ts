import { describe, expect, test } from 'vitest'
import type { Range, Value } from '../../../src/catalogue/basis'
import { FIBRE_PROPERTIES } from '../../../src/catalogue/cords'
import { FRICTION_PAIRS } from '../../../src/catalogue/frictionPairs'
import { KNOT_EFFICIENCIES } from '../../../src/catalogue/knotEfficiencies'
import { TIED_STRAND } from '../../../src/catalogue/knots'
import { larksHeadEfficiency } from '../../../src/check/sections'

const lowest = (v: Value | Range): number => ('low' in v ? v.low : v.value)

describe('published efficiencies', () => {
  // Cordage Institute: the same hitch on a ring of 16 mm and on a post of 102 mm.
  test.each(['anchorBend', 'twoHalfHitches'] as const)('%s keeps more on a thick post than on a thin ring', (knot) => {
    expect(KNOT_EFFICIENCIES[knot].onPost102.low).toBeGreaterThan(KNOT_EFFICIENCIES[knot].onRing16.low)
    expect(KNOT_EFFICIENCIES[knot].onPost102.high).toBeGreaterThan(KNOT_EFFICIENCIES[knot].onRing16.high)
  })

  test('a lark’s head sling to sling: 22 kN down to 8.8 kN', () => {
    expect(KNOT_EFFICIENCIES.larksHead.slingToSling.value).toBeCloseTo(8.8 / 22, 12)
  })

  test('a figure-eight loop that loses 35 % keeps the rest', () => {
    expect(KNOT_EFFICIENCIES.figureEightLoop.vendor.value).toBeCloseTo(1 - 0.35, 12)
  })

  test('only the lark’s head on a thick bar was found to lose nothing', () => {
    const whole = Object.entries(KNOT_EFFICIENCIES).flatMap(([knot, by]) => Object.entries<Value | Range>(by).flatMap(([who, v]) => (lowest(v) >= 1 ? [`${knot} ${who}`] : [])))
    expect(whole).toEqual(['larksHead onThickBar'])
  })

  test('what the check counts is within what was found', () => {
    expect(TIED_STRAND.value).toBeLessThanOrEqual(KNOT_EFFICIENCIES.overhand.handbook.value)
    expect(TIED_STRAND.value).toBeLessThanOrEqual(KNOT_EFFICIENCIES.square.institute.high)
    const { slingToSling, onThinBar } = KNOT_EFFICIENCIES.larksHead
    for (const ratio of [0, 0.3, 1, 2, 7, 15, 60]) {
      expect(larksHeadEfficiency(ratio).value).toBeGreaterThanOrEqual(slingToSling.value)
      expect(larksHeadEfficiency(ratio).value).toBeLessThan(onThinBar.value)
    }
  })
})

describe('friction', () => {
  test.each(['cottonOnCotton', 'nylonOnNylon', 'polyesterOnPolyester', 'viscoseOnViscose'] as const)('%s: less sliding than at rest', (pair) => {
    expect(FRICTION_PAIRS[pair].sliding.value).toBeLessThan(FRICTION_PAIRS[pair].atRest.value)
  })

  test('what the check counts as low for cotton and for slick cord is within what was found', () => {
    const { cottonOnCotton, polyesterOnPolyester } = FRICTION_PAIRS
    expect(FIBRE_PROPERTIES.cotton.onItself.value).toBeGreaterThanOrEqual(cottonOnCotton.sliding.value)
    expect(FIBRE_PROPERTIES.cotton.onItself.value).toBeLessThan(cottonOnCotton.atRest.value)
    expect(FIBRE_PROPERTIES.polyester.onItself.value).toBeLessThanOrEqual(polyesterOnPolyester.sliding.value)
    expect(FIBRE_PROPERTIES.cotton.onPot.value).toBe(0.24)
  })
})
