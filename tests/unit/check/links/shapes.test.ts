import { describe, expect, test } from 'vitest'
import type { CheckResult, Patch } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { improvements } from '../improvements'
import { codesOf, worstOfLink } from '../linkOf'

const ORDINARY_HEIGHT = Number.parseFloat(ORDINARY['pot.height']) / 1000

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })

describe.each([['square', {}], ['trough', { 'pot.length': '40 cm', 'make.totalLength': '140 cm' }]] as const)('four legs round a %s', (shape, more: Patch) => {
  const of = (patch: Patch): CheckResult => check({ ...more, 'pot.shape': shape, 'cradle.first': '20 cm', ...patch })
  const corners = of({ 'pot.strandsAt': 'corners' })
  const sides = of({ 'pot.strandsAt': 'sides' })

  test('lie over half the diagonal at its corners, over half a side or length at its sides', () => {
    const reach = (c: CheckResult): readonly number[] => c.solved.geometry.legs.map(({ path }) => path.leave.r)
    const [width, length] = [0.105, shape === 'square' ? 0.105 : 0.2]
    for (const r of reach(corners)) expect(r).toBeCloseTo(Math.hypot(width, length), 12)
    reach(sides).forEach((r, i) => expect(r).toBeCloseTo(i % 2 === 0 ? length : width, 12))
  })

  test('leave the shape’s seat reckoned: nothing of it is unknown', () => {
    for (const c of [corners, sides]) {
      expect(codesOf(c, 'seat')).not.toContain('SHAPE_NOT_RECKONED')
      expect(worstOfLink(c, 'seat').utilisation).not.toBeNull()
    }
  })

  test('where they lie was not said: the seat is “just holds” at best', () => {
    expect(worstOfLink(of({}), 'seat').verdict).toBe('just holds')
    expect(codesOf(of({}), 'seat')).toContain('ASSUMED_PART_HOLDS')
  })

  test('at the corners need the cradle’s first knots, in the middle of the sides they lie still by themselves', () => {
    const slips = (c: CheckResult) => worstOfLink(c, 'seat').findings.find((f) => f.code === 'STRANDS_SLIP_ALONG')
    expect(slips(corners)).toMatchObject({ legs: [1, 2, 3, 4], atCorners: true, held: true })
    const open = of({ 'pot.strandsAt': 'corners', 'cradle.kind': 'open' })
    expect(slips(open)).toMatchObject({ held: false })
    expect(worstOfLink(open, 'seat').verdict).toBe('not enough known')
    expect(slips(of({ 'pot.strandsAt': 'sides', 'cradle.kind': 'open' }))).toBeUndefined()
  })

  test('a heavier pot is never safer', () => {
    const [light, heavy] = ['2 kg', '3 kg'].map((mass) => of({ 'weighed.mass': mass, 'weighed.state': 'watered', 'pot.strandsAt': 'sides' })) as [CheckResult, CheckResult]
    expect(improvements(light, heavy, (l) => ['leg', 'seat', 'gatheringTurn', 'wrapHoop'].includes(l.link))).toEqual([])
  })

  test('in a round cover pot lie evenly round it', () => {
    const covered = of({ 'cover.inside': '50 cm', 'cover.mass': '1 kg', 'make.totalLength': '200 cm' })
    expect(codesOf(covered, 'leg')).not.toContain('STRANDS_UNEQUAL')
    expect(new Set(covered.solved.geometry.legs.map(({ path }) => path.leave.r)).size).toBe(1)
  })
})

describe('a square pot over another', () => {
  const over: Patch = { 'make.arrangement': 'tiers', 'pot.shape': 'square', 'make.totalLength': '140 cm', 'cord.rated': '20 kN' }
  const links = ['leg', 'seat'] as const

  test('is not reckoned on its corners: of legs and seat not enough is known, too short ones among them', () => {
    for (const link of links) {
      expect(codesOf(check(over), link)).toContain('SHAPE_NOT_RECKONED')
      expect(worstOfLink(check(over), link).verdict).toBe('not enough known')
    }
    expect(codesOf(check(over), 'leg')).not.toContain('STRANDS_UNEQUAL')
    const short = check({ ...over, 'make.totalLength': '50 cm' })
    expect(codesOf(short, 'leg')).toContain('LEG_TOO_SHORT')
    expect(worstOfLink(short, 'leg').verdict).toBe('not enough known')
  })

  test('is reckoned in a round cover pot, and round', () => {
    for (const patch of [{ 'cover.inside': '40 cm' }, { 'pot.shape': 'taperedRound' }] as const) {
      for (const link of links) expect(codesOf(check({ ...over, ...patch }), link)).not.toContain('SHAPE_NOT_RECKONED')
    }
  })
})

test('the corners of a square are reached over the diagonal: a quarter turn changes nothing, and a trough as long as wide is one', () => {
  const tensions = (patch: Patch): readonly number[] => check({ 'pot.shape': 'square', 'pot.strandsAt': 'corners', ...patch }).solved.slings?.watered.each ?? []
  for (const tension of tensions({})) expect(tension).toBeCloseTo(tensions({})[0] ?? NaN, 9)
  for (const at of ['corners', 'sides'] as const) {
    const [square, trough] = [check({ 'pot.shape': 'square', 'pot.strandsAt': at }), check({ 'pot.shape': 'trough', 'pot.length': ORDINARY['pot.rim'], 'pot.strandsAt': at })]
    expect(trough.solved.slings?.watered.each?.[0]).toBeCloseTo(square.solved.slings?.watered.each?.[0] ?? NaN, 9)
    expect(worstOfLink(trough, 'seat').capacity?.value).toBeCloseTo(worstOfLink(square, 'seat').capacity?.value ?? NaN, 9)
  }
})

test('legs with unequal ways are told which are to be shorter, and by how much', () => {
  const sides = check({ 'pot.shape': 'trough', 'pot.rim': '16 cm', 'pot.base': '16 cm', 'pot.length': '36 cm', 'pot.strandsAt': 'sides', 'make.totalLength': '140 cm' })
  const told = worstOfLink(sides, 'leg').findings.find((f) => f.code === 'STRANDS_UNEQUAL')
  expect(told).toMatchObject({ legs: [2, 4] })
  // 18 cm under the base and out to its ends, 8 cm to its sides; the free parts differ besides.
  const [end, side] = sides.solved.geometry.legs
  const free = Math.hypot(0.18, (end?.path.top ?? NaN) - ORDINARY_HEIGHT) - Math.hypot(0.08, (side?.path.top ?? NaN) - ORDINARY_HEIGHT)
  expect(told?.code === 'STRANDS_UNEQUAL' && told.shorter).toBeCloseTo(0.1 + free, 9)
  expect(codesOf(check({ 'pot.shape': 'square', 'pot.strandsAt': 'sides' }), 'leg')).not.toContain('STRANDS_UNEQUAL')
})

test('strands between the middle and the corner of a side slip along it: three legs on a square', () => {
  const three = check({ 'pot.shape': 'square', 'make.legs': '3', 'cradle.kind': 'open' })
  expect(worstOfLink(three, 'seat').findings.find((f) => f.code === 'STRANDS_SLIP_ALONG')).toMatchObject({ legs: [2, 3], atCorners: false, held: false })
})

test('a pot tips most easily over the long side of a trough', () => {
  const seatOf = (patch: Patch): number => worstOfLink(check({ 'pot.shape': 'trough', 'pot.strandsAt': 'corners', 'cradle.kind': 'open', 'make.totalLength': '140 cm', ...patch }), 'seat').capacity?.value ?? NaN
  expect(seatOf({ 'pot.length': '40 cm' })).toBeLessThan(seatOf({ 'pot.length': '22 cm' }))
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

  test('in which the pot tips fails the legs, but of its seat not enough is known', () => {
    const top: Patch = { 'plant.height': '3 m', 'plant.mass': '40 kg' }
    const { 'make.totalLength': totalLength } = cover
    const bare = worstOfLink(check({ ...top, 'make.totalLength': totalLength ?? '' }), 'seat')
    expect(bare.verdict).toBe('fails')
    expect(worstOfLink(check({ ...cover, ...top }), 'seat').verdict).toBe('not enough known')
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
