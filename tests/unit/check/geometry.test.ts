import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { hangerGeometry } from '../../../src/check/geometry'
import { hangerOf, ORDINARY } from '../hanger/hangerOf'

const geometry = (patch: Patch) => hangerGeometry(hangerOf({ ...ORDINARY, 'gathering.wraps': '7', 'ring.inside': '38 mm', ...patch }).answers)

describe('the length of a strand', () => {
  test('is the whole length less ring, gathering knot and fringe', () => {
    // 1050 - 220 - (38 + 2 x 5) - 7 x 3 mm.
    expect(geometry({}).strand).toBeCloseTo(0.761, 12)
    expect(geometry({}).knot).toBeCloseTo(0.021, 12)
  })

  test('has no ring to lose on a bunched top', () => {
    expect(geometry({ 'make.top': 'bunched' }).strand).toBeCloseTo(0.809, 12)
  })

  test('is the leg with the cradle where the leg was measured, whatever the whole', () => {
    expect(geometry({ 'make.legLength': '47 cm' }).strand).toBeCloseTo(0.585, 12)
    expect(geometry({ 'make.legLength': '47 cm', 'make.totalLength': '4 m' }).strand).toBeCloseTo(0.585, 12)
  })
})

test('hung with its pot it drops from the hook by ring, strand, knot and fringe', () => {
  const { path, drop } = geometry({})
  if (!path.ok) throw new Error('no path')
  // Free part 761 - 70 - 188.28 = 502.72 mm, its height sqrt(502.72^2 - 105^2) = 491.63, over the pot's 185.
  expect(path.top * 1000).toBeCloseTo(185 + 491.63, 1)
  expect(drop).toBeCloseTo(0.048 + path.top + 0.021 + 0.22, 12)
})

test('a strand too short for the pot has no drop', () => {
  const { path, drop, firstKnots } = geometry({ 'make.totalLength': '60 cm' })
  expect(path.ok).toBe(false)
  expect([drop, firstKnots]).toEqual([null, null])
})

describe('the cradle’s first knots', () => {
  // Along the strand from the gathering knot: base edge at 70 mm, rim at 70 + 188.28 mm.
  test.each([['69 mm', 'under the base'], ['71 mm', 'on the side'], ['258 mm', 'on the side'], ['259 mm', 'above the rim']])('%s up: %s', (first, where) => {
    expect(geometry({ 'cradle.first': first }).firstKnots).toBe(where)
  })

  test('have no side to lie on where the strands leave the pot at its base', () => {
    expect(geometry({ 'pot.rim': '90 mm', 'pot.base': '200 mm', 'cradle.first': '150 mm' }).firstKnots).toBeNull()
  })
})
