import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { cordStrengths, strandStiffness } from '../../../src/check/cordStrength'
import { cordMassPerMetre } from '../../../src/load/cordMass'
import { hangerOf } from '../../unit/hanger/hangerOf'

const strengthOf = (patch: Patch) => {
  const { capacity, grade } = cordStrengths(hangerOf(patch)).leg.dry
  if (!capacity) throw new Error('no strength')
  return { force: capacity.value, grade }
}

describe('grams per metre', () => {
  test.each([
    // GB 2696-1987, jute twine of three plies, minimum break; the range of its nominal tex, which is that of the
    // dry fibre: on a maker's scale it weighs more by jute's commercial moisture regain, 13.75 % (ASTM D1909).
    [1010, 1050, 100], [1880, 1960, 200], [2080, 2170, 220], [2320, 2420, 240],
  ])('jute twine of %d to %d tex: close below the standard’s %d N', (from, to, standard) => {
    const { force, grade } = strengthOf({ 'cord.fibre': 'jute', 'cord.make': 'twisted', 'cord.linearDensity': `${(1.1375 * (from + to)) / 2} tex` })
    expect(grade).toBe('weighed')
    expect(force).toBeLessThanOrEqual(standard)
    expect(force).toBeGreaterThan(0.9 * standard)
  })

  // Rope makers' tables by diameter, three-strand, least break: [g/m, kN], g/m and kN rounded to three figures.
  const ROPE = {
    nylon: [[14.9, 4], [22.3, 6.63], [37.2, 10.2], [52.1, 14.9], [96.7, 25.6]],
    polypropylene: [[10.4, 3.2], [17.9, 5.03], [26.8, 7.61], [41.7, 10.9], [69.9, 16.8]],
    polyester: [[16, 3.4], [29, 5.85], [45, 9.1], [65, 12.9], [115, 22.6]],
  } as const
  test.each(Object.entries(ROPE).flatMap(([fibre, rows]) => rows.map(([grams, kilonewtons]) => ({ fibre, grams, kilonewtons }))))(
    '$fibre rope of $grams g/m: not above the table’s $kilonewtons kN, nor below three quarters of it', ({ fibre, grams, kilonewtons }) => {
      const { force } = strengthOf({ 'cord.fibre': fibre, 'cord.make': 'twisted', 'cord.linearDensity': `${grams} g/m` })
      expect(force).toBeLessThanOrEqual(kilonewtons * 1000)
      expect(force).toBeGreaterThan(0.75 * kilonewtons * 1000)
    })

  // Manila (Cordage Institute CI 1308-96): the natural-fibre rope whose own-mass strength stands in for hemp.
  test.each([[20.4, 1.8], [27.1, 2.4], [39.3, 4], [56.4, 5.4], [72.5, 7.01], [103.6, 10.61]])('hemp of %d g/m is not taken as stronger than manila’s %d kN', (grams, kilonewtons) => {
    const { force } = strengthOf({ 'cord.fibre': 'hemp', 'cord.make': 'twisted', 'cord.linearDensity': `${grams} g/m` })
    expect(force).toBeLessThanOrEqual(kilonewtons * 1000)
    expect(force).toBeGreaterThan(0.85 * kilonewtons * 1000)
  })

  test.each([
    // Own figures by hand: N = 10 x cN/tex x g/m.
    ['loose', '4.8 g/m', 10 * 4 * 4.8], ['unknown', '8.2 g/m', 10 * 4 * 8.2], ['twisted', '8.6 g/m', 10 * 6 * 8.6], ['braided', '13.4 g/m', 10 * 6 * 13.4],
  ])('%s cotton of %s: %d N', (make, density, force) => {
    expect(strengthOf({ 'cord.fibre': 'cotton', 'cord.make': make, 'cord.linearDensity': density }).force).toBeCloseTo(force, 9)
  })

  test('an 8 mm hollow cotton braid of 13 g/m is not taken for stronger than the 1.07 kN it broke at', () => {
    // Rope vendor, mean of five tests; its mass is not stated, 11 to 13 g/m by 8 to 10 cN/tex.
    expect(strengthOf({ 'cord.fibre': 'cotton', 'cord.make': 'braided', 'cord.linearDensity': '13 g/m' }).force).toBeLessThan(1070)
  })
})

describe('rope by its table', () => {
  // Least break in pounds-force as printed by size in inches: CI 1308-96 (manila), a rope maker's table in the
  // style of the federal specification (nylon, polypropylene), Engineering ToolBox (polyester).
  const PRINTED = {
    manila: [['3/16 in', 405], ['1/4 in', 540], ['5/16 in', 900], ['3/8 in', 1215], ['7/16 in', 1575], ['1/2 in', 2385], ['9/16 in', 3105]],
    nylon: [['3/16 in', 900], ['1/4 in', 1490], ['5/16 in', 2300], ['3/8 in', 3340], ['1/2 in', 5750]],
    polypropylene: [['3/16 in', 720], ['1/4 in', 1130], ['5/16 in', 1710], ['3/8 in', 2440], ['1/2 in', 3780]],
    polyester: [['3/16 in', 765], ['1/4 in', 1315], ['5/16 in', 2050], ['3/8 in', 2900], ['1/2 in', 5085]],
  } as const
  test.each(Object.entries(PRINTED).flatMap(([fibre, rows]) => rows.map(([diameter, pounds]) => ({ fibre, diameter, pounds }))))('$fibre of $diameter: $pounds lbf', ({ fibre, diameter, pounds }) => {
    const { force, grade } = strengthOf({ 'cord.fibre': fibre, 'cord.make': 'rope', 'cord.diameter': diameter })
    expect(grade).toBe('table')
    expect(force / 4.4482216).toBeCloseTo(pounds, 3)
  })
})

describe('diameter alone', () => {
  test.each([[3, 135], [4, 240], [5, 375], [6, 540]])('%d mm: %d N, 15 d2', (diameter, force) => {
    const found = strengthOf({ 'cord.fibre': 'cotton', 'cord.diameter': `${diameter} mm` })
    expect(found.force).toBeCloseTo(force, 9)
    expect(found.grade).toBe('diameter')
  })

  test.each([
    // New, dry, unknotted: rope vendor's tests (hollow cotton 8 mm, hemp 8 mm), cotton mill's figures for
    // three-strand and braided 3/16 and 1/2 in, hemp of 6, 10 and 16 mm cut to DIN EN 1261, manila by CI 1308-96.
    ['hollow cotton braid', '8 mm', 1070], ['cotton three-strand', '3/16 in', 1420], ['cotton three-strand', '1/2 in', 6670],
    ['solid cotton braid', '3/16 in', 2340], ['solid cotton braid', '1/2 in', 9340], ['hemp', '8 mm', 4340], ['hemp', '6 mm', 2600],
    ['hemp', '10 mm', 7100], ['hemp', '16 mm', 17_800], ['manila', '5 mm', 1800], ['manila', '12 mm', 10_610],
  ])('%s of %s broke at %d N, which is more than is reckoned', (_, diameter, broke) => {
    expect(strengthOf({ 'cord.diameter': diameter }).force).toBeLessThan(broke)
  })
})

test.each([
  // pi/4 d2 x packing 0.35, 0.45, 0.55 x 1520 kg/m3, to the last printed figure.
  [3, [3.8, 4.8, 5.9], 0.1], [4, [6.7, 8.6, 10.5], 0.1], [5, [10, 13, 16], 0.5], [6, [15, 19, 24], 0.5],
] as const)('cotton cord of %d mm weighs %j g/m', (diameter, [low, likely, high], within) => {
  const mass = cordMassPerMetre(hangerOf({ 'cord.diameter': `${diameter} mm` }).answers)
  expect(Math.abs(mass.low * 1000 - low)).toBeLessThan(within)
  expect(Math.abs(mass.likely * 1000 - likely)).toBeLessThan(within)
  expect(Math.abs(mass.high * 1000 - high)).toBeLessThan(within)
})

test.each([
  // Break at 6 cN/tex and packing 0.45, kN to two decimals.
  [3, 0.29], [4, 0.52], [5, 0.81], [6, 1.16],
])('braided cotton of %d mm and likely weight breaks at %d kN', (diameter, kilonewtons) => {
  const grams = cordMassPerMetre(hangerOf({ 'cord.diameter': `${diameter} mm` }).answers).likely * 1000
  const { force } = strengthOf({ 'cord.fibre': 'cotton', 'cord.make': 'braided', 'cord.linearDensity': `${grams} g/m` })
  expect(Math.abs(force / 1000 - kilonewtons)).toBeLessThan(0.0051)
})

test.each([
  // Secant stiffness, breaking force over strain at break: 0.5 kN / 0.17, 5.85 kN / 0.20.
  ['cotton', '500 N', 2.9e3], ['polyester', '5.85 kN', 29e3],
] as const)('%s that breaks at %s has the stiffness %d N', (fibre, rated, stiffness) => {
  const hanger = hangerOf({ 'cord.fibre': fibre, 'cord.rated': rated })
  expect(Math.abs(strandStiffness(hanger.answers, cordStrengths(hanger)) / stiffness - 1)).toBeLessThan(0.02)
})
