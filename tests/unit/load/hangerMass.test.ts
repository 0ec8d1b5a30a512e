import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { cordMassPerMetre } from '../../../src/load/cordMass'
import { hangerMass } from '../../../src/load/hangerMass'
import { hangerOf } from '../hanger/hangerOf'

const HANGER: Patch = { 'make.legs': '3', 'make.strands': '4', 'make.totalLength': '110 cm', 'make.build': 'plain', 'make.top': 'bunched', 'cord.linearDensity': '5.5 g/m' }
const massOf = (patch: Patch) => hangerMass(hangerOf({ ...HANGER, ...patch }).answers).dry

test('plain strands weigh their length', () => {
  const { low, likely, high } = massOf({})
  expect(likely).toBeCloseTo(3 * 4 * 1.1 * 0.0055, 12)
  expect([low, high]).toEqual([likely, likely])
})

test('knotted strands take up two and a half times the cord', () => {
  expect(massOf({ 'make.build': 'sinnet' }).likely / massOf({}).likely).toBeCloseTo(2.5, 12)
})

test('a ring of 5 mm steel, 40 mm wide inside, weighs a bar as long as its middle line', () => {
  const bar = 7852 * (Math.PI / 4) * 0.005 ** 2 * Math.PI * 0.045
  expect(massOf({ 'make.top': 'ring', 'ring.wire': '5 mm', 'ring.inside': '40 mm' }).likely - massOf({}).likely).toBeCloseTo(bar, 12)
})

test('a ring of wood weighs a bar as high as thick, along its middle line', () => {
  const wood = massOf({ 'make.top': 'ring', 'ring.metal': 'wood', 'ring.wire': '12 mm', 'ring.inside': '70 mm' }).likely - massOf({}).likely
  expect(wood).toBeCloseTo(545 * 0.012 ** 2 * Math.PI * 0.082, 12)
})

test('a panel weighs its strands, knotted down to its edge and plain from there round the pot to the end of the fringe', () => {
  const panel: Patch = {
    'make.arrangement': 'panel', 'panel.height': '30 cm', 'panel.rise': '7 cm', 'panel.front': '3', 'panel.behind': '5', 'panel.cords': '6',
    'pot.height': '18 cm', 'pot.rim': '20 cm', 'make.fringe': '15 cm', 'make.top': 'bunched',
  }
  const each = (0.3 * 2.5 + 0.07 + 0.18 + 0.2 + 0.15) * 0.0055
  // Six cords doubled are twelve strands; eleven would go round the pot.
  expect(massOf(panel).likely - massOf({ ...panel, 'make.cords': '1', 'make.cutLength': '1 m' }).likely).toBeCloseTo(12 * each - 0.0055, 12)
  expect(massOf({ ...panel, 'panel.front': '4' }).likely - massOf(panel).likely).toBeCloseTo(each, 12)
})

test('cords counted and cut weigh their number times their length, whatever the build', () => {
  const cut: Patch = { 'make.cords': '8', 'make.cutLength': '5.2 m' }
  expect(massOf(cut).likely).toBeCloseTo(8 * 5.2 * 0.0055, 12)
  expect(massOf({ ...cut, 'make.build': 'spiral', 'make.strands': '11' }).likely).toBeCloseTo(8 * 5.2 * 0.0055, 12)
  expect(massOf({ 'make.cords': '8' })).toEqual(massOf({}))
})

test('a stick weighs its wood, with the cord over it', () => {
  const stick: Patch = { 'make.top': 'stick', 'stick.diameter': '18 mm', 'stick.length': '42 cm', 'stick.topCord': '60 cm', 'stick.topStrands': '2' }
  const wood = (Math.PI / 4) * 0.018 ** 2 * 0.42
  expect(massOf(stick).likely - massOf({}).likely).toBeCloseTo(wood * 545 + 1.2 * 0.0055, 12)
  // Oak, 47 lb/ft3, and wet through.
  expect(massOf({ ...stick, 'stick.held': 'twoHooks', 'stick.state': 'green' }).high - massOf({}).high).toBeCloseTo(wood * 753 * 1.6, 12)
})

describe('soaked', () => {
  const inStates = (patch: Patch) => hangerMass(hangerOf({ ...HANGER, ...patch }).answers)

  test('only outdoors, where it rains on the cords: dripping they hold twice their mass at most', () => {
    const inside = inStates({ 'place.exposure': 'steamy' })
    expect(inside.flooded).toEqual(inside.dry)
    const { dry, watered, flooded } = inStates({ 'place.exposure': 'outdoors' })
    expect(dry).toEqual(inside.dry)
    expect(flooded.high).toBeCloseTo(3 * dry.high, 12)
    // Wetted for certain where it rains into the pot too, by 16 % at least; likely dripping, with one and a half times its mass.
    expect(flooded.low).toBeCloseTo(1.16 * dry.low, 12)
    expect(flooded.likely).toBeCloseTo(2.5 * dry.likely, 12)
    expect(watered.low).toBe(dry.low)
    for (const end of ['low', 'likely', 'high'] as const) expect(dry[end] <= watered[end] && watered[end] <= flooded[end]).toBe(true)
  })

  test('a dry stick is soaked only by rain, by a fifth to three fifths of its mass', () => {
    const stick: Patch = { 'make.top': 'stick', 'stick.held': 'twoHooks', 'stick.diameter': '18 mm', 'stick.length': '42 cm' }
    const wood = (exposure: string, state: 'dry' | 'flooded') =>
      inStates({ ...stick, 'place.exposure': exposure })[state].high - inStates({ 'place.exposure': exposure })[state].high
    const dry = (Math.PI / 4) * 0.018 ** 2 * 0.42 * 753
    expect(wood('outdoors', 'dry')).toBeCloseTo(dry, 12)
    expect(wood('outdoors', 'flooded')).toBeCloseTo(1.6 * dry, 12)
    expect(wood('steamy', 'flooded')).toBeCloseTo(dry, 12)
  })

  test('a steel ring takes up nothing', () => {
    const ring: Patch = { 'make.top': 'ring', 'ring.wire': '5 mm', 'ring.inside': '40 mm', 'place.exposure': 'outdoors' }
    const [bare, ringed] = [inStates({ 'place.exposure': 'outdoors' }), inStates(ring)]
    expect(ringed.flooded.high - bare.flooded.high).toBeCloseTo(ringed.dry.high - bare.dry.high, 12)
  })
})

describe('mass per metre', () => {
  const perMetre = (patch: Patch) => cordMassPerMetre(hangerOf(patch).answers)

  test('weighed comes before measured, and a weighing is no range', () => {
    expect(perMetre({ 'cord.diameter': '7 mm', 'cord.linearDensity': '5.5 g/m' })).toEqual({ low: 0.0055, likely: 0.0055, high: 0.0055 })
  })

  test('of a piece on the scale is a range: a gram, and a hundredth of its length', () => {
    const { low, likely, high } = perMetre({ 'cord.weighedMass': '47 g', 'cord.weighedLength': '9.4 m', 'cord.diameter': '7 mm' })
    expect(likely).toBeCloseTo(0.005, 12)
    expect(low).toBeCloseTo(0.046 / (9.4 * 1.01), 12)
    expect(high).toBeCloseTo(0.048 / (9.4 * 0.99), 12)
    expect(perMetre({ 'cord.weighedMass': '1 g', 'cord.weighedLength': '1 m' }).low).toBe(0)
  })

  test('goes with the square of the diameter', () => {
    const [thin, thick] = [perMetre({ 'cord.diameter': '3 mm' }), perMetre({ 'cord.diameter': '7.5 mm' })]
    for (const end of ['low', 'likely', 'high'] as const) expect(thick[end] / thin[end]).toBeCloseTo(6.25, 12)
  })

  test('of an unknown cord is that of 4 mm', () => {
    expect(perMetre({})).toEqual(perMetre({ 'cord.diameter': '4 mm' }))
  })
})
