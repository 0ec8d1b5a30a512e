import { expect, test } from 'vitest'
import { turnsFreely, turningText, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const freely = (patch: Patch): boolean | null => turnsFreely(checkOf({ ...ORDINARY, ...patch }).solved)

test('a pot turns freely under one hook, and is turned back from a stick or a level ring', () => {
  for (const patch of [{}, { 'make.top': 'bunched' }, { 'pot.shape': 'square' }, { 'make.top': 'stick', 'stick.bunch': '0 mm' }] as const) expect(freely(patch)).toBe(true)
  for (const patch of [{ 'make.top': 'stick' }, { 'ring.lies': 'level', 'ring.inside': '12 cm' }] as const) expect(freely(patch)).toBe(false)
})

test('nothing is said of what does not hang', () => {
  expect(freely({ 'make.totalLength': '55 cm' })).toBeNull()
})

test('both are told in words', () => {
  expect([turningText(true), turningText(false)]).toEqual(['turns freely under its hook', 'its legs turn it back'])
})
