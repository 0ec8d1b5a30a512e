import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import type { Component } from '../../../src/load/component'
import { pottedMass } from '../../../src/load/pottedMass'
import { STATES, type MassRange, type State } from '../../../src/load/states'
import type { WeightPart } from '../../../src/load/weightParts'
import { hangerOf } from '../hanger/hangerOf'
import { without } from '../hanger/without'

/** Straight sides of 6 mm: inside 164 mm wide, 154 mm deep; outside 176 by 160 mm. */
const POT: Patch = {
  'pot.shape': 'cylinder', 'pot.rim': '176 mm', 'pot.height': '160 mm', 'pot.wall': '6 mm', 'pot.material': 'plastic',
  'pot.drainage': 'hole', 'pot.fillGap': '21 mm', 'mix.kind': 'coir', 'plant.mass': '310 g', 'plant.growth': 'kept',
}
const states = (patch: Patch) => pottedMass(hangerOf({ ...POT, ...patch }).answers)
const partIn = (patch: Patch, state: State, part: WeightPart): Component => {
  const found = states(patch)[state].components.find((c) => c.part === part)
  if (!found) throw new Error(`no ${part} ${state}`)
  return found
}
const litres = (width: number, height: number): number => (Math.PI / 4) * width * width * height * 1000
const none: MassRange = { low: 0, likely: 0, high: 0 }

describe('a drainage layer of gravel', () => {
  const LAYER: Patch = { 'layer.depth': '34 mm', 'layer.kind': 'gravel' }

  test('weighs its volume by hand, and the mix what is left to it', () => {
    expect(partIn(LAYER, 'dry', 'layer').mass.likely).toBeCloseTo(litres(0.164, 0.034) * 1.5, 12)
    expect(partIn(LAYER, 'flooded', 'layer').mass.high).toBeCloseTo(litres(0.164, 0.034) * 2, 12)
    expect(partIn(LAYER, 'watered', 'mix').mass.likely).toBeCloseTo(litres(0.164, 0.133 - 0.034) * 0.9, 12)
    expect(partIn(LAYER, 'watered', 'layer').centre).toBeCloseTo(0.006 + 0.017, 12)
  })

  test('makes the pot heavier, though it holds less water', () => {
    expect(states(LAYER).watered.mass.high).toBeGreaterThan(states({}).watered.mass.high)
    expect(states({ ...LAYER, 'layer.kind': 'expandedClay' }).watered.mass.high).toBeLessThan(states({}).watered.mass.high)
  })
})

test('a top dressing lies between mix and rim', () => {
  const dressed: Patch = { 'topping.depth': '13 mm', 'topping.kind': 'lava' }
  expect(partIn(dressed, 'dry', 'topping').mass.likely).toBeCloseTo(litres(0.164, 0.013) * 0.81, 12)
  expect(partIn(dressed, 'dry', 'topping').centre).toBeCloseTo(0.16 - 0.021 + 0.0065, 12)
  expect(partIn(dressed, 'dry', 'mix').mass).toEqual(partIn({}, 'dry', 'mix').mass)
  expect(partIn({ ...dressed, 'pot.drainage': 'none' }, 'flooded', 'standingWater').mass.likely).toBeCloseTo(litres(0.164, 0.021 - 0.013), 12)
})

describe('a saucer', () => {
  const SAUCER: Patch = { 'saucer.width': '200 mm', 'saucer.depth': '24 mm', 'saucer.mass': '140 g' }
  // What the pot, 176 mm wide, leaves of it.
  const round = litres(0.2, 0.024) - litres(0.176, 0.024)

  test('weighs its own mass, with half its water once watered and all of it where water stands', () => {
    expect(partIn(SAUCER, 'dry', 'saucer').mass).toEqual({ low: 0.14, likely: 0.14, high: 0.14 })
    expect(partIn(SAUCER, 'watered', 'saucer').water.likely).toBeCloseTo(round / 2, 12)
    expect(partIn(SAUCER, 'watered', 'saucer').water.low).toBe(0)
    expect(partIn(SAUCER, 'flooded', 'saucer').mass.likely).toBeCloseTo(0.14 + round, 12)
    // A pot on feet leaves all of it: 25 cm wide and 2.5 cm deep would be 1.23 l.
    expect(partIn(SAUCER, 'flooded', 'saucer').water.high).toBeCloseTo(litres(0.2, 0.024), 12)
    expect(partIn({ ...SAUCER, 'saucer.width': '250 mm', 'saucer.depth': '25 mm' }, 'flooded', 'saucer').water.high).toBeCloseTo(1.227, 3)
  })

  test('not weighed is reckoned from its width and depth, of the pot’s material: by hand 2 mm of plastic', () => {
    const shell = litres(0.204, 0.026) - litres(0.2, 0.024)
    expect(partIn({ 'saucer.width': '200 mm', 'saucer.depth': '24 mm' }, 'dry', 'saucer').mass.likely).toBeCloseTo(shell * 0.95, 12)
    expect(partIn({ 'saucer.mass': '140 g' }, 'flooded', 'saucer').water.high).toBeCloseTo(litres(0.176, 0.03), 12)
  })

  test('comes on top of a weighing of pot and plant', () => {
    const weighed: Patch = { 'weighed.mass': '3.7 kg', 'weighed.state': 'watered' }
    const [bare, withIt] = [states(weighed).watered, states({ ...weighed, ...SAUCER }).watered]
    expect(withIt.mass.low - bare.mass.low).toBeCloseTo(0.14, 12)
    expect(withIt.components.map((c) => c.part)).toEqual(['weighed', 'saucer'])
  })
})

describe('a cover pot', () => {
  const COVER: Patch = { 'cover.inside': '210 mm', 'cover.height': '145 mm', 'cover.mass': '1.9 kg' }

  test('holds water in the gap up to the lower of the two rims where water stands, two fingers at most once watered', () => {
    const gap = (height: number): number => litres(0.21, height) - litres(0.176, height)
    expect(partIn(COVER, 'dry', 'coverPot').water).toEqual(none)
    const soaked = partIn({ ...COVER, 'cover.inside': '176 mm' }, 'watered', 'coverPot').water.high
    expect(partIn(COVER, 'watered', 'coverPot').water.high - soaked).toBeCloseTo(gap(0.02), 12)
    expect(partIn(COVER, 'flooded', 'coverPot').water.high - soaked).toBeCloseTo(gap(0.145), 12)
    expect(partIn({ ...COVER, 'cover.height': '400 mm' }, 'flooded', 'coverPot').water.high - soaked).toBeCloseTo(gap(0.16), 12)
  })

  test('narrower than the pot has no gap, and nothing is negative', () => {
    expect(partIn({ ...COVER, 'cover.inside': '150 mm' }, 'flooded', 'coverPot').water.low).toBeGreaterThanOrEqual(0)
  })

  test('not weighed may be of plastic, is usually glazed, and no lighter at the most than the pot would be', () => {
    const { mass } = partIn({ 'cover.inside': '210 mm', 'cover.height': '145 mm' }, 'dry', 'coverPot')
    expect(mass.low).toBeLessThan(0.2)
    expect(mass.likely).toBeGreaterThan(1.5)
    expect(partIn({ 'cover.inside': '210 mm', 'cover.height': '145 mm', 'pot.material': 'concrete' }, 'dry', 'coverPot').mass.high).toBeGreaterThan(mass.high)
  })

  test('keeps the water of a pot with a hole: it may stand to the rim', () => {
    expect(states(COVER).flooded.standing).toBe(true)
    expect(partIn(COVER, 'flooded', 'standingWater').mass.low).toBe(0)
    expect(partIn(COVER, 'flooded', 'standingWater').mass.high).toBeCloseTo(litres(0.164, 0.021), 12)
    expect(states({}).flooded.standing).toBe(false)
  })
})

test('a reservoir is empty dry, up to full once watered, and full where water stands', () => {
  const FULL: Patch = { 'reservoir.volume': '0.8 l' }
  expect(states(FULL).dry.components.some((c) => c.part === 'reservoir')).toBe(false)
  expect(partIn(FULL, 'watered', 'reservoir').mass).toEqual({ low: 0, likely: 0.8, high: 0.8 })
  expect(partIn(FULL, 'flooded', 'reservoir').mass).toEqual({ low: 0.8, likely: 0.8, high: 0.8 })
  expect(partIn(FULL, 'flooded', 'reservoir').centre).toBeLessThan(0.08)
})

describe('a plant', () => {
  const unweighed = (patch: Patch): MassRange =>
    pottedMass(hangerOf({ ...without(POT, 'plant.mass'), ...patch }).answers).watered.components.find((c) => c.part === 'plant')?.mass ?? none

  test('by its size class and kind, with what it gains if it is left to grow', () => {
    expect(unweighed({ 'plant.size': 'pot20', 'plant.growth': 'kept' })).toMatchObject({ low: 0.4, likely: 0.7, high: 1 })
    expect(unweighed({ 'plant.size': 'pot20', 'plant.growth': 'grows' }).high).toBeCloseTo(2, 12)
    expect(unweighed({ 'plant.size': 'pot20', 'plant.kind': 'succulent', 'plant.growth': 'kept' }).high).toBeCloseTo(2, 12)
  })

  test('weighed today counts with what it gains too', () => {
    expect(unweighed({ 'plant.mass': '310 g', 'plant.growth': 'grows' })).toEqual({ low: 0.31, likely: 0.31 * 1.3, high: 0.62 })
  })

  test('in proportion to its pot fills it already: kept at its size it is no heavier', () => {
    const [grows, kept] = [unweighed({ 'plant.growth': 'grows' }), unweighed({ 'plant.growth': 'kept' })]
    expect(kept.likely).toBe(grows.likely)
    expect(kept.high).toBeLessThan(grows.high)
  })

  test('growing does not change a weighing of the whole', () => {
    const weighed = (growth: string): unknown => states({ 'weighed.mass': '3.7 kg', 'weighed.state': 'dry', 'plant.growth': growth }).flooded.mass
    expect(weighed('grows')).toEqual(weighed('kept'))
  })
})

test('a tare is taken off what was weighed', () => {
  const net = (patch: Patch): MassRange => states({ 'weighed.mass': '4.4 kg', 'weighed.state': 'watered', ...patch }).watered.mass
  expect(net({ 'weighed.tare': '700 g' }).likely).toBeCloseTo(3.7, 12)
  expect(net({}).likely).toBe(4.4)
})

describe('in every state of pots of all kinds', () => {
  const KINDS: readonly Patch[] = [
    {}, { 'pot.drainage': 'unknown', 'layer.depth': '30 mm' }, { 'pot.shape': 'bowl', 'pot.base': '80 mm', 'topping.depth': '30 mm', 'topping.kind': 'sphagnum' },
    { 'saucer.width': '190 mm', 'pot.material': 'terracotta' }, { 'cover.inside': '200 mm', 'reservoir.volume': '300 ml' }, { 'cover.mass': '2 kg', 'pot.shape': 'trough' },
    { 'mix.bulkDensity': '1.5 kg/l' }, { 'mix.bulkDensity': '0.5 kg/l', 'mix.kind': 'pumice' }, { 'mix.porosity': '50 %' }, { 'mix.capacity': '95 %', 'mix.kind': 'sand' },
  ]
  const weighings: readonly Patch[] = [{}, ...STATES.map((state) => ({ 'weighed.mass': '3.9 kg', 'weighed.state': state }))]

  test.each(KINDS.flatMap((kind) => weighings.map((weighing) => ({ ...kind, ...weighing }))))('%j', (patch) => {
    const all = states(patch)
    for (const state of STATES) {
      const { mass, components } = all[state]
      for (const end of ['low', 'likely', 'high'] as const) expect(mass[end]).toBeCloseTo(components.reduce((sum, c) => sum + c.mass[end], 0), 12)
      for (const c of components) {
        expect(c.mass.low <= c.mass.likely && c.mass.likely <= c.mass.high, `${state} ${c.part}`).toBe(true)
        expect(c.water.low >= 0 && c.water.high <= c.mass.high + 1e-12, `${state} ${c.part}`).toBe(true)
      }
    }
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(all.watered.mass[end]).toBeGreaterThanOrEqual(all.dry.mass[end] - 1e-12)
      expect(all.flooded.mass[end]).toBeGreaterThanOrEqual(all.watered.mass[end] - 1e-12)
    }
  })
})
