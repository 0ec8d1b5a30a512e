import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
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
