import { describe, expect, test } from 'vitest'
import { netGirth, outwardMove, pointAlong, strandGap } from '../../../../src/statics/cradleFit'
import { CENTRE_MARGIN, TILT_BY_HAND } from '../../../../src/catalogue/seat'
import { HOLDS_LIMIT } from '../../../../src/catalogue/reserves'
import { metres, radians } from '../../../../src/quantity/si'
import { DEMOS, checkHanger, parseDocument, resolveDocument, type CheckResult, type Patch } from '#core'
import { linkIn, codesOf } from '../linkOf'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'

const check = (patch: Patch) => checkOf({ ...ORDINARY, ...patch })
const TALL = { 'pot.rim': '110 mm', 'pot.base': '100 mm', 'pot.height': '400 mm', 'cradle.first': '70 mm', 'make.totalLength': '150 cm' } as const
const checkDemos = (): readonly (readonly [string, CheckResult])[] => DEMOS.map(({ file, text }) => {
  const parsed = parseDocument(text)
  const resolved = parsed.ok ? resolveDocument(parsed.document) : null
  if (resolved?.ok !== true) throw new Error(file)
  return [file, checkHanger(resolved.hanger)]
})
const used = (patch: Patch): number => linkIn(check(patch), 'cradle', 'watered').utilisation ?? NaN

describe('whether a pot fits its cradle', () => {
  test.each(checkDemos())('%s: holds, or is not worse than the rest', (_, demo) => {
    for (const link of demo.links.filter((l) => l.link === 'cradle')) expect(['holds', 'just holds'], link.id).toContain(link.verdict)
  })

  test('an ordinary pot holds', () => {
    expect(check({}).links.filter((l) => l.link === 'cradle').map((l) => l.verdict)).not.toContain('fails')
    for (const code of ['CRADLE_LOW', 'CRADLE_GAPS', 'BASE_ON_KNOT', 'NET_TOO_NARROW']) expect(codesOf(check({}), 'cradle')).not.toContain(code)
  })

  test('a tall narrow pot walks out over low knots, and higher ones hold it better', () => {
    expect(codesOf(check(TALL), 'cradle')).toContain('CRADLE_LOW')
    expect(used({ ...TALL, 'cradle.first': '200 mm' })).toBeLessThan(used(TALL))
  })

  test('a base as narrow as the gathered strands rides on the knot', () => {
    const tiny = check({ 'pot.rim': '50 mm', 'pot.base': '20 mm', 'pot.height': '45 mm', 'cradle.first': '25 mm', 'weighed.mass': '0.2 kg' })
    expect(codesOf(tiny, 'cradle')).toContain('BASE_ON_KNOT')
  })

  test('a net whose rows are too near one another does not open round the pot, and fails', () => {
    const narrow = check({ 'cradle.first': '140 mm', 'cradle.second': '160 mm' })
    expect(codesOf(narrow, 'cradle')).toContain('NET_TOO_NARROW')
    expect(narrow.links.filter((l) => l.link === 'cradle').map((l) => l.verdict)).toContain('fails')
  })

  test('a pot that is a little too wide for its net does not go in, one a little slimmer does', () => {
    const through = (second: string) => check({ 'cradle.first': '140 mm', 'cradle.second': second }).links.find((l) => l.part === 'netOpens')
    const widest = through('200 mm')?.demand?.value ?? NaN
    const justOpen = 0.14 + widest / 8
    expect(through(`${(justOpen - 0.003) * 1000} mm`)?.verdict).toBe('fails')
    expect(through(`${(justOpen + 0.003) * 1000} mm`)?.verdict).toBe('holds')
  })

  test('a second row below the first is not one', () => {
    expect(codesOf(check({ 'cradle.second': '30 mm' }), 'cradle')).toContain('CRADLE_SECOND_LOW')
  })

  test('a wall planter is judged by its own links', () => {
    expect(check({ 'make.arrangement': 'panel' }).links.some((l) => l.link === 'cradle')).toBe(false)
  })
})

/** The ordinary pot's side: from the base edge 70 mm from the axis out to its rim at 105 mm, 185 mm up; a point so many m along a strand. */
const onItsSide = (along: number): { readonly r: number; readonly z: number } => {
  const share = (along - 0.07) / Math.hypot(0.035, 0.185)
  return { r: 0.07 + 0.035 * share, z: 0.185 * share }
}

describe('the knots a pot is tilted over', () => {
  const over = (patch: Patch) => check(patch).links.find((l) => l.part === 'overKnots' && l.case === 'watered')
  const move = (patch: Patch, z: number): number => Math.max(0, check(patch).solved.potted.watered.centre + CENTRE_MARGIN.value - z) * Math.tan(TILT_BY_HAND.value) + 0.004

  test.each([
    ['the base edge, of an open cradle', { 'cradle.kind': 'open' }, { r: 0.07, z: 0 }],
    ['the base edge, of first knots under the base', { 'cradle.kind': 'net', 'cradle.first': '60 mm' }, { r: 0.07, z: 0 }],
    ['the first row', { 'cradle.kind': 'net', 'cradle.first': '115 mm' }, onItsSide(0.115)],
    ['the second row, where there is one', { 'cradle.kind': 'net', 'cradle.first': '100 mm', 'cradle.second': '180 mm' }, onItsSide(0.18)],
  ] as const)('are %s', (_, cradle, { r, z }) => {
    const patch = { ...cradle, 'seat.offset': '4 mm' }
    expect(over(patch)?.capacity?.value).toBeCloseTo(r, 9)
    expect(over(patch)?.demand?.value).toBeCloseTo(move(patch, z), 9)
  })

  test('leave no gap as wide as the base: 2 a sin(180 / m) beside 140 mm, told of strands that no knots join', () => {
    const gaps = (patch: Patch) => (over(patch)?.findings ?? []).flatMap((f) => (f.code === 'CRADLE_GAPS' ? [f] : []))
    const four = gaps({ 'cradle.kind': 'open' })
    expect(four).toHaveLength(1)
    expect(four[0]?.gap).toBeCloseTo(0.21 * Math.SQRT1_2, 9)
    expect(four[0]?.base).toBeCloseTo(0.14, 9)
    expect(0.21 * Math.sin(Math.PI / 5)).toBeLessThan(0.14)
    expect(gaps({ 'cradle.kind': 'open', 'make.legs': '5' })).toEqual([])
    expect(gaps({ 'cradle.kind': 'net' })).toEqual([])
  })

  test('that are too low are told how far along they would hold: there they do, a step lower they do not', () => {
    const tall: Patch = { ...TALL, 'cradle.kind': 'net' }
    const low = (patch: Patch) => (over(patch)?.findings ?? []).flatMap((f) => (f.code === 'CRADLE_LOW' ? [f.needed] : []))
    const needed = low({ ...tall, 'cradle.first': '110 mm' })[0] ?? NaN
    expect(low({ ...tall, 'cradle.first': `${needed * 1000} mm` })).toEqual([])
    expect(low({ ...tall, 'cradle.first': `${needed * 1000 - 5} mm` })[0]).toBeCloseTo(needed, 9)
    const limit = over({ ...tall, 'cradle.first': `${needed * 1000} mm` })
    expect(limit?.utilisation ?? NaN).toBeLessThanOrEqual(HOLDS_LIMIT.table.value)
    // A plant so high that no knot on the pot's side would do.
    expect(low({ ...tall, 'plant.height': '150 cm', 'plant.mass': '8 kg', 'make.totalLength': '250 cm' })).toEqual([null])
    expect(low({ ...TALL, 'cradle.kind': 'open' })).toEqual([])
  })

  test('are, of a trough, the nearest to the axis and the lowest that any two legs have between them', () => {
    const trough = check({ 'pot.shape': 'trough', 'pot.rim': '140 mm', 'pot.base': '110 mm', 'pot.length': '420 mm', 'make.totalLength': '180 cm', 'cradle.kind': 'net', 'cradle.first': '225 mm' })
    const points = trough.solved.geometry.between.map(({ path }) => pointAlong(path, metres(0.225)))
    const [r, z] = [Math.min(...points.map((p) => p.r)), Math.min(...points.map((p) => p.z))]
    expect(Math.max(...points.map((p) => p.r))).toBeGreaterThan(r + 0.01)
    expect(Math.max(...points.map((p) => p.z))).toBeGreaterThan(z + 0.01)
    const knots = trough.links.find((l) => l.part === 'overKnots' && l.case === 'watered')
    expect(knots?.capacity?.value).toBeCloseTo(r, 12)
    expect(knots?.terms.find((t) => t.symbol === 'z_k')?.value).toBeCloseTo(z, 12)
  })

  test('are named: the base edge where there are none', () => {
    expect(over({ 'cradle.kind': 'open' })?.capacity?.source).toBe('base edge')
    expect(over({ 'cradle.kind': 'net', 'cradle.first': '115 mm' })?.capacity?.source).toContain('knots')
  })

  test('and were only assumed matter where the pot needs them: not where it would stay on its base, nor under a second row', () => {
    const told = (patch: Patch) => (over(patch)?.findings ?? []).map((f) => f.code)
    const assumed = (patch: Patch) => checkOf(without({ ...ORDINARY, 'cradle.kind': 'net', ...patch }, 'cradle.first')).links.find((l) => l.part === 'overKnots' && l.case === 'watered')
    const squat: Patch = { 'make.legs': '5', 'plant.height': '4 cm', 'seat.offset': '0 mm' }
    expect(over({ ...squat, 'cradle.kind': 'open' })?.verdict).toBe('holds')
    expect(assumed(squat)?.verdict).toBe('holds')
    // Four legs leave gaps that only the knots close.
    expect(assumed({})?.findings.map((f) => f.code)).toContain('ASSUMED_PART_HOLDS')
    expect(assumed({ 'cradle.second': '240 mm' })?.findings.map((f) => f.code)).not.toContain('ASSUMED_PART_HOLDS')
    expect(told({ 'cradle.kind': 'net' })).not.toContain('ASSUMED_PART_HOLDS')
  })
})

describe('what a pot stands on', () => {
  const onKnot = (patch: Patch) => check(patch).links.find((l) => l.part === 'onKnot')

  test('is its base, as wide as told; the knot is told once the bundle is wider than a pot holds on', () => {
    expect(onKnot({})?.capacity?.value).toBeCloseTo(0.14, 9)
    const bundle = onKnot({})?.demand?.value ?? NaN
    const told = (base: number) => (onKnot({ 'pot.base': `${base * 1000} mm`, 'cradle.kind': 'open' })?.findings ?? []).map((f) => f.code).includes('BASE_ON_KNOT')
    expect(told((bundle / HOLDS_LIMIT.table.value) * 1.01)).toBe(false)
    expect(told((bundle / HOLDS_LIMIT.table.value) * 0.99)).toBe(true)
  })
})

test('the width of the gathered strands is by the cord’s own diameter only where it was measured', () => {
  const basisOf = (patch: Patch) => checkOf(patch).links.find((l) => l.part === 'onKnot')?.terms.find((t) => t.symbol === 'd')?.basis
  expect(basisOf(ORDINARY)).toBe('your own')
  expect(basisOf(without(ORDINARY, 'cord.diameter'))).toBe('common practice')
})

describe('a second row of knots', () => {
  const net = (second: string, more: Patch = {}) => check({ 'cradle.kind': 'net', 'cradle.first': '140 mm', 'cradle.second': second, ...more }).links.filter((l) => l.part === 'netOpens')

  test('at the very height of the first is not one', () => {
    expect(net('140 mm')[0]).toMatchObject({ verdict: 'not enough known', findings: [{ code: 'CRADLE_SECOND_LOW', first: 0.14, second: 0.14 }] })
    expect(net('141 mm').flatMap((l) => l.findings).map((f) => f.code)).not.toContain('CRADLE_SECOND_LOW')
  })

  test('is told from where on the net would open: first row and a knot for each side of each leg', () => {
    const told = net('160 mm').flatMap((l) => l.findings.flatMap((f) => (f.code === 'NET_TOO_NARROW' ? [{ l, f }] : [])))
    expect(told).toHaveLength(1)
    expect(told[0]?.f.second).toBeCloseTo(0.14 + (told[0]?.l.demand?.value ?? NaN) / 8, 9)
  })

  test('must go round the widest part up to it: the side where it lies, the rim where it lies above that', () => {
    const round = (second: string) => net(second)[0]?.demand?.value ?? NaN
    expect(round('200 mm')).toBeCloseTo(2 * Math.PI * onItsSide(0.2).r, 9)
    expect(round('250 mm')).toBeCloseTo(2 * Math.PI * onItsSide(0.25).r, 9)
    expect(round('270 mm')).toBeCloseTo(2 * Math.PI * 0.105, 9)
  })

  test('goes round the pot as high as it lies on any leg: of three round a trough the one with the shortest way', () => {
    const patch = { 'make.legs': '3', 'pot.shape': 'trough', 'pot.rim': '140 mm', 'pot.base': '90 mm', 'pot.length': '300 mm', 'pot.height': '200 mm', 'make.totalLength': '180 cm', 'cradle.first': '90 mm' } as const
    const { legs } = check({ 'cradle.kind': 'net', 'cradle.second': '180 mm', ...patch }).solved.geometry
    const heights = legs.map(({ path }) => pointAlong(path, metres(0.18)).z)
    expect(Math.max(...heights)).toBeGreaterThan(Math.min(...heights) + 0.005)
    // From the corner of its base up to that of its rim, straight.
    const [base, rim] = [Math.hypot(0.045, 0.125), Math.hypot(0.07, 0.15)]
    expect(net('180 mm', patch)[0]?.demand?.value).toBeCloseTo(2 * Math.PI * (base + ((rim - base) * Math.max(...heights)) / 0.2), 9)
  })

  test('is not asked of a cradle without knots', () => {
    expect(net('240 mm', { 'cradle.kind': 'open' })).toEqual([])
  })
})

describe('by plane geometry', () => {
  test('gaps are chords, a net opens to twice its knots times their distance', () => {
    expect(strandGap(4, metres(0.1))).toBeCloseTo(0.1 * Math.SQRT2, 12)
    expect(netGirth(5, metres(0.07))).toBeCloseTo(0.7, 12)
  })
  test('a centre of gravity below the knots moves out only by its offset', () => {
    expect(outwardMove(metres(0.05), metres(0.09), radians(0.3), metres(0.004))).toBe(0.004)
    expect(outwardMove(metres(0.19), metres(0.09), radians(Math.PI / 4), metres(0.004))).toBeCloseTo(0.104, 12)
  })
  test('a strand is followed under the base, up the side, and beyond', () => {
    const path = { touched: [{ r: 0.1, z: 0.2 }, { r: 0.1, z: 0 }], knotToBaseEdge: metres(0.1), knotToLeave: metres(0.3), angle: radians(0) }
    expect(pointAlong(path, metres(0.06))).toEqual({ r: 0.06, z: 0 })
    expect(pointAlong(path, metres(0.2)).z).toBeCloseTo(0.1, 12)
    expect(pointAlong(path, metres(0.35)).z).toBeCloseTo(0.25, 12)
  })
})
