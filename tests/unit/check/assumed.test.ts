import { describe, expect, test } from 'vitest'
import { readField, type FieldPath, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { randomPatch } from './randomPatch'

const assumedIn = (patch: Patch): readonly FieldPath[] => checkOf(patch).assumed.map((a) => a.path)

describe('what is assumed', () => {
  test('is told with a text that reads back, a basis and a source', () => {
    for (const { path, text, source } of checkOf({}).assumed) {
      expect(readField(path, text).ok, path).toBe(true)
      expect(source.length).toBeGreaterThan(3)
    }
  })

  test('and what was said are never the same', () => {
    for (let seed = 900; seed < 930; seed++) {
      const patch = randomPatch(seed)
      expect(assumedIn(patch).filter((path) => patch[path] !== undefined)).toEqual([])
    }
  })

  test('is left out where it has no bearing', () => {
    expect(assumedIn(ORDINARY)).not.toContain('hook.inside')
    expect(assumedIn({ ...ORDINARY, 'make.top': 'bunched' })).not.toContain('ring.inside')
    expect(assumedIn({ ...ORDINARY, 'place.substrate': 'masonry' })).not.toContain('place.timber')
    expect(assumedIn(ORDINARY)).not.toContain('testHang.slip')
  })

  test('comes back where it has one', () => {
    expect(assumedIn(ORDINARY)).toContain('ring.inside')
    expect(assumedIn(ORDINARY)).toContain('place.timber')
    expect(assumedIn({ ...ORDINARY, 'testHang.mass': '20 kg' })).toContain('testHang.slip')
  })
})

// Defaults that follow another answer: height 0.9 and base 0.7 of the rim, first knots 0.55, offset a twentieth.
test('measures that were not said follow the rim', () => {
  const { answers } = checkOf({ 'pot.rim': '240 mm' }).solved.hanger
  expect(answers['pot.height']).toBeCloseTo(0.216, 12)
  expect(answers['pot.base']).toBeCloseTo(0.168, 12)
  expect(answers['cradle.first']).toBeCloseTo(0.132, 12)
  expect(answers['seat.offset']).toBeCloseTo(0.012, 12)
})

test('what a packet says of a screw is not listed as assumed', () => {
  const assumedOf = (patch: Patch) => checkOf({ 'place.substrate': 'timber', ...patch }).assumed.map((a) => a.path)
  expect(assumedOf({})).toEqual(expect.arrayContaining(['fixing.diameter', 'fixing.penetration']))
  expect(assumedOf({ 'fixing.screw': '#8' })).toContain('fixing.penetration')
  expect(assumedOf({ 'fixing.screw': '#8' })).not.toContain('fixing.diameter')
  expect(assumedOf({ 'fixing.screw': '4 x 50 mm' })).not.toEqual(expect.arrayContaining(['fixing.penetration']))
})
