import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { answersOfTier } from '../../../../src/check/tiers/answersOfTier'
import { pottedMass } from '../../../../src/load/pottedMass'
import { hangerOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'

/** A first pot of 100 mm and one half as wide again and twice as high under it. */
const TWO: Patch = {
  ...without(ORDINARY, 'weighed.mass', 'weighed.state'),
  'pot.rim': '100 mm', 'pot.height': '90 mm', 'pot.base': '70 mm',
  'make.arrangement': 'tiers', 'tiers.count': '2', 'tiers.how': 'runOn', 'second.rim': '150 mm', 'second.height': '180 mm', 'second.base': '105 mm', 'second.strand': '420 mm',
}
const [WIDE, HIGH] = [1.5, 2]
const lowerOf = (patch: Patch) => answersOfTier(hangerOf({ ...TWO, ...patch }).answers, 2)

describe('what is told of the first pot alone', () => {
  test('is taken of a lower one in proportion: widths by its rim, heights by its height, masses by its volume', () => {
    const first = { 'pot.emptyMass': '0.4 kg', 'saucer.width': '90 mm', 'saucer.mass': '100 g', 'reservoir.volume': '0.2 l', 'cover.inside': '120 mm', 'cover.height': '80 mm', 'cover.mass': '0.5 kg', 'plant.mass': '0.2 kg', 'plant.height': '20 cm', 'plant.width': '25 cm', 'plant.trail': '30 cm', 'seat.offset': '8 mm' } as const
    const { answers } = hangerOf({ ...TWO, ...first })
    const lower = lowerOf(first)
    const volume = WIDE * WIDE * HIGH
    const shares = {
      'pot.emptyMass': volume, 'reservoir.volume': volume, 'cover.mass': volume, 'plant.mass': volume, 'saucer.mass': WIDE * WIDE,
      'saucer.width': WIDE, 'cover.inside': WIDE, 'plant.height': WIDE, 'plant.width': WIDE, 'plant.trail': WIDE, 'seat.offset': WIDE, 'cover.height': HIGH,
    } as const
    for (const [path, share] of Object.entries(shares) as [keyof typeof shares, number][]) expect(lower[path], path).toBeCloseTo(share * (answers[path] ?? NaN), 12)
  })

  test('has the shape of the first: a belly wider than its rim, a trough longer', () => {
    const bellied = { 'pot.shape': 'bellied', 'pot.belly': '130 mm', 'pot.bellyHeight': '45 mm' } as const
    expect(lowerOf(bellied)['pot.belly']).toBeCloseTo(0.13 * WIDE, 12)
    expect(lowerOf(bellied)['pot.bellyHeight']).toBeCloseTo(0.045 * HIGH, 12)
    expect(lowerOf({ ...bellied, 'second.base': '210 mm' })['pot.belly'], 'never narrower than its base').toBeCloseTo(0.21, 12)
    expect(lowerOf({ 'pot.shape': 'trough', 'pot.length': '300 mm' })['pot.length']).toBeCloseTo(0.3 * WIDE, 12)
    expect(lowerOf({ 'pot.shape': 'cylinder' })['pot.base']).toBeCloseTo(0.15, 12)
    expect(lowerOf({})['pot.base']).toBeCloseTo(0.105, 12)
  })

  test('fills no more of a low pot than two fifths of its height', () => {
    const layered = { 'layer.depth': '50 mm', 'layer.kind': 'gravel' } as const
    expect(lowerOf(layered)['layer.depth']).toBeCloseTo(0.05, 12)
    expect(lowerOf({ ...layered, 'second.height': '60 mm' })['layer.depth']).toBeCloseTo(0.4 * 0.06, 12)
  })

  test('counts no more filler strands than the lower legs have', () => {
    const [six, two] = ['6', '2'].map((strands) => lowerOf({ 'make.strands': '6', 'make.fillers': '4', 'second.strands': strands })['make.fillers'])
    expect([six, two]).toEqual([4, 2])
  })
})

describe('a lower pot that was not weighed, under one that was', () => {
  const weighed = { 'weighed.mass': '2.5 kg', 'weighed.state': 'watered' } as const
  const wateredOf = (patch: Patch): number => pottedMass(lowerOf(patch)).watered.mass.high

  test('weighs as much as the first for its volume, less what else stood on the scale, where that is more', () => {
    const like = { 'second.height': '90 mm', 'second.rim': '100 mm', 'second.base': '70 mm' } as const
    expect(wateredOf({ ...weighed, ...like })).toBeCloseTo(2.5, 9)
    expect(wateredOf({ ...weighed, ...like, 'weighed.tare': '0.5 kg' })).toBeCloseTo(2, 9)
    expect(wateredOf(weighed)).toBeCloseTo(2.5 * WIDE * WIDE * HIGH, 9)
  })

  test('weighs as its own size and filling make it where that is more', () => {
    expect(wateredOf({ 'weighed.mass': '0.2 kg', 'weighed.state': 'watered' })).toBeCloseTo(wateredOf({}), 9)
    expect(wateredOf({})).toBeGreaterThan(0.2 * WIDE * WIDE * HIGH)
  })

  test('is what was weighed of itself, whatever the first weighs', () => {
    expect(wateredOf({ ...weighed, 'second.mass': '1.1 kg', 'second.state': 'watered' })).toBeCloseTo(1.1, 9)
  })
})
