import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { potShape } from '../../../src/load/potShape'
import { wallThickness } from '../../../src/load/wallThickness'
import { metres } from '../../../src/quantity/si'
import { hangerOf } from '../hanger/hangerOf'

const POT: Patch = { 'pot.rim': '235 mm', 'pot.height': '205 mm', 'pot.base': '150 mm', 'pot.wall': '8 mm', 'pot.fillGap': '22 mm' }
const shapeOf = (patch: Patch) => potShape(hangerOf({ ...POT, ...patch }).answers)
const frustum = (base: number, top: number, height: number): number => (Math.PI * height * (base * base + base * top + top * top)) / 3

test('shell, mix and head room fill the outside exactly', () => {
  for (const patch of [{}, { 'pot.base': '290 mm' }, { 'pot.fillGap': '0 mm' }, { 'pot.wall': '21 mm' }]) {
    const { answers } = hangerOf({ ...POT, ...patch })
    const { shell, mix, head } = potShape(answers)
    expect(shell.likely + mix.volume + head.volume).toBeCloseTo(frustum(answers['pot.base'] / 2, answers['pot.rim'] / 2, answers['pot.height']), 12)
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
  const wallOf = (patch: Patch) => {
    const { answers } = hangerOf(patch)
    return wallThickness(answers['pot.material'], answers['pot.rim'], answers['pot.wall'])
  }

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

/** Pots of every shape with walls of 7 mm, no two measures alike. */
const SHAPES: readonly Patch[] = [
  { 'pot.shape': 'taperedRound', 'pot.rim': '217 mm', 'pot.base': '151 mm', 'pot.height': '193 mm' },
  { 'pot.shape': 'cylinder', 'pot.rim': '173 mm', 'pot.height': '181 mm' },
  { 'pot.shape': 'bowl', 'pot.rim': '263 mm', 'pot.base': '117 mm', 'pot.height': '119 mm' },
  { 'pot.shape': 'bellied', 'pot.rim': '149 mm', 'pot.base': '113 mm', 'pot.height': '187 mm', 'pot.belly': '209 mm', 'pot.bellyHeight': '101 mm' },
  { 'pot.shape': 'square', 'pot.rim': '191 mm', 'pot.base': '139 mm', 'pot.height': '167 mm' },
  { 'pot.shape': 'trough', 'pot.rim': '163 mm', 'pot.base': '127 mm', 'pot.height': '149 mm', 'pot.length': '511 mm' },
].map((patch) => ({ ...patch, 'pot.wall': '7 mm', 'pot.fillGap': '19 mm', 'layer.depth': '31 mm', 'topping.depth': '12 mm' }))

describe.each(SHAPES.map((patch) => [patch['pot.shape'], patch] as const))('%s', (_, patch) => {
  const whole = potShape(hangerOf(patch).answers)

  test('is shell, layer, mix, topping and head room, and nothing else', () => {
    const { shell, room, layer, mix, topping, head } = whole
    const inside = [layer, mix, topping, head]
    expect(inside.reduce((sum, s) => sum + s.volume, 0)).toBeCloseTo(room.volume, 14)
    expect(inside.reduce((sum, s) => sum + s.volume * s.centroid, 0)).toBeCloseTo(room.volume * room.centroid, 14)
    for (const { volume } of inside) expect(volume).toBeGreaterThan(1e-5)
    expect(shell.likely).toBeGreaterThan(0)
    expect([layer, mix, topping, head].map((s) => s.centroid)).toEqual([...inside.map((s) => s.centroid)].sort((a, b) => a - b))
  })

  test.each(['pot.rim', 'pot.base', 'pot.height', 'pot.length', 'pot.belly'] as const)('a larger %s never leaves less room nor a lighter shell', (path) => {
    const { answers } = hangerOf(patch)
    // A trough so much wider at its rim tapers more in its length too, unless that grows with it.
    const longer = path === 'pot.rim' ? { 'pot.length': metres(answers['pot.length'] + answers['pot.rim'] * 0.04) } : {}
    const larger = potShape({ ...answers, ...longer, [path]: metres(answers[path] * 1.04) })
    expect(larger.room.volume).toBeGreaterThanOrEqual(whole.room.volume - 1e-15)
    expect(larger.shell.high).toBeGreaterThanOrEqual(whole.shell.high - 1e-15)
  })

  test('a thicker wall weighs more and leaves less room', () => {
    const thick = potShape(hangerOf({ ...patch, 'pot.wall': '11 mm' }).answers)
    expect(thick.shell.likely).toBeGreaterThan(whole.shell.likely)
    expect(thick.room.volume).toBeLessThan(whole.room.volume)
  })

  test('a wall thicker than the pot still leaves a pot', () => {
    const { shell, room } = potShape(hangerOf({ ...patch, 'pot.wall': '60 mm', 'pot.height': '50 mm', 'pot.bellyHeight': '20 mm' }).answers)
    expect(shell.likely).toBeGreaterThan(0)
    expect(room.volume).toBeGreaterThan(0)
  })
})

describe('layers', () => {
  test('a drainage layer takes its room from the mix', () => {
    const [bare, layered] = [shapeOf({}), shapeOf({ 'layer.depth': '37 mm' })]
    expect(layered.layer.volume + layered.mix.volume).toBeCloseTo(bare.mix.volume, 14)
    expect(layered.head).toEqual(bare.head)
  })

  test('a dressing within the gap below the rim takes room from the water, a deeper one from the mix too', () => {
    const [bare, shallow, deep] = [shapeOf({}), shapeOf({ 'topping.depth': '14 mm' }), shapeOf({ 'topping.depth': '35 mm' })]
    expect(shallow.mix).toEqual(bare.mix)
    expect(shallow.topping.volume + shallow.head.volume).toBeCloseTo(bare.head.volume, 14)
    expect(deep.head.volume).toBe(0)
    expect(deep.mix.volume).toBeLessThan(bare.mix.volume)
  })

  test('a layer deeper than the pot fills what there is', () => {
    const { layer, mix, room, head } = shapeOf({ 'layer.depth': '200 mm' })
    expect(mix.volume).toBe(0)
    expect(layer.volume + head.volume).toBeCloseTo(room.volume, 14)
  })
})
