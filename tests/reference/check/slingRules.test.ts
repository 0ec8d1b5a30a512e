import { describe, expect, test } from 'vitest'
import { solveBattery } from '../../../src/check/slingBattery'
import { metres, radians, STANDARD_GRAVITY } from '../../../src/quantity/si'
import type { TautPath } from '../../../src/statics/tautPath'
import { equalLegs } from '../../unit/check/equalLegs'
import { checkOf, ORDINARY } from '../../unit/hanger/hangerOf'

/** A free leg 0.9 m long at an angle from the vertical, down to a leave point 0.16 m above the base. */
function pathAt(fromVertical: number): TautPath {
  const [run, rise] = [0.9 * Math.sin(fromVertical), 0.9 * Math.cos(fromVertical)]
  const leave = { r: run, z: 0.16 }
  return {
    ok: true, leave, touched: [leave], top: metres(0.16 + rise), free: metres(0.9), angle: radians(fromVertical), turn: radians(fromVertical + Math.PI / 2),
    knotToBaseEdge: metres(run), knotToLeave: metres(run + 0.16),
  }
}

const DEGREE = Math.PI / 180
/** The sling a check solves; legs that hardly stretch and are all of one length, the weight on the axis. */
const slingAt = (legs: number, fromVertical: number, mass: number) =>
  solveBattery({ plan: equalLegs(legs, pathAt(fromVertical)), stiffness: 1e9, bedded: 1e9, mass, centre: 0.07, offset: 0, tolerance: 0 })
/** Tension by the counting rule, in the unit of the mass: pounds of load give pounds of tension. */
const countedLoad = (legs: number, fromHorizontal: number, load: number): number => slingAt(legs, (90 - fromHorizontal) * DEGREE, load).floor / STANDARD_GRAVITY

describe('multipliers of a sling catalogue, p. 93, for 90 to 30 degrees from the horizontal', () => {
  // Printed to three decimals, some of them not the nearest: 1.104, 1.555 and 1.742 for 1.1034, 1.5557 and 1.7434.
  const PRINTED = [1, 1.004, 1.015, 1.035, 1.064, 1.104, 1.155, 1.221, 1.305, 1.414, 1.555, 1.742, 2] as const
  const rows = PRINTED.map((multiplier, i) => ({ angle: 90 - 5 * i, multiplier }))

  test.each(rows)('at $angle degrees the rule gives $multiplier of an even share', ({ angle, multiplier }) => {
    const ours = countedLoad(3, angle, 417) / (417 / 3)
    expect(Math.abs(ours - multiplier)).toBeLessThan(0.0015)
    expect(ours).toBeCloseTo(1 / Math.sin(angle * DEGREE), 12)
  })

  // Straight down there is no horizontal run, so no pot between the legs: nothing to solve.
  test.each(rows.slice(1))('at $angle degrees the solved legs pull $multiplier of an even share', ({ angle, multiplier }) => {
    for (const legs of [3, 5]) {
      const { drawn } = slingAt(legs, (90 - angle) * DEGREE, 61)
      const tensions = 'T' in drawn ? drawn.T : []
      expect(tensions).toHaveLength(legs)
      for (const tension of tensions) expect(Math.abs(tension / ((61 * STANDARD_GRAVITY) / legs) - multiplier)).toBeLessThan(0.0015)
    }
  })
})

describe('worked examples as published, two legs', () => {
  test.each([
    // Sling catalogue, p. 93: half of 10 000 lb times its rounded multipliers (1.155, 1.414).
    { load: 10_000, fromHorizontal: 90, printed: 5000, within: 0.01 },
    { load: 10_000, fromHorizontal: 60, printed: 5775, within: 2.5 },
    { load: 10_000, fromHorizontal: 45, printed: 7070, within: 2.5 },
    { load: 10_000, fromHorizontal: 30, printed: 10_000, within: 0.01 },
    // Lifting course, sling load: 30 and 45 degrees from the vertical.
    { load: 1000, fromHorizontal: 60, printed: 577, within: 0.5 },
    { load: 1000, fromHorizontal: 45, printed: 707, within: 0.5 },
    // Hoist vendor, sling load angle: cut off, not rounded.
    { load: 2000, fromHorizontal: 60, printed: 1154, within: 1 },
  ])('$load lb at $fromHorizontal degrees from the horizontal: $printed lb in each', ({ load, fromHorizontal, printed, within }) => {
    expect(Math.abs(countedLoad(2, fromHorizontal, load) - printed)).toBeLessThan(within)
  })
})

describe('mode factors of textile slings (EN 1492-1 practice; EN 13414-1:2003, table 4)', () => {
  // Two legs 2 cos 45 and 2 cos 60; three and four legs 3 cos 45 and 3 cos 60, rounded down to one decimal.
  test.each([
    [2, 45, 1.4], [2, 60, 1], [3, 45, 2.1], [3, 60, 1.5], [4, 45, 2.1], [4, 60, 1.5],
  ])('%d legs up to %d degrees from the vertical: %d', (legs, fromVertical, factor) => {
    const ours = 1 / countedLoad(legs, 90 - fromVertical, 1)
    expect(Math.floor(ours * 10 + 1e-9) / 10).toBe(factor)
  })

  test.each([
    [2, 45, 4.2], [2, 60, 3], [3, 45, 6.3], [4, 60, 4.5],
  ])('a 3.0 t sling as %d legs up to %d degrees bears %d t (maker’s manual)', (legs, fromVertical, tonnes) => {
    expect(countedLoad(legs, 90 - fromVertical, tonnes)).toBeLessThanOrEqual(3)
    expect(countedLoad(legs, 90 - fromVertical, tonnes * 1.02)).toBeGreaterThan(3)
  })

  test('a fourth, fifth and twelfth leg are not counted on', () => {
    const three = countedLoad(3, 52, 88)
    for (const legs of [4, 5, 12]) expect(countedLoad(legs, 52, 88)).toBe(three)
  })
})

describe('manila baskets (29 CFR 1910.184, table N-184-16, 1970s print)', () => {
  // Two legs of one sling; angles from the horizontal, printed to the nearest 5 or 10 lb.
  test.each([
    { size: '1/2 in', vertical: 480, basket: [960, 830, 680] },
    { size: '9/16 in', vertical: 620, basket: [1240, 1070, 875] },
    { size: '5/8 in', vertical: 790, basket: [1580, 1370, 1120] },
  ])('$size: $vertical lb straight', ({ vertical, basket }) => {
    for (const [i, angle] of [90, 60, 45].entries()) {
      const ours = vertical / countedLoad(2, angle, 1)
      expect(Math.abs(ours - (basket[i] ?? NaN))).toBeLessThanOrEqual(5)
    }
  })
})

describe('in a whole check', () => {
  test.each([3, 4, 7])('the worst of %d legs is never asked less than the rule says', (legs) => {
    const check = checkOf({ ...ORDINARY, 'make.legs': String(legs) })
    for (const code of ['dry', 'watered', 'flooded', 'setDown'] as const) {
      const { path } = check.solved.geometry
      const leg = check.links.find((l) => l.link === 'leg' && l.case === code)
      if (!path.ok || !leg?.demand) throw new Error('no sling')
      const rule = check.solved.loads[code].weight / (3 * Math.cos(path.angle))
      expect(leg.demand.value).toBeGreaterThanOrEqual(rule * (1 - 1e-12))
    }
  })
})
