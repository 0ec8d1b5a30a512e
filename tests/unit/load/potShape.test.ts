import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { potShape, wallThickness } from '../../../src/load/potShape'
import { hangerOf } from '../hanger/hangerOf'

const POT: Patch = { 'pot.rim': '235 mm', 'pot.height': '205 mm', 'pot.base': '150 mm', 'pot.wall': '8 mm', 'pot.fillGap': '22 mm' }
const shapeOf = (patch: Patch) => potShape(hangerOf({ ...POT, ...patch }).answers)
const frustum = (base: number, top: number, height: number): number => (Math.PI * height * (base * base + base * top + top * top)) / 3

test('shell, mix and head room fill the outside exactly', () => {
  for (const patch of [{}, { 'pot.base': '290 mm' }, { 'pot.fillGap': '0 mm' }, { 'pot.wall': '21 mm' }]) {
    const { shell, mix, head, baseRadius, rimRadius, height } = shapeOf(patch)
    expect(shell.likely + mix.volume + head.volume).toBeCloseTo(frustum(baseRadius, rimRadius, height), 12)
  }
})

test('the centroids of the three share out the outside’s', () => {
  const { shell, mix, head } = shapeOf({})
  // By hand: z of the whole frustum h/4 (b2 + 2 b t + 3 t2) / (b2 + b t + t2) with radii 75 and 117.5 mm.
  const [b, t] = [0.075, 0.1175]
  const whole = (0.205 / 4) * ((b * b + 2 * b * t + 3 * t * t) / (b * b + b * t + t * t))
  const moment = shell.likely * shell.centroid + mix.volume * mix.centroid + head.volume * head.centroid
  expect(moment / frustum(b, t, 0.205)).toBeCloseTo(whole, 12)
})

test('a gap deeper than the room inside leaves no mix, and nothing is negative', () => {
  const { mix, head } = shapeOf({ 'pot.height': '30 mm', 'pot.fillGap': '28 mm' })
  expect(mix.volume).toBe(0)
  expect(head.volume).toBeGreaterThan(0)
})

test('a wall thicker than the pot is wide still leaves a pot', () => {
  const { shell, mix } = shapeOf({ 'pot.rim': '60 mm', 'pot.base': '45 mm', 'pot.height': '50 mm', 'pot.wall': '60 mm' })
  expect(shell.likely).toBeGreaterThan(0)
  expect(mix.volume).toBeGreaterThanOrEqual(0)
})

describe('a wall that was not measured', () => {
  const wallOf = (patch: Patch) => wallThickness(hangerOf(patch).answers)

  test('is a range, thicker on wider terracotta', () => {
    const [small, large] = [wallOf({ 'pot.rim': '12 cm' }), wallOf({ 'pot.rim': '32 cm' })]
    expect(small.low).toBeLessThan(small.high)
    expect(large.likely - small.likely).toBeCloseTo(0.032 * 0.2, 12)
  })

  test('of a tiny pot is never thinner than half the usual', () => {
    expect(wallOf({ 'pot.rim': '4 cm' }).likely).toBeCloseTo(0.0095 / 2, 12)
  })

  test('measured is no range', () => {
    const { low, likely, high } = wallOf({ 'pot.wall': '7.5 mm' })
    expect([low, likely, high]).toEqual([0.0075, 0.0075, 0.0075])
  })
})
