import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })

describe('what it is fixed into', () => {
  test('plasterboard alone is refused, whatever its packet says', () => {
    const refused = check({ 'place.substrate': 'plasterboard', 'fixing.rated': '200 kgf', 'weighed.mass': '0.5 kg' })
    expect(worstOfLink(refused, 'fixing').verdict).toBe('fails')
    expect(codesOf(refused, 'fixing')).toEqual(['FIXING_REFUSED'])
    expect(refused.verdicts.place).toBe('fails')
    expect(refused.verdicts.hanger).not.toBe('fails')
  })

  test('unknown: not enough is known, whatever its packet says', () => {
    const unknown = check({ 'place.substrate': 'unknown', 'fixing.rated': '200 kgf' })
    expect(worstOfLink(unknown, 'fixing').verdict).toBe('not enough known')
    expect(codesOf(unknown, 'fixing')).toEqual(['SUBSTRATE_UNKNOWN'])
  })

  test('masonry needs the packet’s rating, and holds by it', () => {
    const bare = check({ 'place.substrate': 'masonry' })
    expect(worstOfLink(bare, 'fixing').verdict).toBe('not enough known')
    expect(codesOf(bare, 'fixing')).toEqual(['MASONRY_NEEDS_RATING'])
    const rated = check({ 'place.substrate': 'masonry', 'fixing.rated': '80 kgf', 'fixing.ratedFor': 'pullOut' })
    expect(worstOfLink(rated, 'fixing')).toMatchObject({ verdict: 'holds', part: 'rated' })
    expect(codesOf(rated, 'fixing')).toEqual([])
  })
})

describe('a rating', () => {
  test('is asked half as much again over people, and counts twice for a moment', () => {
    const at = (patch: Patch, code: 'watered' | 'setDown') => linkIn(check({ 'place.substrate': 'masonry', 'fixing.rated': '300 N', 'fixing.ratedFor': 'pullOut', ...patch }), 'fixing', code).allowable?.value
    expect(at({}, 'watered')).toBeCloseTo(300, 9)
    expect(at({ 'place.beneath': 'people' }, 'watered')).toBeCloseTo(200, 9)
    expect(at({}, 'setDown')).toBeCloseTo(600, 9)
    expect(at({ 'place.beneath': 'people' }, 'setDown')).toBeCloseTo(400, 9)
  })
})

describe('a screw in a joist', () => {
  test('is judged by both published routes, each with reserves of its own kind', () => {
    const results = check({}).links.filter((l) => l.link === 'fixing' && l.case === 'watered')
    const factorsOf = (part: string) => Object.fromEntries(results.find((l) => l.part === part)?.factors.map((f) => [f.code, f.value]) ?? [])
    expect(results.map((l) => l.part)).toEqual(['ultimateRoute', 'allowableRoute'])
    expect(factorsOf('ultimateRoute')).toMatchObject({ scatter: 0.7, reserve: 0.5 })
    expect(factorsOf('allowableRoute')).toEqual({ duration: 0.9, reserve: 1 })
  })

  test('is trusted less until it was pulled in place with one and a half times the load', () => {
    const { loads } = check({}).solved
    const heaviest = Math.max(loads.watered.potted + loads.watered.hanger, loads.flooded.potted + loads.flooded.hanger)
    const reserveOf = (patch: Patch): number | undefined =>
      check(patch).links.find((l) => l.link === 'fixing' && l.part === 'allowableRoute' && l.case === 'dry')?.factors.find((f) => f.code === 'reserve')?.value
    expect(reserveOf({ 'fixing.proof': `${1.5 * heaviest + 0.001} kg` })).toBe(1)
    expect(reserveOf({ 'fixing.proof': `${1.5 * heaviest - 0.001} kg` })).toBeCloseTo(1 / 1.5, 12)
    expect(reserveOf({ 'fixing.proof': '1 kg', 'place.beneath': 'people' })).toBe(0.5)
    const unproved = checkOf(without(ORDINARY, 'fixing.proof'))
    expect(unproved.links.flatMap((l) => l.findings)).toContainEqual({ code: 'PULL_IN_PLACE', mass: expect.closeTo(1.5 * heaviest, 9) as number })
    expect(codesOf(check({}), 'fixing')).not.toContain('PULL_IN_PLACE')
  })

  test('with less thread than six diameters is said to be too short, and counts no thicker than its depth allows', () => {
    const short = check({ 'fixing.diameter': '8 mm', 'fixing.penetration': '42 mm', 'weighed.mass': '1.4 kg' })
    expect(short.links.flatMap((l) => l.findings)).toContainEqual({ code: 'PENETRATION_TOO_SHORT', given: expect.closeTo(0.042, 12) as number, least: expect.closeTo(0.048, 12) as number })
    const thinner = check({ 'fixing.diameter': '7 mm', 'fixing.penetration': '42 mm', 'weighed.mass': '1.4 kg' })
    expect(linkIn(short, 'fixing', 'dry').capacity?.value).toBeCloseTo(linkIn(thinner, 'fixing', 'dry').capacity?.value ?? NaN, 9)
    expect(linkIn(thinner, 'fixing', 'dry').verdict).toBe('holds')
    expect(linkIn(short, 'fixing', 'dry').verdict).toBe('holds')
    expect(codesOf(thinner, 'fixing')).not.toContain('PENETRATION_TOO_SHORT')
  })

  test('without any thread in the timber fails', () => {
    expect(worstOfLink(check({ 'fixing.penetration': '0 mm' }), 'fixing').verdict).toBe('fails')
  })

  test('of assumed thickness or depth is not said to hold, nor to fail', () => {
    const assumed = (patch: Patch) => worstOfLink(checkOf({ ...without(ORDINARY, 'fixing.penetration'), ...patch }), 'fixing')
    expect(assumed({ 'weighed.mass': '0.4 kg', 'fixing.proof': '90 kg' }).verdict).toBe('just holds')
    expect(assumed({ 'weighed.mass': '60 kg' }).verdict).toBe('not enough known')
    expect(worstOfLink(check({ 'weighed.mass': '60 kg' }), 'fixing').verdict).toBe('fails')
  })
})
