import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { metres, pascals } from '../../../../src/quantity/si'
import { hookFirstYield } from '../../../../src/statics/curvedBar'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const UNRATED = { ...without(ORDINARY, 'hook.rated'), 'hook.inside': '31 mm', 'hook.metal': 'steel' } as const
const check = (patch: Patch) => checkOf({ ...UNRATED, ...patch })

describe('an open hook', () => {
  test('bends open by a hinge, a closed eye only by four: a quarter of the load', () => {
    const capacityOf = (kind: string): number => linkIn(check({ 'hook.kind': kind }), 'hook', 'watered').capacity?.value ?? NaN
    // 6 mm wire, middle radius 18.5 mm, 250 N/mm2: 250 x 216 / 6 / 18.5.
    expect(capacityOf('open')).toBeCloseTo((250 * 216) / 6 / 18.5, 9)
    expect(capacityOf('closed')).toBeCloseTo(4 * capacityOf('open'), 9)
  })

  test.each(['people', 'public'])('over %s is refused, rated or not', (beneath) => {
    for (const patch of [{}, { 'hook.rated': '900 kgf' }]) {
      const refused = check({ ...patch, 'hook.kind': 'open', 'place.beneath': beneath })
      expect(worstOfLink(refused, 'hook').verdict).toBe('fails')
      expect(codesOf(refused, 'hook')).toContain('HOOK_OPEN_OVER_PEOPLE')
    }
  })

  test('over people is refused even where its wire was not measured', () => {
    const refused = checkOf({ ...without(UNRATED, 'hook.wire'), 'hook.kind': 'open', 'place.beneath': 'people' })
    expect(worstOfLink(refused, 'hook').verdict).toBe('fails')
  })

  test('that was only assumed to be open is not said to fail', () => {
    const assumed = checkOf({ ...without(UNRATED, 'hook.kind'), 'hook.wire': '12 mm', 'place.beneath': 'people' })
    expect(worstOfLink(assumed, 'hook').verdict).toBe('not enough known')
  })

  test('over furniture may hold', () => {
    expect(worstOfLink(check({ 'hook.kind': 'open', 'hook.rated': '90 kgf' }), 'hook').verdict).toBe('holds')
    expect(codesOf(check({ 'hook.kind': 'open' }), 'hook')).not.toContain('HOOK_OPEN_OVER_PEOPLE')
  })
})

test('a hook of unknown metal is taken for the softest', () => {
  const capacityOf = (metal: string): number => linkIn(check({ 'hook.metal': metal }), 'hook', 'dry').capacity?.value ?? NaN
  expect(capacityOf('unknown')).toBe(capacityOf('brass'))
  expect(capacityOf('steel')).toBeCloseTo(2.5 * capacityOf('brass'), 9)
})

test('wire that was not measured is not said to hold, nor to fail', () => {
  const unmeasured = without(UNRATED, 'hook.wire')
  expect(worstOfLink(checkOf({ ...unmeasured, 'weighed.mass': '0.2 kg', 'hook.inside': '10 mm' }), 'hook').verdict).toBe('just holds')
  const heavy = checkOf({ ...unmeasured, 'weighed.mass': '60 kg' })
  expect(worstOfLink(heavy, 'hook').verdict).toBe('not enough known')
  expect(codesOf(heavy, 'hook')).toContain('ASSUMED_PART_FAILS')
})

describe('the shank', () => {
  test('is bent by a swing from 30 degrees: by hand', () => {
    const shank = linkIn(check({ 'hook.projection': '44 mm' }), 'hookShank', 'bump')
    const { weight, factor } = check({}).solved.loads.bump
    expect(shank.demand?.value).toBeCloseTo((weight / factor) * 0.5 * Math.cos(Math.PI / 6), 9)
    expect(shank.capacity?.value).toBeCloseTo((250 * 216) / 6 / 44, 9)
    expect(shank.allowable?.value).toBeCloseTo((250 * 216) / 6 / 44 / 2, 9)
  })

  test('of a rated hook is bent too: the rating is for a straight pull', () => {
    expect(linkIn(check({ 'hook.rated': '90 kgf', 'hook.projection': '44 mm' }), 'hookShank', 'bump').utilisation).toBe(linkIn(check({ 'hook.projection': '44 mm' }), 'hookShank', 'bump').utilisation)
  })

  test('is not bent where the hook is screwed in to its bowl', () => {
    expect(check({ 'hook.projection': '0 mm' }).links.map((l) => l.link)).not.toContain('hookShank')
  })
})

test('a rated hook that a customer told of counts as no better than a table', () => {
  const rated = { ...ORDINARY, 'hook.rated': '20 kgf' } as const
  const of = (patch: Patch) => checkOf({ ...rated, ...patch }).links.filter((l) => l.link === 'hook')
  expect(of({}).map((l) => l.grade)).toEqual(of({}).map(() => 'rated'))
  for (const link of of({ 'place.known': 'told' })) {
    expect(link.grade).toBe('table')
    expect(link.capacity?.basis).toBe('told by customer')
    expect(link.findings.map((f) => f.code)).toContain('TOLD_BY_CUSTOMER')
  }
})

test('an open bowl is said to open in the cases that take it past its first yield, a closed eye in none', () => {
  const said = (kind: string) => check({ 'hook.kind': kind, 'hook.wire': '5 mm' }).links.filter((l) => l.link === 'hook').map((l) => ({ load: l.demand?.value ?? NaN, force: l.findings.flatMap((f) => (f.code === 'HOOK_MAY_OPEN' ? [f.force] : [])) }))
  const first = hookFirstYield(metres(0.005), metres(0.031), pascals(250e6))
  const open = said('open')
  expect(open.some(({ load }) => load < first) && open.some(({ load }) => load > first)).toBe(true)
  for (const { load, force } of open) expect(force).toEqual(load > first ? [load] : [])
  for (const { force } of said('closed')) expect(force).toEqual([])
})

describe('twisted legs', () => {
  const told = (patch: Patch) => check({ 'make.build': 'spiral', ...patch }).links.flatMap((l) => l.findings).filter((f) => f.code === 'HOOK_MAY_UNSCREW')

  test('may unscrew a screw hook, which is said once', () => {
    expect(told({ 'fixing.kind': 'screwHook' })).toHaveLength(1)
  })

  test('turn nothing out of a hook on a plate', () => {
    expect(told({ 'place.substrate': 'concrete', 'fixing.kind': 'metalAnchor' })).toEqual([])
  })
})

describe('a hook of unknown metal', () => {
  const UNMARKED: Patch = { 'hook.metal': 'unknown', 'hook.kind': 'latched', 'hook.wire': '4 mm', 'testHang.mass': '60 kg', 'testHang.time': '26 h', 'testHang.slip': '1 mm' }
  const hook = (patch: Patch) => linkIn(check({ ...UNMARKED, ...patch }), 'hook', 'watered')

  test('goes by its wire where others hang from it too: the test hang was of this hanger alone', () => {
    expect(hook({}).part).toBe('testHang')
    expect(hook({ 'rail.others': '0.5 kg' }).part).toBe('wireHinge')
    expect(hook({ 'make.arrangement': 'row', 'row.count': '2' }).part).toBe('wireHinge')
  })

  test('goes by its wire where that says more than the test', () => {
    // A mass that just holds, between the limit of a tested part and all of it.
    const full = hook({}).utilisation ?? NaN
    const mass = (used: number): Patch => ({ 'testHang.mass': `${(60 * full) / used} kg` })
    expect(hook(mass(0.9))).toMatchObject({ part: 'testHang', verdict: 'just holds' })
    expect(hook({ ...mass(0.9), 'hook.wire': '12 mm' })).toMatchObject({ part: 'wireHinge', verdict: 'holds' })
  })

  test('asks for a test hang only where that would settle it', () => {
    const untested = (patch: Patch) => codesOf(checkOf({ ...UNRATED, ...without(UNMARKED, 'testHang.mass', 'testHang.time', 'testHang.slip'), ...patch }), 'hook')
    expect(untested({})).toContain('HOOK_UNMARKED')
    expect(untested({ 'hook.wire': '16 mm' })).not.toContain('HOOK_UNMARKED')
    expect(untested({ 'hook.metal': 'steel' })).not.toContain('HOOK_UNMARKED')
    expect(untested({ 'hook.kind': 'open', 'place.beneath': 'people' })).not.toContain('HOOK_UNMARKED')
  })
})

test('a gust bends the shank by all that hangs there, in proportion to its weight', () => {
  const windy: Patch = { 'hook.projection': '44 mm', 'place.exposure': 'outdoors', 'place.wind': 'exposed' }
  const [alone, shared] = [check(windy), check({ ...windy, 'rail.others': '2 kg' })]
  const { weight, factor } = alone.solved.loads.gust
  const ratio = (linkIn(shared, 'hookShank', 'gust').demand?.value ?? NaN) / (linkIn(alone, 'hookShank', 'gust').demand?.value ?? NaN)
  expect(ratio).toBeCloseTo((weight / factor + 2 * 9.80665) / (weight / factor), 9)
})
