import { expect, test } from 'vitest'
import type { Patch } from '#core'
import { CAUTIONS } from '../../../src/check/cautions'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const shown = (patch: Patch): readonly string[] => checkOf({ ...ORDINARY, ...patch }).cautions
const leftOut = (patch: Patch): readonly string[] => CAUTIONS.filter((caution) => !shown(patch).includes(caution))

test.each([
  ['nothing', ['secondTie', 'children', 'headroom', 'exits', 'drips']],
  ['furniture', ['secondTie', 'headroom', 'exits', 'drips']],
  ['wayThrough', ['secondTie']],
  ['people', ['exits']],
  ['public', []],
])('with %s beneath all cautions but %j are shown, in their order', (beneath, missing) => {
  expect(leftOut({ 'place.beneath': beneath })).toEqual(missing)
  expect(shown({ 'place.beneath': beneath })).toEqual(CAUTIONS.filter((caution) => !missing.includes(caution)))
})

test('outdoors there are no heaters and sockets, in a steamy room there are', () => {
  expect(leftOut({ 'place.beneath': 'public', 'place.exposure': 'outdoors' })).toEqual(['heat', 'sockets'])
  expect(leftOut({ 'place.beneath': 'public', 'place.exposure': 'steamy' })).toEqual([])
})

test('a pot without a hole does not drip; one that may have a hole may', () => {
  expect(leftOut({ 'place.beneath': 'public', 'pot.drainage': 'none' })).toEqual(['drips'])
  expect(leftOut({ 'place.beneath': 'public', 'pot.drainage': 'unknown' })).toEqual([])
})
