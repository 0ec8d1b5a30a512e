import { describe, expect, test } from 'vitest'
import { solve, testHangLifts, type Patch } from '#core'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { codesOf, linkIn, worstOfLink } from './linkOf'

const GOOD: Patch = { 'testHang.time': '26 h', 'testHang.slip': '1 mm' }
const check = (patch: Patch) => checkOf({ ...ORDINARY, ...GOOD, ...patch })
const lifts = (patch: Patch, ofKnot: boolean) => testHangLifts(solve(hangerOf({ ...ORDINARY, ...GOOD, ...patch })), ofKnot)

describe('a test hang of water', () => {
  test('counts a kilogram for each litre, its bucket not at all', () => {
    const water = linkIn(check({ 'testHang.volume': '17 l' }), 'gatheringGrip', 'setDown')
    expect(water).toMatchObject({ part: 'testHang' })
    expect(water.capacity?.value).toBeCloseTo(17 * 9.80665, 9)
    expect(water.capacity?.value).toBe(linkIn(check({ 'testHang.mass': '17 kg' }), 'gatheringGrip', 'setDown').capacity?.value)
  })

  test('yields to a mass that was told too', () => {
    expect(linkIn(check({ 'testHang.volume': '30 l', 'testHang.mass': '17 kg' }), 'gatheringGrip', 'setDown').capacity?.value).toBeCloseTo(17 * 9.80665, 9)
  })

  test('decides a drop and a seen slip like any other', () => {
    const inLitres = check({ 'testHang.volume': '17 l' })
    const inKilograms = check({ 'testHang.mass': '17 kg' })
    expect(linkIn(inLitres, 'gatheringGrip', 'drop').utilisation).toBe(linkIn(inKilograms, 'gatheringGrip', 'drop').utilisation)
    expect(linkIn(check({ 'testHang.volume': '5 l', 'testHang.slip': '40 mm' }), 'gatheringGrip', 'watered').verdict).not.toBe('holds')
    expect(codesOf(check({ 'testHang.volume': '5 l', 'testHang.slip': '40 mm' }), 'gatheringGrip')).toContain('TEST_HANG_SLIPPED')
  })
})

describe('what a test hang lifts', () => {
  test('half its mass for good, all of it for a moment; over people by a half less', () => {
    expect(lifts({ 'testHang.mass': '19 kg' }, true)).toEqual({ mass: 19, atRest: 9.5, forAMoment: 19 })
    const overPeople = lifts({ 'testHang.mass': '19 kg', 'place.beneath': 'people' }, true)
    expect(overPeople?.atRest).toBeCloseTo(9.5 / 1.5, 12)
    expect(overPeople?.forAMoment).toBeCloseTo(19 / 1.5, 12)
  })

  test('nothing where there was none, or where it does not count', () => {
    expect(lifts({}, true)).toBeNull()
    expect(lifts({ 'testHang.mass': '19 kg', 'testHang.time': '3 h' }, false)).toBeNull()
    expect(lifts({ 'testHang.mass': '19 kg', 'testHang.slip': '7 mm' }, true)).toBeNull()
    expect(lifts({ 'testHang.mass': '19 kg', 'testHang.slip': '7 mm' }, false)).not.toBeNull()
  })

  test('is what a check lets the knot carry: up to there it is by the test, beyond it is not', () => {
    const at = (mass: string) => linkIn(check({ 'testHang.mass': '19 kg', 'weighed.mass': mass }), 'gatheringGrip', 'flooded').part
    expect([at('9.49 kg'), at('9.51 kg')]).toEqual(['testHang', 'gripModel'])
  })

  test('is said of the knot and of a wooden ring, where they rest on it', () => {
    const tested = check({ 'testHang.mass': '30 kg', 'ring.metal': 'wood' })
    for (const link of ['gatheringGrip', 'ring'] as const) expect(codesOf(tested, link)).toContain('TEST_HANG_LIFTS')
    expect(codesOf(check({ 'testHang.mass': '30 kg' }), 'ring')).not.toContain('TEST_HANG_LIFTS')
  })
})

describe('a hook without a mark', () => {
  const UNMARKED: Patch = Object.fromEntries(Object.entries({ ...ORDINARY, 'hook.metal': 'unknown', 'hook.kind': 'latched', 'hook.wire': '4 mm', 'hook.inside': '30 mm', ...GOOD }).filter(([path]) => path !== 'hook.rated'))
  const hook = (patch: Patch) => worstOfLink(checkOf({ ...UNMARKED, ...patch }), 'hook')

  test('of unknown metal holds by the test hang that it held', () => {
    expect(['just holds', 'not enough known', 'fails']).toContain(hook({}).verdict)
    expect(hook({ 'testHang.mass': '40 kg' })).toMatchObject({ part: 'testHang', grade: 'tested', verdict: 'holds' })
  })

  test('asks for the test hang that settles it, and no more than that', () => {
    const asked = hook({ 'weighed.mass': '20 kg' }).findings.flatMap((f) => (f.code === 'HOOK_UNMARKED' ? [f.testMass] : []))
    expect(asked).toHaveLength(1)
    const at = (share: number) => hook({ 'weighed.mass': '20 kg', 'testHang.mass': `${(asked[0] ?? NaN) * share} kg` })
    expect(at(1.001).verdict).toBe('just holds')
    expect(at(0.999).part).toBe('wireHinge')
    expect(hook({ 'weighed.mass': '20 kg', 'hook.metal': 'brass' }).findings.map((f) => f.code)).not.toContain('HOOK_UNMARKED')
  })

  test('of a metal that is known goes by its wire, tested or not', () => {
    expect(hook({ 'testHang.mass': '40 kg', 'hook.metal': 'brass' }).part).toBe('wireHinge')
  })

  test('stays with its wire where the test was too light, or too short', () => {
    expect(hook({ 'testHang.mass': '5 kg' }).part).toBe('wireHinge')
    expect(hook({ 'testHang.mass': '40 kg', 'testHang.time': '3 h' }).part).toBe('wireHinge')
  })

  test('that is open stays refused over people', () => {
    expect(hook({ 'testHang.mass': '90 kg', 'hook.kind': 'open', 'place.beneath': 'people' }).verdict).toBe('fails')
  })
})

test('the sum of a test hang starts from what was told: a mass, or the water of a bucket', () => {
  const symbols = (patch: Patch): readonly string[] => checkOf({ ...ORDINARY, 'testHang.time': '25 h', 'testHang.slip': '1 mm', ...patch }).links.find((l) => l.part === 'testHang' && l.case === 'watered')?.terms.map((t) => t.symbol) ?? []
  expect(symbols({ 'testHang.mass': '19 kg' })).toContain('m_test')
  expect(symbols({ 'testHang.mass': '19 kg' })).not.toContain('V_test')
  expect(symbols({ 'testHang.volume': '19 l' })).toEqual(expect.arrayContaining(['V_test', 'rho_w', 'm_test']))
})
