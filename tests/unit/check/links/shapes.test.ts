import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })

describe.each([['square', {}], ['trough', { 'pot.length': '40 cm' }]] as const)('strands on the corners of a %s', (shape, more: Patch) => {
  const cornered = check({ ...more, 'pot.shape': shape })

  test('are not reckoned: seat and legs are not known at best', () => {
    for (const link of ['seat', 'leg'] as const) {
      expect(worstOfLink(cornered, link).verdict).toBe('not enough known')
      expect(codesOf(cornered, link)).toContain('SHAPE_NOT_RECKONED')
    }
  })

  test('legs that are too short round the corners may still reach along the sides', () => {
    const short = worstOfLink(check({ ...more, 'pot.shape': shape, 'make.totalLength': '62 cm' }), 'leg')
    expect(short.findings.map((f) => f.code)).toContain('LEG_TOO_SHORT')
    expect(short.verdict).toBe('not enough known')
  })

  test('a cord that cannot carry the weight fails all the same', () => {
    expect(worstOfLink(check({ ...more, 'pot.shape': shape, 'weighed.mass': '60 kg' }), 'leg').verdict).toBe('fails')
  })

  test('in a round cover pot do not lie in the cradle', () => {
    expect(codesOf(check({ 'pot.shape': shape, 'cover.inside': '25 cm', 'cover.mass': '1 kg' }), 'leg')).not.toContain('SHAPE_NOT_RECKONED')
  })
})

describe.each([
  ['cylinder', { 'pot.rim': '180 mm' }], ['bowl', { 'pot.rim': '240 mm', 'pot.base': '120 mm', 'pot.height': '120 mm' }],
  ['bellied', { 'pot.rim': '150 mm', 'pot.base': '110 mm', 'pot.belly': '200 mm', 'pot.bellyHeight': '90 mm' }],
] as const)('a %s', (shape, measures: Patch) => {
  test('is round: its seat is reckoned', () => {
    const round = check({ ...measures, 'pot.shape': shape })
    expect(codesOf(round, 'seat')).not.toContain('SHAPE_NOT_RECKONED')
    expect(['holds', 'just holds']).toContain(worstOfLink(round, 'seat').verdict)
    expect(['holds', 'just holds']).toContain(worstOfLink(round, 'leg').verdict)
  })
})

describe('a cover pot', () => {
  const cover: Patch = { 'cover.inside': '230 mm', 'cover.height': '180 mm', 'cover.mass': '900 g', 'make.totalLength': '130 cm', 'weighed.mass': '3 kg' }

  test('is taken as upright: its seat just holds at best, and that is said', () => {
    const covered = check(cover)
    expect(worstOfLink(covered, 'seat').verdict).toBe('just holds')
    expect(codesOf(covered, 'seat')).toContain('VESSEL_ASSUMED')
  })

  test('never fails by that assumption alone', () => {
    for (const height of ['30 cm', '80 cm', '150 cm']) expect(worstOfLink(check({ ...cover, 'plant.height': height, 'cradle.kind': 'open' }), 'seat').verdict).not.toBe('fails')
  })

  test('makes the hanger carry more', () => {
    const [bare, covered] = [checkOf({ ...ORDINARY, ...without(cover, 'cover.inside', 'cover.height', 'cover.mass') }), check(cover)]
    expect(covered.solved.loads.watered.weight).toBeGreaterThan(bare.solved.loads.watered.weight + 0.9 * 9.8)
  })
})

describe('a saucer', () => {
  test('wider than the base carries the pot loose: its seat just holds at best', () => {
    const wide = check({ 'saucer.width': '19 cm', 'saucer.mass': '400 g' })
    expect(worstOfLink(wide, 'seat').verdict).toBe('just holds')
    expect(codesOf(wide, 'seat')).toContain('VESSEL_ASSUMED')
  })

  test('narrower than the base changes nothing but the weight', () => {
    const narrow = check({ 'saucer.width': '10 cm', 'saucer.mass': '400 g', 'saucer.depth': '1 cm' })
    expect(codesOf(narrow, 'seat')).not.toContain('VESSEL_ASSUMED')
    expect(worstOfLink(narrow, 'seat').verdict).toBe(worstOfLink(check({}), 'seat').verdict)
  })
})
