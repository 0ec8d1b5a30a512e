import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { loadCases } from '../../../src/load/loadCases'
import { hangerOf } from '../hanger/hangerOf'

const cases = (patch: Patch) => loadCases(hangerOf({ 'pot.drainage': 'hole', 'place.life': '2 years', ...patch }).answers)

describe.each([['a cover pot', { 'cover.inside': '25 cm' }], ['a weighed cover pot', { 'cover.mass': '2 kg' }], ['a reservoir', { 'reservoir.volume': '1 l' }]] as const)('%s', (_, keeper: Patch) => {
  test('keeps the pot wet all its life, and standing in water as long as one without a hole', () => {
    expect(cases(keeper).watered.time).toBe(cases({}).dry.time)
    expect(cases(keeper).flooded.time).toBe(cases({ 'pot.drainage': 'none' }).flooded.time)
    expect(cases(keeper).flooded.time).toBeGreaterThan(cases({}).flooded.time)
  })

  test('lets jolts and accidents meet the pot standing in water', () => {
    for (const code of ['bump', 'setDown', 'drop', 'legParted'] as const) expect([cases({})[code].state, cases(keeper)[code].state]).toEqual(['watered', 'flooded'])
  })
})

test('a saucer does not: it is emptied', () => {
  expect(cases({ 'saucer.width': '20 cm' })).toEqual(cases({}))
})
