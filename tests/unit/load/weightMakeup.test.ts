import { describe, expect, test } from 'vitest'
import { STATES, weightMakeup, WEIGHT_PARTS, WEIGHT_PART_NAMES, type Patch } from '#core'
import { hangerMass } from '../../../src/load/hangerMass'
import { pottedMass } from '../../../src/load/pottedMass'
import { hangerOf } from '../hanger/hangerOf'

const POT: Patch = { 'pot.rim': '185 mm', 'pot.height': '160 mm', 'pot.base': '122 mm', 'pot.material': 'terracotta', 'pot.drainage': 'none', 'layer.depth': '20 mm', 'saucer.width': '190 mm', 'place.exposure': 'outdoors' }
function makeup(patch: Patch) {
  const { answers } = hangerOf({ ...POT, ...patch })
  return weightMakeup(pottedMass(answers), hangerMass(answers))
}

describe.each([{}, { 'weighed.mass': '4.1 kg', 'weighed.state': 'dry' }, { 'weighed.mass': '6.3 kg', 'weighed.state': 'watered' }, { 'weighed.mass': '7.2 kg', 'weighed.state': 'flooded' }])('%j', (patch: Patch) => {
  test.each(STATES)('%s: the segments add up, end by end, and no water weighs more than what it is in', (state) => {
    const { segments, total } = makeup(patch)[state]
    for (const end of ['low', 'likely', 'high'] as const) expect(segments.reduce((sum, s) => sum + s.mass[end], 0)).toBeCloseTo(total[end], 12)
    for (const { part, mass, water } of segments) {
      expect(mass.low <= mass.likely && mass.likely <= mass.high, part).toBe(true)
      expect(water >= 0 && water <= mass.likely + 1e-12, part).toBe(true)
    }
    expect(new Set(segments.map((s) => s.part)).size).toBe(segments.length)
  })

  test('dry there is no water', () => {
    expect(makeup(patch).dry.segments.map((s) => s.water)).toEqual(makeup(patch).dry.segments.map(() => 0))
  })
})

test('of a pot that was not weighed it names every part', () => {
  expect(makeup({}).flooded.segments.map((s) => s.part)).toEqual(['pot', 'layer', 'mix', 'plant', 'rain', 'standingWater', 'saucer', 'hanger'])
})

test('a weighing stands as one part: exact in its state, with the water that comes on top when wetter', () => {
  const { dry, watered, flooded } = makeup({ 'weighed.mass': '6.3 kg', 'weighed.state': 'watered' })
  expect(watered.segments[0]).toMatchObject({ part: 'weighed', mass: { low: 6.3, likely: 6.3, high: 6.3 } })
  expect([dry.weighed, watered.weighed, flooded.weighed]).toEqual([false, true, false])
  expect(dry.segments.map((s) => s.part)).toEqual(['weighed', 'saucer', 'hanger'])
  // Rain on the leaves was not on the scale.
  expect(flooded.segments.map((s) => s.part)).toEqual(['weighed', 'layer', 'mix', 'standingWater', 'rain', 'saucer', 'hanger'])
  // What of the weighing is water when watered is what is gone when dry.
  expect(6.3 - (dry.segments[0]?.mass.likely ?? NaN)).toBeCloseTo(watered.segments[0]?.water ?? NaN, 12)
})

test('every part has a name', () => {
  expect(Object.keys(WEIGHT_PART_NAMES).sort()).toEqual([...WEIGHT_PARTS].sort())
})
