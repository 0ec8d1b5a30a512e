import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })
const TEST = { 'testHang.mass': '60 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm' } as const
const S_HOOK = { 'connector.kind': 'sHook', 'connector.metal': 'steel', 'connector.wire': '5 mm', 'connector.inside': '16 mm', 'connector.joint': 'open' } as const
const CHAIN = { 'connector.kind': 'chain', 'connector.metal': 'steel', 'connector.wire': '3.2 mm', 'connector.joint': 'closed' } as const

describe('an S-hook', () => {
  test('opens by a hinge opposite its mouth: by hand', () => {
    // 5 mm wire, middle radius 10.5 mm, 250 N/mm2.
    expect(linkIn(check(S_HOOK), 'connector', 'watered')).toMatchObject({ part: 'wireHinge', side: 'place' })
    expect(linkIn(check(S_HOOK), 'connector', 'watered').capacity?.value).toBeCloseTo((250 * 125) / 6 / 10.5, 9)
  })

  test('shut gives way as a ring, at four times that', () => {
    expect(linkIn(check({ ...S_HOOK, 'connector.joint': 'closed' }), 'connector', 'watered').capacity?.value).toBeCloseTo((4 * 250 * 125) / 6 / 10.5, 9)
  })

  test.each(['people', 'public'])('that is open is refused over %s, rated or tested or not; shut it is not', (beneath) => {
    for (const patch of [{}, { 'connector.rated': '900 kgf' }, TEST]) {
      const refused = check({ ...S_HOOK, ...patch, 'place.beneath': beneath })
      expect(worstOfLink(refused, 'connector').verdict).toBe('fails')
      expect(codesOf(refused, 'connector')).toContain('CONNECTOR_OPEN_OVER_PEOPLE')
    }
    expect(codesOf(check({ ...S_HOOK, 'connector.joint': 'closed', 'place.beneath': beneath }), 'connector')).not.toContain('CONNECTOR_OPEN_OVER_PEOPLE')
  })

  test('of which only the wire is known is not known', () => {
    expect(worstOfLink(check(without(S_HOOK, 'connector.inside')), 'connector')).toMatchObject({ verdict: 'not enough known', utilisation: null })
  })
})

describe('chain', () => {
  // Proof coil 1/8 in 400 lb; jack chain No. 10 of 3.2 mm 43 lb, No. 12 of 2.7 mm 29 lb (makers’ charts).
  const POUND_FORCE = 4.4482216
  test.each([
    ['closed', '3.2 mm', 400], ['closed', '4.6 mm', 400], ['closed', '4.8 mm', 800], ['open', '3.2 mm', 43], ['open', '3 mm', 29], ['open', '9 mm', 43],
  ])('%s, of %s wire: the %d lb of the thickest size that is no thicker', (joint, wire, pounds) => {
    expect((linkIn(check({ ...CHAIN, 'connector.joint': joint, 'connector.wire': wire }), 'connector', 'dry').capacity?.value ?? NaN) / POUND_FORCE).toBeCloseTo(pounds, 3)
  })

  test('thinner than any table, or not of steel, is not known', () => {
    for (const patch of [{ 'connector.wire': '2 mm' }, { 'connector.metal': 'brass' }, { 'connector.metal': 'unknown' }]) {
      expect(worstOfLink(check({ ...CHAIN, ...patch }), 'connector')).toMatchObject({ verdict: 'not enough known', capacity: null })
    }
  })

  test('of open links is refused over people, unless rated; welded chain says what it is not for', () => {
    const open = { ...CHAIN, 'connector.joint': 'open', 'place.beneath': 'people' } as const
    expect(worstOfLink(check(open), 'connector').verdict).toBe('fails')
    expect(worstOfLink(check({ ...open, 'connector.rated': '200 kgf' }), 'connector').verdict).toBe('holds')
    expect(codesOf(check(CHAIN), 'connector')).toEqual(['CHAIN_NOT_FOR_LIFTING'])
  })
})

describe.each(['carabiner', 'swivel'])('a %s', (kind) => {
  test('holds by its rating, twice it for a moment', () => {
    const rated = check({ 'connector.kind': kind, 'connector.rated': '30 kgf' })
    expect(linkIn(rated, 'connector', 'watered')).toMatchObject({ part: 'rated', verdict: 'holds' })
    expect(linkIn(rated, 'connector', 'setDown').allowable?.value).toBeCloseTo(2 * (linkIn(rated, 'connector', 'watered').allowable?.value ?? NaN), 9)
  })

  test('without one is not known, until it held the test hang asked for', () => {
    const unrated = check({ 'connector.kind': kind })
    expect(worstOfLink(unrated, 'connector').verdict).toBe('not enough known')
    const asked = worstOfLink(unrated, 'connector').findings.flatMap((f) => (f.code === 'CONNECTOR_UNRATED' ? [f.testMass] : []))[0] ?? NaN
    const at = (share: number) => worstOfLink(check({ 'connector.kind': kind, ...TEST, 'testHang.mass': `${asked * share} kg` }), 'connector').verdict
    expect(at(1.001)).toBe('just holds')
    expect(at(0.999)).toBe('not enough known')
  })
})

test('an S-hook only assumed to be open is not said to fail over people', () => {
  expect(worstOfLink(check({ ...without(S_HOOK, 'connector.joint'), 'place.beneath': 'people' }), 'connector').verdict).toBe('not enough known')
})

test('a swivel takes the doubt from a screw hook under twisted legs', () => {
  const twisted = { 'make.build': 'spiral' } as const
  expect(codesOf(check(twisted), 'hook')).toContain('HOOK_MAY_UNSCREW')
  expect(codesOf(check({ ...twisted, 'connector.kind': 'swivel', 'connector.rated': '60 kgf' }), 'hook')).not.toContain('HOOK_MAY_UNSCREW')
  expect(codesOf(check({}), 'hook')).not.toContain('HOOK_MAY_UNSCREW')
})
