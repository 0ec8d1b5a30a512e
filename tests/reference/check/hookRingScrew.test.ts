import { describe, expect, test } from 'vitest'
import { checkOf, ORDINARY } from '../../unit/hanger/hangerOf'
import { TIMBER_GRAVITY } from '../../../src/catalogue/timber'
import { WITHDRAWAL_ALLOWABLE, WITHDRAWAL_ULTIMATE } from '../../../src/catalogue/withdrawal'
import { madisonShare } from '../../../src/check/woodStrength'
import { INCH, metres, pascals, STANDARD_GRAVITY, POUND } from '../../../src/quantity/si'
import { closedRingLoad, openHookLoad, ringFirstYield, shankSidePull } from '../../../src/statics/wire'

const MILD = pascals(250e6)
const mm = (x: number) => metres(x / 1000)
const POUND_FORCE = POUND * STANDARD_GRAVITY
const PSI = POUND_FORCE / INCH ** 2

describe('wire of 250 N/mm2', () => {
  // Curved bar with a full plastic hinge opposite the mouth, axial force left out; N to whole newtons.
  test.each([[2.3, 8, 55], [3, 10, 98], [4, 12, 190], [5, 15, 298], [6, 18, 429]])('an open hook of %d mm, inside radius %d mm, opens at %d N', (wire, inner, load) => {
    expect(Math.abs(openHookLoad(mm(wire), mm(2 * inner), MILD) - load)).toBeLessThanOrEqual(0.51)
  })

  // Mechanical Engineer's Data Handbook, p. 29, and Roark, ring case 1: M = W R / pi under the load.
  test.each([[3, 20, 104], [4, 25, 197], [5, 30, 321]])('a closed ring of %d mm, mean radius %d mm, first yields at %d N', (wire, mean, load) => {
    expect(Math.abs(ringFirstYield(mm(wire), mm(2 * mean - wire), MILD) - load)).toBeLessThanOrEqual(1)
  })

  test.each([[3, 20, 225], [4, 25, 427]])('a closed ring of %d mm, mean radius %d mm, gives way at %d N', (wire, mean, load) => {
    expect(Math.abs(closedRingLoad(mm(wire), mm(2 * mean - wire), MILD) - load)).toBeLessThanOrEqual(0.51)
  })

  test('such a ring first yields at 0.462 of what makes it give way: 3 pi2 / 64', () => {
    const [wire, inside] = [mm(7), mm(52)]
    expect(ringFirstYield(wire, inside, MILD) / closedRingLoad(wire, inside, MILD)).toBeCloseTo((3 * Math.PI ** 2) / 64, 12)
  })

  test('a shank bends plastically at fy d3 / 6 over the lever', () => {
    expect(shankSidePull(mm(6), mm(30), MILD)).toBeCloseTo((250 * 6 ** 3) / 6 / 30, 9)
    expect(shankSidePull(mm(6), mm(0), MILD)).toBe(Infinity)
  })
})

describe('wood screws in side grain', () => {
  // AWC National Design Specification, W = 2850 G2 D lb per inch of thread (D in inches); in N/mm beside it.
  const GAUGES = [
    { gauge: 6, diameter: 0.138, pounds: [51, 69, 98, 119], newtons: [8.9, 12.2, 17.2, 20.8] },
    { gauge: 8, diameter: 0.164, pounds: [61, 82, 117, 141], newtons: [10.6, 14.4, 20.5, 24.8] },
    { gauge: 10, diameter: 0.19, pounds: [70, 96, 135, 164], newtons: [12.3, 16.7, 23.7, 28.7] },
    { gauge: 12, diameter: 0.216, pounds: [80, 109, 154, 186], newtons: [14, 19, 27, 32.6] },
    { gauge: 14, diameter: 0.242, pounds: [89, 122, 172, 209], newtons: [15.7, 21.3, 30.2, 36.5] },
  ] as const
  const GRAVITIES = [0.36, 0.42, 0.5, 0.55] as const
  const cells = GAUGES.flatMap(({ gauge, diameter, pounds, newtons }) => GRAVITIES.map((gravity, i) => ({ gauge, diameter, gravity, pounds: pounds[i], newtons: newtons[i] })))

  test.each(cells)('No. $gauge, G $gravity: $pounds lb/in, $newtons N/mm', ({ diameter, gravity, pounds = NaN, newtons = NaN }) => {
    const perMetre = WITHDRAWAL_ALLOWABLE.woodScrew.value * gravity ** 2 * diameter * INCH
    expect(Math.abs((perMetre * INCH) / POUND_FORCE - pounds)).toBeLessThanOrEqual(0.52)
    expect(Math.abs(perMetre / 1000 - newtons)).toBeLessThanOrEqual(0.052)
  })

  test('the inch constants of specification and Wood Handbook are the metric ones: 2850 and 15 700', () => {
    expect(WITHDRAWAL_ALLOWABLE.woodScrew.value / PSI).toBeCloseTo(2850, -0.7)
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / PSI).toBeCloseTo(15_700, -1)
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / 1e6).toBe(108.25)
  })

  test('what is allowed hides a factor of 5.5 on what pulls out', () => {
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / WITHDRAWAL_ALLOWABLE.woodScrew.value).toBeCloseTo(5.5, 1)
  })

  test('specific gravities of the two books are not mixed: by volume at 12 % it is the lower number', () => {
    for (const timber of ['softwood', 'hardwood'] as const) expect(TIMBER_GRAVITY[timber].handbook.value).toBeLessThan(TIMBER_GRAVITY[timber].specification.value)
  })

  test('in a check: a 6 mm thread 45 mm deep in softwood by both routes', () => {
    const { links } = checkOf(ORDINARY)
    const capacityOf = (part: string): number | undefined => links.find((l) => l.link === 'fixing' && l.part === part && l.case === 'watered')?.capacity?.value
    // Western redcedar 0.32 (Wood Handbook, table 5-3a), 0.36 (National Design Specification, table 12.3.3A); N and mm.
    expect(capacityOf('ultimateRoute')).toBeCloseTo(108.25 * 0.32 ** 2 * 6 * 45, 9)
    expect(capacityOf('allowableRoute')).toBeCloseTo(19.65 * 0.36 ** 2 * 6 * 45, 9)
  })
})

describe('timber under a lasting load', () => {
  // Madison curve as given in Forests 2021, 12(9), 1148: 18.3 + 108.4 t^-0.0464 %, t in s.
  test.each([[1, 66.9], [10, 62], [50, 58.9]])('after %d years %d % of the short-term strength is left', (years, percent) => {
    expect(Math.abs(madisonShare(years * 365.25 * 86400) * 100 - percent)).toBeLessThanOrEqual(0.06)
  })

  test('a short load never finds more than the short-term strength', () => {
    expect(madisonShare(10)).toBe(1)
    expect(madisonShare(3600)).toBeLessThan(1)
  })

  // National Design Specification, table 2.3.2: permanent 0.9, ten minutes 1.6, seven days 1.25, ten years 1.
  test.each([
    ['dry', {}, 0.9], ['watered', {}, 0.9], ['flooded', {}, 1.25], ['flooded', { 'pot.drainage': 'none' }, 1], ['bump', {}, 1.6], ['setDown', {}, 1.6],
  ] as const)('the published allowable in the case %s with %j takes %d', (code, patch, factor) => {
    const link = checkOf({ ...ORDINARY, ...patch }).links.find((l) => l.link === 'fixing' && l.part === 'allowableRoute' && l.case === code)
    expect(link?.factors.find((f) => f.code === 'duration')?.value).toBe(factor)
  })
})
