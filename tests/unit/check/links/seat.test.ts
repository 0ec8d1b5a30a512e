import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { metres, newtons, radians } from '../../../../src/quantity/si'
import { criticalHeight } from '../../../reference/sling/criticalHeight'
import { symmetricSling } from '../../../reference/sling/symmetricSling'
import { TIPS_ABOVE } from '../../../../src/catalogue/seat'
import { seatOf } from '../../../../src/check/links/seat/seatOf'
import { lasts, solveSlidingSeat } from '../../../../src/statics/seat/slidingSeat'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'
import { without } from '../../hanger/without'
import { codesOf, linkIn, worstOfLink } from '../linkOf'

const check = (patch: Patch) => checkOf({ ...ORDINARY, 'cradle.kind': 'net', ...patch })
/** Rim radius 105, base radius 70, side 188 mm: the first knots hold the side from 70 to 258 mm up the strand. */
const LOW: Patch = { 'plant.height': '4 cm', 'plant.mass': '100 g' }
const TALL: Patch = { 'plant.height': '80 cm', 'plant.mass': '3 kg' }

describe('a cradle knotted between the legs', () => {
  test('on the pot’s side locks the strands: a tall plant holds', () => {
    const locked = check(TALL)
    expect(worstOfLink(locked, 'seat')).toMatchObject({ part: 'locked', verdict: 'holds' })
    expect(codesOf(locked, 'seat')).toEqual(['SEAT_LOCKED'])
  })

  test.each([['69 mm', 'CRADLE_UNDER_BASE'], ['259 mm', 'CRADLE_ABOVE_RIM']])('with its first knots at %s does not: %s', (first, code) => {
    const free = check({ ...TALL, 'cradle.first': first })
    expect(worstOfLink(free, 'seat').part).not.toBe('locked')
    expect(codesOf(free, 'seat')).toContain(code)
    expect(worstOfLink(free, 'seat').verdict).not.toBe('holds')
  })

  test('just inside those ends does', () => {
    for (const first of ['71 mm', '257 mm']) expect(worstOfLink(check({ ...TALL, 'cradle.first': first }), 'seat').part).toBe('locked')
  })

  test('holds up to a limit by hand: legs half as stiff, y = h a2 / (2 eps l2 + a2) above the rim', () => {
    const { geometry: { path }, slings } = check(TALL).solved
    if (!path.ok) throw new Error('no path')
    // Two filler cords of 192 N over 17 % elongation in each of four legs.
    const strain = (slings?.dry.sum ?? NaN) / 4 / ((2 * 192) / 0.17 / 2)
    const [a, l, h] = [0.105, path.free, path.top - 0.185]
    expect(linkIn(check(TALL), 'seat', 'dry').capacity?.value).toBeCloseTo(0.185 + (h * a * a) / (2 * strain * l * l + a * a), 12)
  })

  test('that was only assumed just holds at best', () => {
    const assumed = checkOf(without({ ...ORDINARY, ...TALL }, 'cradle.first'))
    expect(worstOfLink(assumed, 'seat').verdict).toBe('just holds')
    expect(codesOf(assumed, 'seat')).toContain('ASSUMED_PART_HOLDS')
  })
})

describe('open strands', () => {
  const open = (patch: Patch) => check({ 'cradle.kind': 'open', ...patch })

  test('hold a low pot without any knots: the sliding limit by hand', () => {
    const seat = linkIn(open(LOW), 'seat', 'watered')
    const { path } = open(LOW).solved.geometry
    if (!path.ok) throw new Error('no path')
    const [a, b, l, h] = [0.105, 0.07, path.free, path.top - 0.185]
    const q = (a * a) / (2 * l * b) - (a * a) / (2 * l * l)
    expect(seat.part).toBe('sliding')
    expect(seat.capacity?.value).toBeCloseTo(0.185 + (h * q) / (1 + q), 12)
    expect(seat.demand?.value).toBeCloseTo(open(LOW).solved.potted.watered.centre + 0.02, 12)
  })

  test('hold a tall one by friction, and only just', () => {
    const seat = worstOfLink(open({ ...TALL, 'seat.offset': '6 mm' }), 'seat')
    expect(seat).toMatchObject({ part: 'friction', verdict: 'just holds' })
    expect(codesOf(open(TALL), 'seat')).toContain('SEAT_ON_FRICTION')
  })

  test('lose a tall one that sits further off centre than friction holds', () => {
    // Stiff legs: the pot hangs with its weight plumb, tilted by e / D, and the pair in whose plane it tilts takes
    // (T1 - T3) / (T1 + T3) = 2 (e / a) (h / D), at most tanh(0.24 x turn): the turn a right angle and the legs' own
    // angle, D the depth of the centre of gravity under the hook, h that of the leave points. Legs that stretch let it tilt more.
    const { geometry: { path }, potted } = open(TALL).solved
    if (!path.ok) throw new Error('no path')
    const depth = (path.top - potted.watered.centre) / (path.top - path.leave.z)
    const held = (105 / 2) * depth * Math.tanh(0.24 * (Math.PI / 2 + path.angle))
    const stretched = 1000 * (linkIn(open(TALL), 'seat', 'watered').capacity?.value ?? NaN)
    expect(stretched).toBeLessThan(held)
    expect(stretched).toBeGreaterThan(0.5 * held)
    expect(worstOfLink(open({ ...TALL, 'seat.offset': `${0.5 * held} mm` }), 'seat').verdict).toBe('just holds')
    const lost = open({ ...TALL, 'seat.offset': `${1.02 * held} mm` })
    expect(worstOfLink(lost, 'seat').verdict).toBe('fails')
    expect(codesOf(lost, 'seat')).toContain('SEAT_SLIDES')
  })

  test('are never trusted to have the weight truer than 5 mm', () => {
    expect(worstOfLink(open({ ...TALL, 'seat.offset': '0 mm' }), 'seat').demand).toEqual({ value: 0.005, unit: 'm' })
    expect(worstOfLink(open({ ...TALL, 'seat.offset': '7 mm' }), 'seat').demand?.value).toBeCloseTo(0.007, 12)
  })

  test('hold less by friction in slick cord', () => {
    const heldIn = (fibre: string): number | undefined => worstOfLink(open({ ...TALL, 'cord.fibre': fibre }), 'seat').capacity?.value
    expect(heldIn('polyester')).toBeLessThan(heldIn('cotton') ?? NaN)
  })
})

test('a plant as high as the hook tips in any cradle, said or assumed', () => {
  const top: Patch = { 'plant.height': '3 m', 'plant.mass': '40 kg' }
  for (const patch of [{ ...ORDINARY, ...top }, { ...ORDINARY, ...top, 'cradle.kind': 'net' }]) {
    const tipped = checkOf(patch)
    expect(worstOfLink(tipped, 'seat').verdict).toBe('fails')
    expect(codesOf(tipped, 'seat')).toContain('SEAT_TOPPLES')
    expect(worstOfLink(tipped, 'leg').verdict).toBe('fails')
    expect(codesOf(tipped, 'leg')).toContain('SLING_UNSTABLE')
  }
})

test('the upright position is asked to last with legs half as stiff and the weight 20 mm higher', () => {
  // The plant grows until the margin is used up; the closed form of a symmetric sling says where.
  const grown = (millimetres: number) => check({ 'plant.mass': '4 kg', 'plant.height': `${millimetres} mm` }).solved
  let [low, high] = [200, 2900]
  while (high - low > 1) {
    const middle = Math.round((low + high) / 2)
    if (grown(middle).pinnedMargin === true) low = middle
    else high = middle
  }
  const { geometry: { path }, loads, potted } = grown(low)
  if (!path.ok) throw new Error('no path')
  const room = (['dry', 'watered'] as const).map((state) => {
    const stiffness = newtons((2 * 192) / 0.17 / 2)
    const { height, length } = symmetricSling({ legs: 4, radius: metres(0.105), ring: metres(0), unstretched: path.free, stiffness, weight: newtons(loads[state].weight) })
    return 0.185 - criticalHeight({ radius: metres(0.105), ring: metres(0), height, strain: length / path.free - 1 }) - (potted[state].centre + 0.02)
  })
  expect(Math.min(...room)).toBeGreaterThan(-0.0001)
  expect(Math.min(...room)).toBeLessThan(0.001)
})

test('legs that cannot reach round the pot have no seat to judge', () => {
  expect(check({ 'make.totalLength': '40 cm' }).links.map((l) => l.link)).not.toContain('seat')
})

describe('under a level ring', () => {
  /** Its legs told by themselves, so that the height of the hook above the ring changes nothing below it. */
  const held = (rise: string): number => linkIn(check({ 'make.top': 'ring', 'ring.lies': 'level', 'ring.inside': '100 mm', 'ring.wire': '8 mm', 'make.legLength': '70 cm', 'ring.rise': rise }), 'seat', 'watered').capacity?.value ?? NaN

  test('a pot on locked strands is held as from the hook, but from no higher than where its legs would meet', () => {
    expect(held('400 mm')).toBeGreaterThan(held('100 mm'))
    expect(held('2 m')).toBe(held('1 m'))
    const { geometry: { path, ringRadius }, slings } = check({ 'make.top': 'ring', 'ring.lies': 'level', 'ring.inside': '100 mm', 'ring.wire': '8 mm', 'make.legLength': '70 cm' }).solved
    if (!path.ok) throw new Error('no path')
    // Round and alike from the point where they meet: y = h a2 / (2 eps l2 + a2), all of it drawn out to that point.
    const longer = 0.105 / (0.105 - ringRadius)
    const strain = (slings?.watered.sum ?? NaN) / 4 / ((2 * 192) / 0.17 / 2)
    const [l, h] = [path.free * longer, (path.top - path.leave.z) * longer]
    const alike = 0.185 + (h * 0.105 ** 2) / (2 * strain * l * path.free + 0.105 ** 2)
    expect(Math.abs(held('2 m') - alike) / alike).toBeLessThan(0.02)
  })
})

describe('the pot on its strands as they run over it', () => {
  const spread = { 'make.top': 'stick', 'stick.bunch': '280 mm', 'stick.length': '500 mm', 'stick.span': '450 mm', 'cradle.kind': 'open', 'plant.height': '4 cm', 'plant.mass': '100 g' } as const

  test('is as stiff as each leg is: of another stiffness, in proportion', () => {
    const { solved } = check(spread)
    const plan = solved.plan as NonNullable<typeof solved.plan>
    const softer = { ...solved, plan: { ...plan, legs: plan.legs.map((leg, i) => ({ ...leg, stiffness: i === 1 ? 0.5 * leg.stiffness : leg.stiffness })) } }
    const [own, changed] = [seatOf(solved, 'watered')?.EA ?? [], seatOf(softer, 'watered')?.EA ?? []]
    expect(changed.map((EA, i) => EA / (own[i] ?? NaN))).toEqual([1, 0.5, 1, 1])
  })

  // With three legs it lasts less high than the closed form of strands from one point would have it.
  test.each([['60 mm', '3'], ['140 mm', '3'], ['280 mm', '3'], ['280 mm', '4']])('stands no higher than where it lasts, solved as it hangs from a stick: %s, %s legs', (bunch, legs) => {
    const patch = { ...spread, 'stick.bunch': bunch, 'make.legs': legs } as const
    const { solved } = check(patch)
    const seat = seatOf(solved, 'watered')
    if (seat === null) throw new Error('no seat')
    const limit = linkIn(check(patch), 'seat', 'watered').capacity?.value ?? NaN
    const stands = (height: number): boolean => lasts(seat, solveSlidingSeat({ ...seat, cg: [0, 0, height] }), radians(TIPS_ABOVE.value))
    expect(stands(limit - 1e-5)).toBe(true)
    if (legs === '3') expect(stands(limit + 1e-4)).toBe(false)
  })
})
