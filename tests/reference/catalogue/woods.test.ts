import { describe, expect, test } from 'vitest'
import { TIMBER_GRAVITY } from '../../../src/catalogue/timber'
import { WITHDRAWAL_ALLOWABLE, WITHDRAWAL_ULTIMATE } from '../../../src/catalogue/withdrawal'
import { WOODS, type WoodCode } from '../../../src/catalogue/woods'

const PSI = 6894.757

describe('USDA Wood Handbook FPL-GTR-282: table 5-3a against the inch table 5-3b it was converted from', () => {
  // [wood, modulus of rupture in psi, modulus of elasticity in 10^6 psi or null where none was read]
  const INCH: readonly (readonly [WoodCode, number, number | null])[] = [
    ['yellowBirch', 16600, 2.01], ['paperBirch', 12300, 1.59], ['sweetBirch', 16900, 2.17], ['sugarMaple', 15800, 1.83], ['northernRedOak', 14300, null],
    ['whiteOak', 15200, 1.78], ['americanBeech', 14900, 1.72], ['whiteAsh', 15400, 1.74], ['yellowPoplar', 10100, 1.58], ['basswood', 8700, 1.46], ['quakingAspen', 8400, 1.18],
  ]
  test.each(INCH)('%s', (wood, psi, millions) => {
    // Printed in whole MPa and tenths of GPa, from inch values rounded to 100 psi and 0.01 x 10^6 psi.
    expect(Math.abs(WOODS[wood].rupture.value - psi * PSI)).toBeLessThan(0.5e6 + 50 * PSI)
    if (millions !== null) expect(Math.abs(WOODS[wood].elasticity.value - millions * 1e6 * PSI)).toBeLessThan(0.05e9 + 0.005e6 * PSI)
  })

  test('white ash is that of 2021: the 103 MPa of 2010 does not fit 15 400 psi', () => {
    expect(Math.abs(103e6 - 15400 * PSI)).toBeGreaterThan(0.5e6 + 50 * PSI)
  })

  test('green wood keeps 50 to 65 % of its dry strength', () => {
    const both = Object.values(WOODS).flatMap(({ rupture, ruptureGreen }) => (ruptureGreen === null ? [] : [ruptureGreen.value / rupture.value]))
    expect(both).toHaveLength(10)
    for (const share of both) {
      expect(share).toBeGreaterThan(0.495)
      expect(share).toBeLessThan(0.63)
    }
  })

  test('the gravity of the building timbers is that of the woods they are named for', () => {
    expect(WOODS.westernRedcedar.gravity.value).toBe(0.32)
    expect(WOODS.basswood.gravity.value).toBe(0.37)
    expect(Math.min(...Object.values(WOODS).map((w) => w.gravity.value))).toBe(TIMBER_GRAVITY.softwood.handbook.value)
  })

  // Wood Handbook, table of properties as functions of gravity at 12 % moisture (regressions over all
  // species, MPa and GPa, quoted from memory): a row with a slipped digit would stand a third away.
  const SOFTWOODS: readonly string[] = ['easternWhitePine', 'loblollyPine', 'longleafPine', 'ponderosaPine', 'douglasFir', 'sitkaSpruce', 'whiteSpruce', 'engelmannSpruce', 'westernRedcedar']
  test.each(Object.entries(WOODS))('%s lies within a third of what its gravity suggests', (name, { gravity: { value: g }, rupture, elasticity, shear }) => {
    const soft = SOFTWOODS.includes(name)
    const near = (value: number, expected: number) => expect(Math.abs(value / expected - 1)).toBeLessThan(1 / 3)
    near(rupture.value, 1e6 * (soft ? 170.7 * g ** 1.01 : 171.3 * g ** 1.13))
    near(elasticity.value, 1e9 * (soft ? 20.5 * g ** 0.84 : 16.5 * g ** 0.7))
    near(shear.value, 1e6 * (soft ? 16.6 * g ** 0.85 : 21.9 * g ** 1.13))
  })
})

describe('wood screws in side grain', () => {
  test('Wood Handbook eq. 8-10: 108.25 in N and mm is 15 700 in lb and in', () => {
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / (15700 * PSI)).toBeCloseTo(1, 4)
  })
  test('National Design Specification: 19.65 in N and mm is 2850 in lb and in', () => {
    expect(WITHDRAWAL_ALLOWABLE.woodScrew.value / (2850 * PSI)).toBeCloseTo(1, 4)
  })
  // AWC National Design Specification, wood screws: the table's lb per inch of thread.
  test.each([[0.164, 0.42, 82], [0.164, 0.5, 117], [0.19, 0.42, 96], [0.19, 0.5, 135], [0.216, 0.42, 109], [0.216, 0.5, 154]])('a screw of %d in at gravity %d: %d lb/in', (inches, gravity, printed) => {
    const perMetre = WITHDRAWAL_ALLOWABLE.woodScrew.value * gravity ** 2 * inches * 0.0254
    expect(Math.abs(perMetre / 175.127 - printed)).toBeLessThan(1)
  })
  test('the hidden safety of the allowable is 5.5', () => {
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / WITHDRAWAL_ALLOWABLE.woodScrew.value).toBeCloseTo(5.5, 1)
  })
})
