import { describe, expect, test } from 'vitest'
import { findingText, type CheckResult, type LinkResult, type Patch } from '#core'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { without } from '../hanger/without'
import { manyCases } from '../quantity/manyCases'
import { improvements } from './improvements'
import { randomPatch } from './randomPatch'

const REASON = 'pulled every cord of this roll'
const withReserve = (own: string, patch: Patch): Patch => ({ ...patch, 'reserve.own': own, 'reserve.reason': REASON })
const reserveOf = (link: LinkResult | undefined): number => 1 / (link?.factors.find((f) => f.code === 'reserve')?.value ?? NaN)
const codes = (check: CheckResult): readonly string[] => check.findings.map((f) => f.code)
const byId = (check: CheckResult, id: string): LinkResult | undefined => check.links.find((l) => l.id === id)

describe('a reserve of one’s own with its reason', () => {
  const usual = checkOf(ORDINARY)
  const changed = checkOf(withReserve('2.7', ORDINARY))

  test('takes the place of the usual one in every strength, as the maker’s own, with the reason', () => {
    const strengths = ['leg.fillers.watered', 'gatheringTurn.turn.dry', 'wrapHoop.whole.flooded', 'gatheringGrip.gripModel.watered', 'ring.ringCollapse.bump', 'hookShank.shankBending.bump', 'fixing.ultimateRoute.watered']
    for (const id of strengths) {
      expect(reserveOf(byId(usual, id)), id).toBeCloseTo(2, 12)
      expect(reserveOf(byId(changed, id)), id).toBeCloseTo(2.7, 12)
      expect(byId(changed, id)?.factors.find((f) => f.code === 'reserve'), id).toMatchObject({ basis: 'your own', source: expect.stringContaining(REASON) as string })
    }
  })

  test('leaves accidents as they are', () => {
    const accidents = changed.links.filter((l) => ['drop', 'strandParted'].includes(l.case) && l.factors.some((f) => f.code === 'reserve'))
    expect(accidents.length).toBeGreaterThan(5)
    expect(accidents.map(reserveOf)).toEqual(accidents.map(() => 1))
  })

  test('raised, it raises what is asked of ratings and published allowables in the same proportion', () => {
    // Over furniture 1 stands where strengths have 2, and 1.5 on a screw not yet pulled; the proportion is that over people, 1.5 and 2 beside 3.
    expect(reserveOf(byId(changed, 'hook.rated.watered'))).toBeCloseTo(1.35, 12)
    expect(reserveOf(byId(changed, 'fixing.allowableRoute.watered'))).toBeCloseTo(1.35, 12)
    expect(reserveOf(byId(checkOf(withReserve('2.7', without(ORDINARY, 'fixing.proof'))), 'fixing.allowableRoute.watered'))).toBeCloseTo(1.8, 12)
    expect(reserveOf(byId(checkOf(withReserve('4.2', { ...ORDINARY, 'place.beneath': 'people' })), 'hook.rated.watered'))).toBeCloseTo(2.1, 12)
  })

  test('raised by less than an unpulled screw is asked anyway, it leaves that as it is', () => {
    // Over furniture 1.5 stands there; in proportion to people, 2 beside 3, that is reached with 2.25.
    const reserveWith = (own: string) => byId(checkOf(withReserve(own, without(ORDINARY, 'fixing.proof'))), 'fixing.allowableRoute.watered')
    const unchanged = byId(checkOf(without(ORDINARY, 'fixing.proof')), 'fixing.allowableRoute.watered')?.factors
    expect(reserveWith('2.1')?.factors).toEqual(unchanged)
    expect(reserveWith('2.25')?.factors).toEqual(unchanged)
    expect(reserveOf(reserveWith('2.4'))).toBeCloseTo((2.4 * 2) / 3, 12)
  })

  test('lowered, it leaves them alone', () => {
    const lowered = checkOf(withReserve('1.2', ORDINARY))
    expect(reserveOf(byId(lowered, 'hook.rated.watered'))).toBe(1)
    expect(reserveOf(byId(lowered, 'leg.fillers.watered'))).toBeCloseTo(1.2, 12)
  })

  test('is carried with the check, in words too', () => {
    const found = changed.findings.find((f) => f.code === 'RESERVE_CHANGED')
    expect(found).toEqual({ code: 'RESERVE_CHANGED', own: 2.7, usual: 2, reason: REASON })
    expect(found && findingText(found)).toContain(`“${REASON}”`)
    expect(codes(usual)).not.toContain('RESERVE_CHANGED')
  })

  test('that is the usual one changes nothing and says nothing', () => {
    const same = checkOf(withReserve('2', ORDINARY))
    expect(same.links).toEqual(usual.links)
    expect(codes(same)).toEqual(codes(usual))
  })
})

test.each([{}, { 'reserve.reason': '   ' }])('without a reason it is not used, and that is said: %j', (reason) => {
  const check = checkOf({ ...ORDINARY, 'reserve.own': '1.1', ...reason })
  expect(check.links).toEqual(checkOf(ORDINARY).links)
  expect(check.findings).toContainEqual({ code: 'RESERVE_NEEDS_REASON', own: 1.1, usual: 2 })
  expect(codes(check)).not.toContain('RESERVE_CHANGED')
})

describe('over people a reserve below the usual one', () => {
  const strong: Patch = { ...ORDINARY, 'weighed.mass': '1.5 kg', 'make.strands': '8', 'place.beneath': 'people', 'testHang.mass': '30 kg', 'testHang.time': '30 h', 'testHang.slip': '1 mm' }
  const lowered = checkOf(withReserve('2.4', strong))

  test('leaves “just holds” at best where it makes things easier, and says why', () => {
    expect(byId(checkOf(strong), 'leg.fillers.watered')?.verdict).toBe('holds')
    const leg = byId(lowered, 'leg.fillers.watered')
    expect(leg?.verdict).toBe('just holds')
    expect(leg?.findings).toContainEqual({ code: 'RESERVE_LOW_OVER_PEOPLE', own: 2.4, usual: 3 })
  })

  test('does not touch accidents, ratings or what failed anyway', () => {
    for (const id of ['leg.fillers.drop', 'hook.rated.watered']) {
      expect(byId(lowered, id)?.verdict, id).toBe('holds')
      expect(byId(lowered, id)?.findings, id).toEqual([])
    }
    expect(byId(checkOf(withReserve('2.4', { ...strong, 'weighed.mass': '60 kg' })), 'leg.fillers.watered')?.verdict).toBe('fails')
  })

  test('over furniture is the maker’s affair', () => {
    expect(byId(checkOf(withReserve('1.4', { ...strong, 'place.beneath': 'furniture' })), 'leg.fillers.watered')?.verdict).toBe('holds')
  })
})

describe('a larger reserve never looks better', () => {
  const seeds = Array.from({ length: manyCases(20) }, (_, i) => 1200 + i)

  test('than the usual one', () => {
    expect(seeds.flatMap((seed) => improvements(checkOf(randomPatch(seed)), checkOf(withReserve('3.7', randomPatch(seed))), () => true).map((found) => `seed ${seed}, ${found}`))).toEqual([])
  })

  test('than another', () => {
    for (const [less, more] of [['1.1', '1.45'], ['3.2', '5.9']] as const) {
      expect(seeds.flatMap((seed) => improvements(checkOf(withReserve(less, randomPatch(seed))), checkOf(withReserve(more, randomPatch(seed))), () => true).map((found) => `seed ${seed}, ${found}`))).toEqual([])
    }
  })

  test('and with it more at stake beneath never looks better either', () => {
    expect(seeds.flatMap((seed) => {
      const patch = withReserve('4.3', { ...randomPatch(seed), 'place.beneath': 'nothing' })
      const steps = ['furniture', 'people'].map((beneath) => checkOf({ ...patch, 'place.beneath': beneath }))
      return steps.flatMap((stricter, i) => improvements(i === 0 ? checkOf(patch) : steps[i - 1] as CheckResult, stricter, () => true).map((found) => `seed ${seed}, ${found}`))
    })).toEqual([])
  })
})

describe('the overall factor over people', () => {
  const thin: Patch = { ...ORDINARY, 'place.life': '30 days', 'place.beneath': 'people' }
  const leg = (patch: Patch) => byId(checkOf(patch), 'leg.fillers.watered')

  test('stands beside what is asked of life lines where it falls short of it', () => {
    const short = leg({ ...thin, 'weighed.mass': '9 kg' })
    expect(short?.overallFactor).toBeLessThan(12)
    expect(short?.findings).toContainEqual({ code: 'UNDER_LIFE_LINE_FACTOR', factor: short?.overallFactor, least: 12, most: 15 })
    expect(leg({ ...thin, 'weighed.mass': '3 kg' })?.findings.map((f) => f.code)).not.toContain('UNDER_LIFE_LINE_FACTOR')
    expect(leg({ ...thin, 'weighed.mass': '9 kg', 'place.beneath': 'furniture' })?.findings.map((f) => f.code)).not.toContain('UNDER_LIFE_LINE_FACTOR')
  })
})
