import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, 'ring.inside': '45 mm', ...patch })
const TEST = { 'testHang.mass': '30 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm' } as const

describe('a wooden ring', () => {
  test('is not known: it breaks across the grain', () => {
    const wooden = check({ 'ring.metal': 'wood' })
    expect(worstOfLink(wooden, 'ring')).toMatchObject({ verdict: 'not enough known', utilisation: null })
    expect(codesOf(wooden, 'ring')).toEqual(['RING_UNRATED', 'RING_ACROSS_GRAIN'])
  })

  test('holds at rest by a test hang of twice the load', () => {
    const tested = check({ 'ring.metal': 'wood', ...TEST })
    expect(linkIn(tested, 'ring', 'watered')).toMatchObject({ verdict: 'holds', part: 'testHang' })
  })

  test('is not said to fail where its test hang was too light', () => {
    const light = check({ 'ring.metal': 'wood', ...TEST, 'testHang.mass': '3 kg' })
    expect(worstOfLink(light, 'ring').verdict).toBe('not enough known')
  })

  test('may have strands that slipped in that test, but not too short a one', () => {
    expect(linkIn(check({ 'ring.metal': 'wood', ...TEST, 'testHang.slip': '9 mm' }), 'ring', 'watered').verdict).toBe('holds')
    expect(linkIn(check({ 'ring.metal': 'wood', ...TEST, 'testHang.time': '23 h' }), 'ring', 'watered').verdict).toBe('not enough known')
  })

  test('holds by a rating', () => {
    expect(worstOfLink(check({ 'ring.metal': 'wood', 'ring.rated': '90 kgf' }), 'ring').verdict).toBe('holds')
  })
})

describe('a metal ring', () => {
  test('gives way by four hinges, less the reserve: by hand', () => {
    const watered = linkIn(check({ 'ring.metal': 'brass', 'place.beneath': 'people' }), 'ring', 'watered')
    // 5 mm wire, middle radius 25 mm, 100 N/mm2: 4 x 100 x 125 / 6 / 25 over 3.
    expect(watered.capacity?.value).toBeCloseTo((4 * 100 * 125) / 6 / 25, 9)
    expect(watered.allowable?.value).toBeCloseTo((4 * 100 * 125) / 6 / 25 / 3, 9)
  })

  test('is said to open slightly above its first yield, from there on only', () => {
    // First yield fy pi2 d3 / (32 R) = 154 N for 4 mm wire and a middle radius of 32 mm of 250 N/mm2.
    const ring: Patch = { 'ring.metal': 'steel', 'ring.wire': '4 mm', 'ring.inside': '60 mm' }
    const said = (mass: string) => check({ ...ring, 'weighed.mass': mass }).links.filter((l) => l.link === 'ring' && l.findings.some((f) => f.code === 'RING_MAY_OPEN')).map((l) => l.case)
    expect(said('3 kg').filter((code) => code !== 'drop')).toEqual([])
    expect(said('15 kg')).toEqual(expect.arrayContaining(['bump', 'setDown']))
    expect(said('15 kg')).not.toContain('dry')
  })
})

test('a bunched top has no ring', () => {
  expect(check({ 'make.top': 'bunched' }).links.map((l) => l.link)).not.toContain('ring')
})

test('wire that was not measured is not said to hold', () => {
  expect(worstOfLink(checkOf({ ...without(ORDINARY, 'ring.wire'), 'weighed.mass': '0.3 kg' }), 'ring').verdict).toBe('just holds')
})
