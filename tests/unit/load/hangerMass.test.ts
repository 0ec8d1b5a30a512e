import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { cordMassPerMetre } from '../../../src/load/cordMass'
import { hangerMass } from '../../../src/load/hangerMass'
import { hangerOf } from '../hanger/hangerOf'

const HANGER: Patch = { 'make.legs': '3', 'make.strands': '4', 'make.totalLength': '110 cm', 'make.build': 'plain', 'make.top': 'bunched', 'cord.linearDensity': '5.5 g/m' }
const massOf = (patch: Patch) => hangerMass(hangerOf({ ...HANGER, ...patch }).answers)

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

describe('mass per metre', () => {
  const perMetre = (patch: Patch) => cordMassPerMetre(hangerOf(patch).answers)

  test('weighed comes before measured, and a weighing is no range', () => {
    expect(perMetre({ 'cord.diameter': '7 mm', 'cord.linearDensity': '5.5 g/m' })).toEqual({ low: 0.0055, likely: 0.0055, high: 0.0055 })
  })

  test('goes with the square of the diameter', () => {
    const [thin, thick] = [perMetre({ 'cord.diameter': '3 mm' }), perMetre({ 'cord.diameter': '7.5 mm' })]
    for (const end of ['low', 'likely', 'high'] as const) expect(thick[end] / thin[end]).toBeCloseTo(6.25, 12)
  })

  test('of an unknown cord is that of 4 mm', () => {
    expect(perMetre({})).toEqual(perMetre({ 'cord.diameter': '4 mm' }))
  })
})
