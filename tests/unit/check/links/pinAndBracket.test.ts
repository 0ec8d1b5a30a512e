import { describe, expect, test } from 'vitest'
import type { CheckResult, Patch } from '#core'
import { madisonShare } from '../../../../src/check/woodStrength'
import { hookLoad } from '../../../../src/check/hookLoad'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'
import { BRACKET, WALL_HOOK } from './places'
import { ON_STICK } from './stickOf'

const check = (patch: Patch): CheckResult => checkOf({ ...ORDINARY, ...patch })
const pin = (patch: Patch, code: 'dry' | 'setDown' = 'setDown') => linkIn(check({ ...WALL_HOOK, ...patch }), 'pin', code)
const arm = (patch: Patch, code: 'dry' | 'bump' = 'dry') => linkIn(check({ ...BRACKET, ...patch }), 'bracket', code)

describe('what stands out of a wall', () => {
  test('in brick bends at the face: yield moment over how far it stands out', () => {
    expect(pin({ 'place.substrate': 'solidBrick' })).toMatchObject({ part: 'pinAtFace', demand: { value: check(WALL_HOOK).solved.loads.setDown.weight } })
    expect(pin({ 'place.substrate': 'solidBrick' }).capacity?.value).toBeCloseTo((250 * 8 ** 3) / 6 / 24, 9)
  })

  test('in timber bends within the wood, earlier than at its face: by hand', () => {
    const at = pin({ 'fixing.penetration': '80 mm' }).capacity?.value ?? NaN
    const q = 114.5 * 0.32 ** 1.84 * 8 * madisonShare(10)
    const moment = (250 * 8 ** 3) / 6
    expect(at * 24 + at ** 2 / (2 * q)).toBeCloseTo(moment, 6)
    expect(at).toBeLessThan(moment / 24)
  })

  test('little of it in the wood turns there', () => {
    const shallow = pin({ 'fixing.penetration': '14 mm' }).capacity?.value ?? NaN
    const q = 114.5 * 0.32 ** 1.84 * 8 * madisonShare(10)
    expect(shallow ** 2 / (4 * q) + shallow * (24 + 7)).toBeCloseTo((q * 14 ** 2) / 4, 6)
  })

  test('board over the timber counts as air; lasting load and damp weaken the wood', () => {
    const of = (patch: Patch, code: 'dry' | 'setDown' = 'setDown'): number => pin({ 'fixing.penetration': '80 mm', ...patch }, code).capacity?.value ?? NaN
    expect(of({ 'hook.projection': '11 mm', 'fixing.between': '13 mm' })).toBeCloseTo(of({ 'hook.projection': '24 mm' }), 9)
    expect(of({}, 'dry')).toBeLessThan(of({}))
    expect(of({ 'place.exposure': 'steamy' })).toBeLessThan(of({}))
  })

  test('a nail or screw that is the hook itself bends by its own thickness', () => {
    const nail = pin({ 'fixing.kind': 'nail', 'fixing.diameter': '2.87 mm', 'fixing.penetration': '50 mm', 'hook.projection': '10 mm', 'weighed.mass': '0.7 kg' })
    expect(nail.terms.find((t) => t.symbol === 'd_h')?.value).toBe(0.00287)
    expect(nail.terms.find((t) => t.symbol === 'f_y')?.value).toBeCloseTo(100_000 * 6894.757, -3)
    // A screw by the root of its thread.
    expect(pin({ 'fixing.kind': 'woodScrew' }).terms.find((t) => t.symbol === 'd_h')?.value).toBeCloseTo(0.0036, 12)
  })

  test('further out is never easier, thicker never harder', () => {
    for (const substrate of ['timber', 'solidBrick'] as const) {
      const out = ['5', '16', '40', '90'].map((mm) => pin({ 'place.substrate': substrate, 'hook.projection': `${mm} mm` }).capacity?.value ?? NaN)
      expect([...out].sort((a, b) => b - a)).toEqual(out)
      const thick = ['3', '5', '9', '14'].map((mm) => pin({ 'place.substrate': substrate, 'hook.wire': `${mm} mm` }).capacity?.value ?? NaN)
      expect([...thick].sort((a, b) => a - b)).toEqual(thick)
    }
  })

  test('that was not measured is not said to hold, nor to fail', () => {
    const guess = without({ ...ORDINARY, ...WALL_HOOK }, 'hook.wire')
    expect(worstOfLink(checkOf({ ...guess, 'weighed.mass': '0.1 kg' }), 'pin').verdict).not.toBe('holds')
    expect(worstOfLink(checkOf({ ...guess, 'weighed.mass': '60 kg' }), 'pin').verdict).toBe('not enough known')
  })

  test('is no part of a hook in the ceiling, whose shank is bent by a swing only; and the shank none of a wall', () => {
    const parts = (patch: Patch): readonly string[] => [...new Set(check(patch).links.map((l) => l.link))]
    expect(parts({})).toContain('hookShank')
    expect(parts({})).not.toContain('pin')
    expect(parts(WALL_HOOK)).toContain('pin')
    expect(parts(WALL_HOOK)).not.toContain('hookShank')
    expect(parts({ ...WALL_HOOK, 'hook.projection': '0 mm' })).not.toContain('pin')
  })
})

describe('the arm of a bracket', () => {
  test('bends at the wall: f b h2 / 6 over its reach, the oval within its section', () => {
    expect(arm({}).capacity?.value).toBeCloseTo((250 * 6 * 25 ** 2) / 6 / 220, 9)
    expect(arm({ 'bracket.thick': '12 mm', 'bracket.high': '12 mm' }).capacity?.value).toBeCloseTo((250 * 12 ** 3) / 6 / 220, 9)
  })

  test('is bent aside too where a pot swings, by its weaker way; a swing arm gives way to it', () => {
    const W = check({}).solved.loads.bump.weight / check({}).solved.loads.bump.factor
    expect(arm({}, 'bump').demand?.value).toBeCloseTo(W * (0.75 + Math.sin(Math.PI / 6) * Math.cos(Math.PI / 6) * (25 / 6)), 9)
    expect(arm({ 'place.support': 'swingArm' }, 'bump').demand?.value).toBe(check({}).solved.loads.bump.weight)
    expect(arm({ 'bracket.thick': '25 mm' }, 'bump').demand?.value).toBe(check({}).solved.loads.bump.weight)
  })

  test('holds by its rating, whatever its section', () => {
    expect(worstOfLink(check({ ...without(BRACKET, 'bracket.thick'), 'bracket.rated': '40 kgf' }), 'bracket')).toMatchObject({ verdict: 'holds', part: 'rated' })
  })

  test('without rating or section is not known', () => {
    const bare = check(without(BRACKET, 'bracket.high'))
    expect(worstOfLink(bare, 'bracket')).toMatchObject({ verdict: 'not enough known', utilisation: null })
    expect(codesOf(bare, 'bracket')).toContain('BRACKET_UNRATED')
  })

  test('a longer one is never easier, a higher one never harder', () => {
    const of = (path: string, values: readonly string[]): readonly number[] => values.map((mm) => arm({ [path]: `${mm} mm` }).utilisation ?? NaN)
    const reach = of('bracket.reach', ['80', '150', '260', '420'])
    expect([...reach].sort((a, b) => a - b)).toEqual(reach)
    const high = of('bracket.high', ['9', '16', '25', '60'])
    expect([...high].sort((a, b) => b - a)).toEqual(high)
  })
})

test('a screw that stands out of brick bends at its root, as it does in timber; a smooth nail of that thickness is full', () => {
  const of = (kind: string) => pin({ 'place.substrate': 'solidBrick', 'fixing.kind': kind, 'fixing.diameter': '6 mm', 'fixing.penetration': '60 mm', 'hook.projection': '20 mm' })
  const wire = (kind: string): number => of(kind).terms.find((t) => t.symbol === 'd_h')?.value ?? NaN
  expect(wire('nail')).toBeCloseTo(0.006, 12)
  expect(wire('woodScrew')).toBeLessThan(0.8 * wire('nail'))
  expect(of('woodScrew').capacity?.value).toBeLessThan((of('nail').capacity?.value ?? NaN) / 1.9)
})

test('screws of a swing arm lie so far from their middle; a bracket that nothing pulls aside only turns on its lower edge', () => {
  const lines = (patch: Patch) => linkIn(check({ ...BRACKET, ...patch }), 'fixing', 'watered').terms
  const swing = lines({ 'place.support': 'swingArm' })
  // Two screws, 130 and 25 mm above the edge.
  expect(swing.find((t) => t.symbol === 'y_m')?.value).toBeCloseTo(0.0525, 12)
  expect(swing.find((t) => t.symbol === 'S_m')?.value).toBeCloseTo(2 * 0.0525 ** 2, 12)
  expect(lines({}).find((t) => t.symbol === 'E_N')?.source).toBe('a stiff bracket turns on its lower edge')
  expect(linkIn(check({ ...BRACKET, 'place.reach': 'child' }), 'fixing', 'tug').terms.find((t) => t.symbol === 'E_N')?.source).toContain('side edge')
})

test('of a stick on two hooks a pull from below bears on one of them by its part of this hanger', () => {
  const pulled = checkOf({ ...ON_STICK, ...BRACKET, 'stick.held': 'twoHooks', 'stick.bunch': '240 mm', 'place.reach': 'child' })
  const { terms } = linkIn(pulled, 'fixing', 'tug')
  const of = (symbol: string): number => terms.find((t) => t.symbol === symbol)?.value ?? NaN
  const { weight, sideDown } = pulled.solved.loads.tug
  const share = of('k_o')
  expect(share).toBeGreaterThan(0.5)
  expect(share).toBeLessThan(0.6)
  expect(sideDown).toBeLessThan(0.9 * weight)
  expect(of('P_d')).toBeCloseTo(hookLoad(pulled.solved, 'tug').load + (sideDown - weight) * share, 9)
})
