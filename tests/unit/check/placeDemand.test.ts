import { describe, expect, test } from 'vitest'
import type { CaseCode, Patch } from '#core'
import { placeDemand } from '../../../src/check/placeDemand'
import { STANDARD_GRAVITY } from '../../../src/quantity/si'
import { checkOf, ORDINARY } from '../hanger/hangerOf'

const solvedOf = (patch: Patch) => checkOf({ ...ORDINARY, ...patch }).solved
const asked = (patch: Patch, code: CaseCode) => {
  const demand = placeDemand(solvedOf(patch), code)
  if (!demand.ok) throw new Error(demand.finding.code)
  return demand
}
const weight = (code: CaseCode): number => solvedOf({}).loads[code].weight

describe('a hook in the ceiling', () => {
  test('is pulled straight out by all that hangs there, and pushed aside by a bump only', () => {
    expect(asked({}, 'watered')).toMatchObject({ pull: weight('watered'), shear: 0 })
    const { weight: swung, factor } = solvedOf({}).loads.bump
    expect(asked({}, 'bump').pull).toBe(swung)
    expect(asked({}, 'bump').shear).toBeCloseTo((swung / factor) * 0.5 * Math.cos(Math.PI / 6), 9)
  })

  test('bears what else hangs from it, at rest in every case', () => {
    for (const code of ['dry', 'setDown'] as const) expect(asked({ 'rail.others': '3.3 kg' }, code).pull).toBeCloseTo(weight(code) + 3.3 * STANDARD_GRAVITY, 9)
  })

  test('shares with the others of its plate, but no more than two are counted', () => {
    const pull = (count: string): number => asked({ 'fixing.count': count }, 'bump').pull / weight('bump')
    expect([pull('1'), pull('2'), pull('5')]).toEqual([1, 0.5, 0.5])
    expect(asked({ 'fixing.count': '4' }, 'bump').shear).toBeCloseTo(asked({}, 'bump').shear / 2, 9)
  })
})

describe('a hook in a wall', () => {
  const wall: Patch = { 'place.support': 'wallHook', 'hook.projection': '24 mm', 'seat.offset': '7 mm' }

  test('is pulled by a pot that leans on the wall, by its lever over the height: by hand', () => {
    const { geometry } = solvedOf(wall)
    if (!geometry.path.ok) throw new Error('no path')
    // Rim of 210 mm, its edge 185 mm up, a cord of 3 mm between, a ring of 40 mm inside and 5 mm wire above the legs.
    const lever = 0.105 + 0.003 + 0.007 - 0.024
    const height = 0.05 + geometry.path.top - 0.185
    for (const code of ['dry', 'setDown'] as const) {
      const { pull, shear } = asked(wall, code)
      expect(shear).toBe(solvedOf(wall).loads[code].weight)
      expect(pull).toBeCloseTo((shear * lever) / height, 9)
    }
  })

  test('is not pulled where the pot hangs clear of the wall', () => {
    expect(asked({ ...wall, 'hook.projection': '130 mm' }, 'watered')).toMatchObject({ pull: 0, shear: solvedOf(wall).loads.watered.weight })
  })

  test('is pulled less from higher up', () => {
    expect(asked({ ...wall, 'make.totalLength': '140 cm' }, 'dry').pull / asked({ ...wall, 'make.totalLength': '140 cm' }, 'dry').load).toBeLessThan(asked(wall, 'dry').pull / asked(wall, 'dry').load)
  })

  test('has no answer where the legs do not reach round the pot', () => {
    expect(placeDemand(solvedOf({ ...wall, 'make.totalLength': '50 cm' }), 'dry')).toMatchObject({ ok: false, finding: { code: 'WALL_LEAN_UNKNOWN' }, fails: false })
  })
})

describe('a bracket', () => {
  const bracket: Patch = { 'place.support': 'bracket', 'bracket.reach': '250 mm', 'bracket.screws': '3', 'bracket.top': '140 mm', 'bracket.bottom': '20 mm' }

  test('turns on its lower edge, its highest screw worst: by hand', () => {
    const W = weight('watered')
    const { pull, shear } = asked(bracket, 'watered')
    expect(pull).toBeCloseTo((W * 250 * 140) / (140 ** 2 + 80 ** 2 + 20 ** 2), 9)
    expect(shear).toBeCloseTo(W / 3, 9)
  })

  test('turns 10 mm higher up on plasterboard', () => {
    expect(asked({ ...bracket, 'place.substrate': 'plasterboard' }, 'watered').pull).toBeCloseTo((weight('watered') * 250 * 130) / (130 ** 2 + 70 ** 2 + 10 ** 2), 9)
  })

  test('that swings turns its plate in the plane of the wall too', () => {
    const W = weight('watered')
    const { pull, shear } = asked({ ...bracket, 'place.support': 'swingArm' }, 'watered')
    expect(pull).toBe(asked(bracket, 'watered').pull)
    expect(shear).toBeCloseTo(Math.hypot((W * 250 * 60) / (60 ** 2 + 60 ** 2), W / 3), 9)
  })

  test('on one screw holds, but not if it swings; without a lever it does not', () => {
    const one: Patch = { ...bracket, 'bracket.screws': '1' }
    expect(asked(one, 'dry').pull).toBeCloseTo((weight('dry') * 250) / 140, 9)
    expect(placeDemand(solvedOf({ ...one, 'place.support': 'swingArm' }), 'dry')).toMatchObject({ ok: false, finding: { code: 'BRACKET_TURNS' }, fails: true })
    expect(placeDemand(solvedOf({ ...one, 'bracket.top': '10 mm', 'place.substrate': 'plasterboard' }), 'dry')).toMatchObject({ ok: false, finding: { code: 'BRACKET_NO_LEVER' }, fails: false })
  })
})

describe('pulled aside', () => {
  const bracket: Patch = { 'place.support': 'bracket', 'bracket.reach': '250 mm', 'bracket.screws': '3', 'bracket.top': '140 mm', 'bracket.bottom': '20 mm', 'bracket.wide': '30 mm' }
  const aside = (code: CaseCode): { readonly S: number; readonly down: number } => ({ S: solvedOf({}).loads[code].side, down: solvedOf({}).loads[code].sideDown })

  test('a fixed bracket turns on a side edge of its plate besides, on all screws alike: by hand', () => {
    const { S, down } = aside('bump')
    const { pull, shear } = asked(bracket, 'bump')
    expect(pull).toBeCloseTo((down * 250 * 140) / (140 ** 2 + 80 ** 2 + 20 ** 2) + (S * 250) / (3 * 15), 9)
    expect(shear).toBeCloseTo(Math.max(weight('bump') / 3, down / 3 + S / 3), 9)
  })

  test('a wider plate is pulled less, and a swing arm follows', () => {
    const pulls = ['12 mm', '30 mm', '90 mm'].map((wide) => asked({ ...bracket, 'bracket.wide': wide }, 'bump').pull)
    expect([...pulls].sort((a, b) => b - a)).toEqual(pulls)
    expect(asked({ ...bracket, 'place.support': 'swingArm' }, 'bump').pull).toBeLessThan(pulls[1] ?? NaN)
  })

  test('a hook in a wall is pulled straight out, or along it more than down alone', () => {
    const clear: Patch = { 'place.support': 'wallHook', 'hook.projection': '130 mm' }
    expect(asked(clear, 'watered').pull).toBe(0)
    expect(asked(clear, 'bump').pull).toBeCloseTo(aside('bump').S, 9)
    const tugged = solvedOf({ ...clear, 'place.reach': 'child' }).loads.tug
    expect(asked({ ...clear, 'place.reach': 'child' }, 'tug')).toMatchObject({ pull: tugged.side, shear: Math.max(tugged.weight, Math.hypot(tugged.sideDown, tugged.side)) })
  })

  test('all cases without a side pull are as before', () => {
    for (const code of ['dry', 'watered', 'setDown', 'drop'] as const) expect(aside(code).S).toBe(0)
  })
})
