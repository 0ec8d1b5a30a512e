import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { panelSide, type PanelSide } from '../../../../src/check/panel/panelSide'
import { cradledOutline } from '../../../../src/load/outline'
import { metres } from '../../../../src/quantity/si'
import { radiusAt } from '../../../../src/statics/unrolled'
import { hangerOf } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'

const told = (patch: Patch) => {
  const { answers } = hangerOf({ ...PANEL, ...patch })
  return panelSide(answers, cradledOutline(answers))
}
const sideOf = (patch: Patch): PanelSide => {
  const side = told(patch)
  if (!side.ok) throw new Error(side.finding.code)
  return side
}
const refusal = (patch: Patch) => {
  const side = told(patch)
  return side.ok ? null : { fails: side.fails, ...side.finding }
}

// The pot of PANEL: rim 170 mm, base 120 mm, 155 mm high.
const [RIM, BASE, HIGH] = [0.085, 0.06, 0.155]
const SLOPE = Math.hypot(RIM - BASE, HIGH)

describe('a straight side', () => {
  test('is its own, and the first knot lies as far along it as is left beyond the base edge', () => {
    const side = sideOf({ 'cradle.first': '95 mm' })
    expect(side.side).toEqual({ baseRadius: BASE, rimRadius: RIM, height: HIGH })
    expect(side.approximate).toBe(false)
    expect(side.knotHeight).toBeCloseTo(((0.095 - BASE) / SLOPE) * HIGH, 12)
  })

  test('has the knot on the base edge where it would be under the base', () => {
    expect(sideOf({ 'cradle.first': '40 mm' }).knotHeight).toBe(0)
    expect(sideOf({ 'cradle.first': '60 mm' }).knotHeight).toBe(0)
  })

  test('takes no knot at the rim or above it, and says how far up one may be', () => {
    const whole = BASE + SLOPE
    const refused = refusal({ 'cradle.first': '30 cm' })
    expect(refused).toMatchObject({ code: 'CRADLE_ABOVE_RIM', fails: true, first: 0.3 })
    expect(refused?.code === 'CRADLE_ABOVE_RIM' ? refused.most : NaN).toBeCloseTo(whole, 12)
    expect(sideOf({ 'cradle.first': `${Math.floor(whole * 1000)} mm` }).knotHeight).toBeGreaterThan(HIGH - 0.001)
  })

  test('of a cylinder ends level with its rim', () => {
    const upright = { 'pot.shape': 'cylinder', 'pot.rim': '160 mm', 'pot.height': '150 mm' } as const
    expect(refusal({ ...upright, 'cradle.first': '230 mm' })).toMatchObject({ code: 'CRADLE_ABOVE_RIM', most: expect.closeTo(0.23, 12) as number })
    expect(sideOf({ ...upright, 'cradle.first': '229 mm' }).knotHeight).toBeCloseTo(0.149, 12)
  })

  test('touches the wall at rim and base edge; a pot widest at its base there alone', () => {
    expect(sideOf({}).contacts).toEqual([{ type: 'circle', z: HIGH, r: RIM }, { type: 'circle', z: 0, r: BASE }])
    expect(sideOf({}).touches).toBe(HIGH)
    const spreading = sideOf({ 'pot.base': '190 mm', 'cradle.first': '120 mm' })
    expect(spreading.contacts).toEqual([{ type: 'circle', z: 0, r: 0.095 }])
    expect(spreading.touches).toBe(0)
    expect(spreading.approximate).toBe(false)
  })
})

describe('a side that is not straight', () => {
  test('widest below its rim counts as a cylinder as wide, and touches the wall where it is widest', () => {
    const side = sideOf({ 'pot.shape': 'bellied', 'pot.belly': '200 mm', 'pot.bellyHeight': '80 mm', 'panel.width': '260 mm' })
    expect(side.side).toEqual({ baseRadius: expect.closeTo(0.1, 9) as number, rimRadius: expect.closeTo(0.1, 9) as number, height: HIGH })
    expect(side.touches).toBeCloseTo(0.08, 12)
    expect(side.approximate).toBe(true)
  })

  test('of a bowl counts as the cone through its rim and the place of its first knot, so far along the curve', () => {
    const [rim, base, high, first] = [0.085, 0.045, 0.11, 0.09]
    const side = sideOf({ 'pot.shape': 'bowl', 'pot.rim': '170 mm', 'pot.base': '90 mm', 'pot.height': '110 mm', 'cradle.first': '90 mm' })
    // The bowl's side is part of an ellipse, upright at the rim.
    const tall = (high * rim) / Math.sqrt(rim * rim - base * base)
    const radius = (z: number): number => rim * Math.sqrt(1 - ((high - z) / tall) ** 2)
    let [z, along] = [0, base]
    const step = 1e-5
    while (along < first) {
      along += Math.hypot(step, radius(z + step) - radius(z))
      z += step
    }
    expect(Math.abs(side.knotHeight - z)).toBeLessThan(0.0005)
    expect(Math.abs(radiusAt(side.side, side.knotHeight) - radius(z))).toBeLessThan(0.0005)
    expect(radiusAt(side.side, metres(high))).toBeCloseTo(rim, 12)
    expect(side.approximate).toBe(true)
    expect(side.touches).toBeCloseTo(high, 12)
    // All along the curve to its rim is as far as knots can be.
    while (z < high) {
      along += Math.hypot(step, radius(Math.min(high, z + step)) - radius(z))
      z += step
    }
    const refused = refusal({ 'pot.shape': 'bowl', 'pot.rim': '170 mm', 'pot.base': '90 mm', 'pot.height': '110 mm', 'cradle.first': '30 cm' })
    expect(Math.abs((refused?.code === 'CRADLE_ABOVE_RIM' ? refused.most : NaN) - along)).toBeLessThan(0.0005)
  })

  test('of the flattest bowl still stands outside the bowl at its base', () => {
    const flat = sideOf({ 'pot.shape': 'bowl', 'pot.rim': '400 mm', 'pot.base': '40 mm', 'pot.height': '60 mm', 'cradle.first': '150 mm' })
    expect(flat.side.baseRadius).toBeGreaterThan(0.02)
    expect(flat.side.baseRadius).toBeLessThan(0.2)
  })

  test('with corners is not reckoned, in a round cover pot it is', () => {
    for (const shape of ['square', 'trough'] as const) expect(refusal({ 'pot.shape': shape, 'pot.length': '300 mm' })).toEqual({ code: 'PANEL_CORNERS', shape, fails: false })
    expect(told({ 'pot.shape': 'square', 'pot.rim': '100 mm', 'pot.base': '80 mm', 'pot.height': '90 mm', 'cover.inside': '170 mm', 'cover.height': '110 mm', 'cover.mass': '800 g' }).ok).toBe(true)
  })
})
