import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { MIX_KINDS, POTTING_MIXES } from '../../../src/catalogue/pottingMixes'
import { mixDensity } from '../../../src/load/mixDensity'
import { hangerOf } from '../hanger/hangerOf'

const of = (patch: Patch) => mixDensity(hangerOf(patch).answers)
const exactly = (x: number) => ({ low: x, likely: x, high: x })

describe('a mix of the maker’s own', () => {
  test('of which all three are known is watered BD + 1000 CC, flooded BD + 1000 TP, and their own', () => {
    const { dry, watered, flooded, basis } = of({ 'mix.bulkDensity': '230 kg/m3', 'mix.capacity': '46 %', 'mix.porosity': '81 %' })
    expect(dry).toEqual(exactly(230))
    expect(watered.high).toBeCloseTo(690, 9)
    expect(flooded.low).toBeCloseTo(1040, 9)
    expect(basis).toBe('your own')
  })

  test('of which only one or two are known rests on the catalogue', () => {
    const [bulk, capacity, porosity] = [{ 'mix.bulkDensity': '230 kg/m3' }, { 'mix.capacity': '46 %' }, { 'mix.porosity': '81 %' }]
    for (const known of [bulk, capacity, porosity, { ...bulk, ...capacity }, { ...bulk, ...porosity }, { ...capacity, ...porosity }]) {
      expect(of({ 'mix.kind': 'peat', ...known }).basis, JSON.stringify(known)).toBe(POTTING_MIXES.peat.watered.basis)
    }
  })

  test('only what is given replaces the catalogue’s', () => {
    const kind = POTTING_MIXES.peat
    const heavy = of({ 'mix.kind': 'peat', 'mix.bulkDensity': '310 kg/m3' })
    expect(heavy.dry).toEqual(exactly(310))
    // Water as of peat: 950 - 130 = 820 likely.
    expect(heavy.watered.likely).toBeCloseTo(310 + 820, 9)
    const thirsty = of({ 'mix.kind': 'peat', 'mix.capacity': '70 %' })
    expect(thirsty.dry).toEqual({ low: kind.dry.low, likely: kind.dry.likely, high: kind.dry.high })
    expect(thirsty.watered.likely).toBeCloseTo(130 + 700, 9)
    expect(thirsty.flooded.likely).toBeCloseTo(kind.flooded.likely, 9)
    expect(thirsty.basis).toBe(kind.watered.basis)
  })

  test('holds no more than its pores, and its pores are no more than its solids leave', () => {
    expect(of({ 'mix.kind': 'peat', 'mix.porosity': '50 %' }).watered.high).toBeCloseTo(of({ 'mix.kind': 'peat', 'mix.porosity': '50 %' }).flooded.high, 9)
    // 1590 kg/m3 of solids of 2650 leave 40 %: 1990 kg/m3 flooded, not 1590 + 950.
    expect(of({ 'mix.kind': 'peat', 'mix.bulkDensity': '1590 kg/m3' }).flooded.high).toBeCloseTo(1990, 6)
  })

  test('of nothing given is that of its kind', () => {
    for (const kind of MIX_KINDS) expect(of({ 'mix.kind': kind }).flooded).toEqual(POTTING_MIXES[kind].flooded)
  })

  test.each(MIX_KINDS)('%s: ranges stay in order whatever is given', (kind) => {
    for (const patch of [{ 'mix.bulkDensity': '500 kg/m3' }, { 'mix.capacity': '20 %' }, { 'mix.capacity': '97 %' }, { 'mix.porosity': '30 %' }, { 'mix.bulkDensity': '2400 kg/m3', 'mix.porosity': '9 %' }]) {
      const { dry, watered, flooded } = of({ 'mix.kind': kind, ...patch })
      for (const { low, likely, high } of [dry, watered, flooded]) expect(low <= likely && likely <= high, JSON.stringify(patch)).toBe(true)
      for (const end of ['low', 'likely', 'high'] as const) expect(dry[end] <= watered[end] && watered[end] <= flooded[end] + 1e-9, `${end} ${JSON.stringify(patch)}`).toBe(true)
    }
  })
})
