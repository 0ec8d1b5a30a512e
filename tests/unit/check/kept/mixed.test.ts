import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { expect, test } from 'vitest'
import { checkHanger, type Patch } from '#core'
import { hangerOf, ORDINARY } from '../../hanger/hangerOf'
import { PANEL } from '../../hanger/panelPatch'
import { BRACKET, WALL_HOOK } from '../links/places'
import { ON_STICK } from '../links/stickOf'
import { keepAnew, sectionsOf } from './keptText'
import { answeredAnew, worstOfParts } from './lines'
import kept from './mixed.txt?raw'

// Hangers answered by chance, kept as checks.test.ts keeps whole checks: what several unusual answers come to together.

const EACH = 24
const STARTS: readonly (readonly [string, Patch])[] = [
  ['an ordinary hanger', ORDINARY],
  ['in a net', { ...ORDINARY, 'cradle.kind': 'net', 'cradle.first': '70 mm', 'cradle.second': '150 mm' }],
  ['under a connector', { ...ORDINARY, 'connector.kind': 'sHook', 'connector.metal': 'steel', 'connector.wire': '5 mm', 'connector.inside': '20 mm', 'testHang.mass': '20 kg', 'testHang.time': '25 h', 'testHang.slip': '1 mm' }],
  ['on a stick', ON_STICK],
  ['a panel', PANEL],
  ['on a bracket', { ...ORDINARY, ...BRACKET }],
  ['on a hook in a wall', { ...ORDINARY, ...WALL_HOOK }],
  ['two tiers', { ...ORDINARY, 'make.arrangement': 'tiers', 'tiers.count': '2', 'second.mass': '2 kg' }],
]

function linesOf(patch: Patch, seed: number): readonly string[] {
  const random = xoroshiro128plus(seed)
  const start = hangerOf(patch)
  return Array.from({ length: EACH }, (_, i) => {
    const parts = worstOfParts(checkHanger(answeredAnew(start, 3 + i % 6, () => uniformFloat64(random))))
    return [...parts].map(([key, text]) => (text === 'said' ? key : `${key} ${text}`)).join('; ')
  })
}

keepAnew('mixed.txt', () => STARTS.map(([name, patch], i) => [name, linesOf(patch, i)]))

const sections = sectionsOf(kept)

test.each(STARTS.map(([name, patch], i) => [name, patch, i] as const))('as it was: %s', (name, patch, seed) => {
  expect(linesOf(patch, seed)).toEqual(sections.get(name))
})

test('nothing is kept that is not asked', () => {
  expect([...sections.keys()]).toEqual(STARTS.map(([name]) => name))
})
