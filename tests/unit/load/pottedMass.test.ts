import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { pottedMass } from '../../../src/load/pottedMass'
import { STATES, type MassRange, type State } from '../../../src/load/states'
import { hangerOf } from '../hanger/hangerOf'

const POT: Patch = { 'pot.rim': '185 mm', 'pot.height': '160 mm', 'pot.base': '122 mm', 'pot.material': 'terracotta', 'pot.drainage': 'hole', 'pot.fillGap': '18 mm' }
const potted = (patch: Patch) => pottedMass(hangerOf({ ...POT, ...patch }).answers)
const width = ({ low, high }: MassRange): number => high - low

describe('a pot that was not weighed', () => {
  test('is the sum of its parts in every state', () => {
    const states = potted({ 'pot.drainage': 'none' })
    for (const state of STATES) {
      const { mass, components } = states[state]
      for (const end of ['low', 'likely', 'high'] as const) expect(mass[end]).toBeCloseTo(components.reduce((sum, c) => sum + c.mass[end], 0), 12)
    }
  })

  test('by hand: shell, mix and plant of known walls and masses', () => {
    // Walls of 9 mm, floor of 9 mm, mix from 9 to 142 mm: outside radii 61 and 92.5 over 160 mm.
    const frustum = (b: number, t: number, h: number): number => (Math.PI * h * (b * b + b * t + t * t)) / 3
    const outside = (z: number): number => 0.061 + ((0.0925 - 0.061) * z) / 0.16
    const shell = frustum(0.061, 0.0925, 0.16) - frustum(outside(0.009) - 0.009, 0.0925 - 0.009, 0.151)
    const mix = frustum(outside(0.009) - 0.009, outside(0.142) - 0.009, 0.133)
    const { dry, watered } = potted({ 'pot.wall': '9 mm', 'mix.kind': 'coir', 'plant.mass': '420 g', 'plant.growth': 'kept' })
    expect(dry.mass.likely).toBeCloseTo(shell * 1850 + mix * 120 + 0.42, 12)
    expect(watered.mass.high).toBeCloseTo(shell * 2000 * 1.15 + mix * 950 + 0.42, 12)
  })

  test('its centre of gravity lies where the moments of the parts put it', () => {
    const { components, centre } = potted({ 'plant.height': '34 cm' }).watered
    const mass = components.reduce((sum, c) => sum + c.mass.high, 0)
    expect(centre).toBeCloseTo(components.reduce((sum, c) => sum + c.mass.high * c.centre, 0) / mass, 12)
    // The plant's own centre is half way up its leaves.
    expect(components.find((c) => c.part === 'plant')?.centre).toBeCloseTo(0.16 + 0.17, 12)
  })

  test('a taller plant lifts the centre and weighs no more', () => {
    const [low, tall] = [potted({ 'plant.height': '10 cm' }), potted({ 'plant.height': '80 cm' })]
    expect(tall.watered.centre).toBeGreaterThan(low.watered.centre)
    expect(tall.watered.mass).toEqual(low.watered.mass)
  })

  test('a weighed empty pot and a weighed plant narrow what is known', () => {
    const guessed = potted({}).dry.mass
    const pot = potted({ 'pot.emptyMass': '1.6 kg' }).dry
    expect(pot.components.find((c) => c.part === 'pot')?.mass).toEqual({ low: 1.6, likely: 1.6, high: 1.6 })
    expect(width(pot.mass)).toBeLessThan(width(guessed))
    expect(width(potted({ 'plant.mass': '300 g' }).dry.mass)).toBeLessThan(width(guessed))
  })

  test('an unglazed pot soaks, a plastic one does not', () => {
    const soaked = (material: string): number => {
      const states = potted({ 'pot.material': material })
      const of = (state: State): number => states[state].components.find((c) => c.part === 'pot')?.mass.likely ?? NaN
      return of('watered') / of('dry')
    }
    expect(soaked('terracotta')).toBeCloseTo(1.12, 12)
    expect(soaked('plastic')).toBe(1)
  })
})

describe('standing water', () => {
  const waterOf = (drainage: string, gap: string) =>
    potted({ 'pot.drainage': drainage, 'pot.wall': '9 mm', 'pot.fillGap': gap }).flooded.components.find((c) => c.part === 'standingWater')?.mass

  test('fills the room above the mix where it cannot run out, and weighs 1 kg a litre', () => {
    // From 132 to 160 mm, inside radii 52.0 + 31.5 z / 160 mm: 0.028 (a2 + ab + b2) pi / 3.
    const inside = (z: number): number => 0.052 + (0.0315 * z) / 0.16
    const [a, b] = [inside(0.132), inside(0.16)]
    const litres = ((Math.PI * 0.028 * (a * a + a * b + b * b)) / 3) * 1000
    expect(waterOf('none', '28 mm')?.likely).toBeCloseTo(litres, 12)
    expect(waterOf('none', '28 mm')?.low).toBeCloseTo(litres, 12)
  })

  test('may or may not be there where drainage is not known', () => {
    expect(waterOf('unknown', '28 mm')?.low).toBe(0)
    expect(waterOf('unknown', '28 mm')?.high).toBe(waterOf('none', '28 mm')?.high)
  })

  test('runs out through a hole, and has no room where the mix is filled to the rim', () => {
    expect(waterOf('hole', '28 mm')).toBeUndefined()
    expect(waterOf('none', '0 mm')?.high ?? 0).toBe(0)
  })

  test('stands only in the flooded state', () => {
    const { dry, watered } = potted({ 'pot.drainage': 'none' })
    for (const { components } of [dry, watered]) expect(components.map((c) => c.part)).not.toContain('standingWater')
  })
})
