import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { knotWetness } from '../../../src/check/knotWetness'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { codesOf, linkIn, worstOfLink } from './linkOf'

test.each([
  [{}, 'splashed'],
  [{ 'pot.drainage': 'unknown' }, 'splashed'],
  [{ 'pot.drainage': 'none', 'place.watering': 'daily' }, 'dry'],
  [{ 'place.watering': 'daily' }, 'never dry'],
  [{ 'place.exposure': 'steamy' }, 'never dry'],
  [{ 'place.exposure': 'outdoors' }, 'never dry'],
  [{ 'cover.inside': '26 cm', 'place.watering': 'daily' }, 'dry'],
  [{ 'cover.mass': '800 g', 'place.watering': 'daily' }, 'dry'],
  [{ 'saucer.width': '17 cm' }, 'dry'],
  [{ 'saucer.mass': '300 g' }, 'dry'],
  [{ 'saucer.width': '17 cm', 'place.watering': 'daily' }, 'splashed'],
] as const)('%j: the gathering knot is %s', (patch, wetness) => {
  expect(knotWetness(hangerOf({ ...ORDINARY, ...patch }).answers)).toBe(wetness)
})

test('only a knot that water drips on is weakened by it', () => {
  const factors = (patch: Patch) => linkIn(checkOf({ ...ORDINARY, ...patch }), 'gatheringTurn', 'watered').factors.map((f) => f.code)
  expect(factors({})).toContain('drainHole')
  expect(factors({ 'pot.drainage': 'none' })).not.toContain('drainHole')
  expect(factors({ 'cover.inside': '26 cm' })).not.toContain('drainHole')
})

describe('jute', () => {
  const jute = (patch: Patch) => checkOf({ ...ORDINARY, 'cord.fibre': 'jute', 'cord.rated': '20 kN', ...patch })
  const turn = (patch: Patch) => worstOfLink(jute(patch), 'gatheringTurn').verdict

  test('under a hole that drips once a week just holds, however strong', () => {
    expect(turn({})).toBe('just holds')
    expect(codesOf(jute({}), 'gatheringTurn')).toContain('JUTE_DAMP')
  })

  test('that never dries is refused, however strong', () => {
    expect(turn({ 'place.watering': 'daily' })).toBe('fails')
    expect(turn({ 'place.exposure': 'steamy' })).toBe('fails')
    expect(codesOf(jute({ 'place.exposure': 'steamy' }), 'gatheringTurn')).toContain('JUTE_NEVER_DRY')
  })

  test('where there may be no hole at all, not enough is known', () => {
    expect(turn({ 'place.watering': 'daily', 'pot.drainage': 'unknown' })).toBe('not enough known')
  })

  test('kept dry holds', () => {
    for (const patch of [{ 'pot.drainage': 'none' }, { 'cover.inside': '26 cm' }, { 'saucer.width': '17 cm' }] as const) expect(turn(patch)).toBe('holds')
  })

  test('is the only fibre that rots so fast', () => {
    expect(worstOfLink(checkOf({ ...ORDINARY, 'cord.rated': '20 kN', 'place.watering': 'daily' }), 'gatheringTurn').verdict).toBe('holds')
  })
})
