import { describe, expect, test } from 'vitest'
import { MOISTURE_POINT } from '../../../src/catalogue/sticks'
import { WOODS } from '../../../src/catalogue/woods'
import { lowerTail, madisonShare, moistureAdjusted, permissibleBending, share1947, slopeShare } from '../../../src/check/woodStrength'
import { pascals, seconds } from '../../../src/quantity/si'

const YEAR = 365.25 * 86400

describe('wood under a lasting load', () => {
  // Forests 2021, 12(9), 1148: the Madison curve 18.3 + 108.4 t^-0.0464 and Wood's line of 1947, 90.4 - 6.3 lg t (hours).
  test.each([[1, 66.9], [10, 62], [50, 58.9]])('Madison, %d years: %d %%', (years, percent) => {
    expect(Math.abs(madisonShare(years * YEAR) * 100 - percent)).toBeLessThanOrEqual(0.06)
  })
  test('Wood 1947, ten years: 59.3 %', () => {
    expect(Math.abs(share1947(seconds(10 * YEAR)) * 100 - 59.3)).toBeLessThanOrEqual(0.06)
  })
  test('the older line is the stricter one over the years of a hanger', () => {
    for (const years of [1, 3, 17, 50]) expect(share1947(seconds(years * YEAR))).toBeLessThan(madisonShare(years * YEAR))
  })
  test('neither gives more than a short pull', () => {
    expect(share1947(seconds(1))).toBe(1)
    expect(madisonShare(1)).toBe(1)
  })
})

describe('moisture, USDA Wood Handbook, eq. 5-3 and table 5-13', () => {
  // The handbook's own worked case, white ash at 8 % (the moisture as remembered): modulus of rupture 103 MPa at 12 %, 66 MPa green, Mp 24 %: 103 (103/66)^(4/12), by hand 119.5 MPa.
  test('white ash at 8 %: 119.5 MPa', () => {
    expect(moistureAdjusted(pascals(103e6), pascals(66e6), 0.08, MOISTURE_POINT.whiteAsh.value) / 1e6).toBeCloseTo(119.5, 1)
  })
  test('at 12 % the table’s own, from Mp on that of green wood', () => {
    const { rupture, ruptureGreen } = WOODS.douglasFir
    const green = pascals(ruptureGreen?.value ?? NaN)
    expect(moistureAdjusted(pascals(rupture.value), green, 0.12, 0.24)).toBe(85e6)
    expect(moistureAdjusted(pascals(rupture.value), green, 0.2399999, 0.24) / 53e6).toBeCloseTo(1, 5)
    expect(moistureAdjusted(pascals(rupture.value), green, 0.31, 0.24)).toBe(53e6)
  })
  // Half way between 12 % and Mp the strength is the geometric mean of dry and green.
  test('yellow birch half way, at 19.5 %', () => {
    expect(moistureAdjusted(pascals(114e6), pascals(57e6), 0.195, MOISTURE_POINT.yellowBirch.value)).toBeCloseTo(Math.sqrt(114e6 * 57e6), 0)
  })
})

describe('a clear, straight stick', () => {
  // ASTM D245 (divisors as remembered): mean x (1 - 1.645 x 0.16) x 0.9 / 2.3 for hardwood, / 2.1 for softwood: MPa by hand.
  test.each([['yellowBirch', 32.9], ['americanBeech', 29.7], ['yellowPoplar', 20.2], ['easternWhitePine', 18.6]] as const)('%s may bear %d MPa for good', (wood, megapascals) => {
    const { kind, rupture } = WOODS[wood]
    expect(permissibleBending(kind, rupture) / 1e6).toBeCloseTo(megapascals, 1)
  })
  test('the 5 % value at a scatter of 16 %: 0.737 of the mean', () => {
    expect(lowerTail(0.16)).toBeCloseTo(0.737, 3)
    expect(lowerTail(0)).toBe(1)
  })
  test('whole woods: softwoods are those of needle trees', () => {
    const soft = Object.entries(WOODS).filter(([, { kind }]) => kind === 'softwood').map(([name]) => name)
    expect(soft).toEqual(['easternWhitePine', 'loblollyPine', 'longleafPine', 'ponderosaPine', 'douglasFir', 'sitkaSpruce', 'whiteSpruce', 'engelmannSpruce', 'westernRedcedar'])
  })
  // Wood Handbook, table 5-12 (as remembered).
  test.each([[0, 1], [1 / 25, 0.96], [1 / 15, 0.89], [1 / 10, 0.81], [0.15, 0.68], [1 / 5, 0.55]])('grain running out %d: %d is left', (slope, share) => {
    expect(slopeShare(slope)).toBeCloseTo(share, 12)
  })
  test('steeper than 1 in 5 no table says', () => {
    expect(slopeShare(0.21)).toBeNull()
  })
})
