import { expect, test } from 'vitest'
import { tipPush, tipPushText, type Patch } from '#core'
import { newtons } from '../../../src/quantity/si'
import { ORDINARY, checkOf } from '../hanger/hangerOf'

const pushOn = (patch: Patch): ReturnType<typeof tipPush> => tipPush(checkOf({ ...ORDINARY, ...patch }).solved)

test('a pot whose strands slide tips from a part of its weight on', () => {
  const push = pushOn({ 'cradle.kind': 'open' })
  expect(push?.locked).toBe(false)
  expect(push?.tips).toBe(true)
  expect(push?.share).toBeGreaterThan(0.1)
  expect(push?.share).toBeLessThan(1)
})

test('it grows with the weight', () => {
  const light = pushOn({ 'cradle.kind': 'open' })?.force ?? NaN
  expect(pushOn({ 'cradle.kind': 'open', 'weighed.mass': '8 kg' })?.force).toBeGreaterThan(light)
})

test('is not told of a panel', () => expect(pushOn({ 'make.arrangement': 'panel' })).toBeNull())

test('is not told where the strands do not reach round the pot', () => expect(pushOn({ 'make.totalLength': '50 cm' })).toBeNull())

test('says from which push on, and of strands that slide, that this is without friction', () => {
  expect(tipPushText({ tips: true, force: newtons(19.6133), locked: false })).toBe('slides in its cradle from 2 kg (4.41 lb) on, if nothing grips')
  expect(tipPushText({ tips: true, force: newtons(19.6133), locked: true })).toBe('leans too far from 2 kg (4.41 lb) on')
  expect(tipPushText({ tips: false, force: newtons(100), locked: true })).toBe('swings out with its hanger and does not tip')
})
