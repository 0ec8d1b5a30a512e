import { describe, expect, test } from 'vitest'
import { FIELD_PATHS, fieldOf, type FieldPath, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { without } from '../hanger/without'
import { randomPatch } from './randomPatch'

const ESSENTIALS = FIELD_PATHS.filter((path) => fieldOf(path).essential)
const UNWEIGHED = without(ORDINARY, 'weighed.mass', 'weighed.state')
const asked = (patch: Patch): readonly FieldPath[] => checkOf(patch).links.flatMap((l) => l.findings).flatMap((f) => (f.code === 'ANSWER_NEEDED' ? [f.path] : []))

test('there are essential questions', () => {
  expect(ESSENTIALS).toEqual(expect.arrayContaining(['pot.rim', 'make.legs', 'make.strands']))
})

describe.each(ESSENTIALS)('without an answer to %s', (path) => {
  test('an ordinary hanger is not enough known, and the answer is asked for', () => {
    const check = checkOf(without(UNWEIGHED, path))
    expect(['not enough known', 'fails']).toContain(check.verdicts.hanger)
    expect(asked(without(UNWEIGHED, path))).toEqual([path])
  })

  test('no hanger of any kind holds, nor just holds', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const patch = without(randomPatch(seed), path, 'weighed.mass', 'pot.emptyMass')
      expect(['not enough known', 'fails'], `seed ${seed}`).toContain(checkOf(patch).verdict)
    }
  })
})

test('with all of them answered nothing is asked for', () => {
  expect(asked(ORDINARY)).toEqual([])
  expect(asked(UNWEIGHED)).toEqual([])
})

test('what the pot is made of does not matter once it was weighed, with plant or empty', () => {
  expect(asked(without(ORDINARY, 'pot.material'))).toEqual([])
  expect(asked({ ...without(UNWEIGHED, 'pot.material'), 'pot.emptyMass': '1.9 kg' })).toEqual([])
})

test('without a pot, or without a hanger, only the other is asked for', () => {
  const nothing = { 'pot.have': 'no', 'make.have': 'no' }
  expect(asked(nothing)).toEqual([])
  expect(checkOf(nothing).verdict).not.toMatch(/holds/)
  expect(asked({ 'pot.have': 'no' })).toEqual(['make.legs', 'make.strands'])
  expect(asked({ 'make.have': 'no' })).toEqual(['pot.rim', 'pot.material'])
})

test('of nothing at all not enough is known, and nothing is said to fail', () => {
  const check = checkOf({})
  expect(check.verdict).toBe('not enough known')
  expect(check.verdicts).toEqual({ hanger: 'not enough known', place: 'not enough known' })
})
