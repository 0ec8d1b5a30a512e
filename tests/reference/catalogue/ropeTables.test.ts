import { describe, expect, test } from 'vitest'
import { JUTE_TWINE, NATURAL_CORD_BREAKS } from '../../../src/catalogue/cordTests'
import { BREAK_BY_DIAMETER } from '../../../src/catalogue/cords'
import { MANILA_ROPE, NYLON_ROPE, POLYESTER_ROPE, POLYPROPYLENE_ROPE, SISAL_ROPE, type RopeRow } from '../../../src/catalogue/ropeTables'

const rowOf = (rope: readonly RopeRow[], mm: number): RopeRow => {
  const row = rope.find((r) => Math.abs(r.diameter - mm / 1000) < 1e-9)
  if (row === undefined) throw new Error(`no row of ${mm} mm`)
  return row
}
const tenacity = ({ breaking, linearDensity }: { breaking: { value: number }; linearDensity: { value: number } | null }): number =>
  linearDensity === null ? Number.NaN : breaking.value / linearDensity.value / 1e4

describe('manila, Cordage Institute CI 1308-96', () => {
  // [mm, g/m, kN, cN/tex]: by hand from 14.882 g/m for 1 lb/100 ft and 4.4482 N for 1 lbf, to three figures.
  test.each([
    [5, 20.4, 1.8, 8.8], [6, 27.1, 2.4, 8.9], [8, 39.3, 4, 10.2], [10, 56.4, 5.4, 9.6], [11, 72.5, 7.01, 9.7], [12, 103.6, 10.61, 10.2], [14, 143, 13.81, 9.6],
  ])('%d mm: %d g/m, %d kN, %d cN/tex', (mm, grams, kilonewtons, centinewtons) => {
    const row = rowOf(MANILA_ROPE, mm)
    expect(row.linearDensity?.value).toBeCloseTo(grams / 1000, grams > 140 ? 3 : 4)
    expect(row.breaking.value / 1000).toBeCloseTo(kilonewtons, 2)
    expect(Math.abs(tenacity(row) - centinewtons)).toBeLessThanOrEqual(0.051)
  })

  // Engineering ToolBox prints the same breaks and, at factor 12, a safe load for 3/8 in: 101 lbf, 45.9 kg.
  test('3/8 in at factor 12 is the safe load printed elsewhere', () => {
    const safe = rowOf(MANILA_ROPE, 10).breaking.value / 12
    expect(Math.round(safe / 4.44822)).toBe(101)
    expect(safe / 9.80665).toBeCloseTo(45.9, 1)
  })

  // An older table of the federal specification's style: pounds-force, and within 1 % of CI 1308.
  test.each([[5, 406], [6, 540], [8, 900], [10, 1220], [11, 1580], [12, 2380]])('%d mm is within 1 %% of the older %d lbf', (mm, lbf) => {
    expect(Math.abs(rowOf(MANILA_ROPE, mm).breaking.value / (lbf * 4.44822) - 1)).toBeLessThan(0.01)
  })

  // OSHA 29 CFR 1910.184, table N-184-16 (1970s print): 1/2 in manila, vertical, 480 lb at design factor 5.
  test('1/2 in is five times the sling table’s 480 lb, within 1 %', () => {
    expect(Math.abs(rowOf(MANILA_ROPE, 12).breaking.value / (5 * 480 * 4.44822) - 1)).toBeLessThan(0.01)
  })

  // FM 5-125: sisal 80 where manila is 100. Hand values in kN.
  test.each([[5, 1.44], [6, 1.92], [8, 3.2], [10, 4.32], [11, 5.6], [12, 8.49], [14, 11.05]])('sisal of %d mm: %d kN', (mm, kilonewtons) => {
    const row = rowOf(SISAL_ROPE, mm)
    expect(row.breaking.value / 1000).toBeCloseTo(kilonewtons, 1.9)
    expect(row.breaking).toMatchObject({ basis: 'computed' })
    expect(row.linearDensity).toBeNull()
  })
})

describe('synthetic rope, three-strand', () => {
  // [mm, g/m, kN] by hand from the printed lb/100 ft and lbf; polyester's g/m and kN as printed.
  const HAND: readonly (readonly [string, readonly RopeRow[], readonly (readonly [number, number, number])[], readonly [number, number]])[] = [
    ['nylon', NYLON_ROPE, [[5, 14.9, 4], [6, 22.3, 6.63], [8, 37.2, 10.2], [10, 52.1, 14.9], [12, 96.7, 25.6]], [26, 30]],
    ['polypropylene', POLYPROPYLENE_ROPE, [[5, 10.4, 3.2], [6, 17.9, 5.03], [8, 26.8, 7.61], [10, 41.7, 10.9], [12, 69.9, 16.8]], [24, 31]],
    ['polyester', POLYESTER_ROPE, [[5, 16, 3.4], [6, 29, 5.85], [8, 45, 9.1], [10, 65, 12.9], [12, 115, 22.6]], [19.5, 21.5]],
  ]
  test.each(HAND)('%s: g/m, kN and the tenacity its rows give', (_, rope, rows, [low, high]) => {
    expect(rope).toHaveLength(rows.length)
    for (const [mm, grams, kilonewtons] of rows) {
      const row = rowOf(rope, mm)
      expect(Math.abs((row.linearDensity?.value ?? 0) * 1000 - grams)).toBeLessThan(0.06)
      expect(Math.abs(row.breaking.value / 1000 / kilonewtons - 1)).toBeLessThan(0.005)
      expect(tenacity(row)).toBeGreaterThan(low)
      expect(tenacity(row)).toBeLessThan(high + 0.5)
    }
  })

  test('thicker of one kind is heavier and stronger', () => {
    for (const rope of [MANILA_ROPE, NYLON_ROPE, POLYPROPYLENE_ROPE, POLYESTER_ROPE, SISAL_ROPE]) {
      rope.slice(1).forEach((row, i) => {
        expect(row.diameter).toBeGreaterThan(rope[i]?.diameter ?? Infinity)
        expect(row.breaking.value).toBeGreaterThan(rope[i]?.breaking.value ?? Infinity)
      })
    }
  })
})

describe('natural cord', () => {
  // GB 2696-1987 prints newtons and kilograms-force side by side.
  test.each([[0, 10.2, 9.7], [1, 20.4, 10.4], [2, 22.4, 10.4], [3, 24.5, 10.1]])('jute twine %d: %d kgf, %d cN/tex on its middle tex', (i, kilograms, centinewtons) => {
    const row = JUTE_TWINE[i]
    expect((row?.breaking.value ?? 0) / 9.80665).toBeCloseTo(kilograms, 1)
    expect((row?.breaking.value ?? 0) / (row?.linearDensity.likely ?? 1) / 1e4).toBeCloseTo(centinewtons, 1)
  })

  // The vendors print kg beside kN: 109 kg for the hollow cotton braid, 442 kg for the hemp.
  test('vendors’ own kilograms', () => {
    expect(NATURAL_CORD_BREAKS.cottonHollowBraid8.value / 9.80665).toBeCloseTo(109, 0)
    expect(Math.abs(NATURAL_CORD_BREAKS.hempTwisted8.value / 9.80665 - 442)).toBeLessThan(1)
    expect(NATURAL_CORD_BREAKS.cottonTwisted4_8.value / 1000).toBeCloseTo(1.42, 2)
    expect(NATURAL_CORD_BREAKS.cottonTwisted12_7.value / 1000).toBeCloseTo(6.67, 2)
    expect(NATURAL_CORD_BREAKS.cottonSolidBraid4_8.value / 1000).toBeCloseTo(2.34, 2)
    expect(NATURAL_CORD_BREAKS.cottonSolidBraid12_7.value / 1000).toBeCloseTo(9.34, 2)
  })

  // [key, diameter in mm]
  test.each([
    ['cottonHollowBraid8', 8], ['cottonTwisted4_8', 4.8], ['cottonTwisted12_7', 12.7], ['cottonSolidBraid4_8', 4.8], ['cottonSolidBraid12_7', 12.7],
    ['hempTwisted8', 8], ['hempFourStrand6', 6], ['hempFourStrand10', 10], ['hempFourStrand16', 16],
  ] as const)('the floor by diameter alone is below %s', (key, mm) => {
    expect(BREAK_BY_DIAMETER.value * (mm / 1000) ** 2).toBeLessThan(NATURAL_CORD_BREAKS[key].value)
  })
})
