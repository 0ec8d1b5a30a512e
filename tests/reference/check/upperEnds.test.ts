import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { solve } from '../../../src/check/solve'
import { slingInput } from '../../../src/check/slingBattery'
import type { Balance, SlingInput, Vec3 } from '../../../src/statics/sling/result'
import { STANDARD_GRAVITY } from '../../../src/quantity/si'
import { oneOf, seededRandom, wholeBetween } from '../../unit/quantity/seededRandom'
import { hangerOf, ORDINARY } from '../../unit/hanger/hangerOf'

const solvedOf = (patch: Patch) => solve(hangerOf({ ...ORDINARY, 'make.tolerance': '0 mm', 'seat.offset': '0 mm', ...patch }))
function drawnOf(patch: Patch) {
  const solved = solvedOf(patch)
  const drawn = solved.slings?.watered.drawn
  if (drawn === undefined || !('T' in drawn)) throw new Error('no rest')
  return { solved, drawn, weight: solved.loads.watered.weight, centre: solved.potted.watered.centre }
}

describe('legs from a level ring (statics of symmetric slings, closed forms)', () => {
  const [inside, wire] = [0.13, 0.006]
  const { solved, drawn, weight, centre } = drawnOf({ 'make.legs': '5', 'ring.lies': 'level', 'ring.inside': '13 cm', 'ring.wire': '6 mm' })
  const [{ leave, top }, ring] = [solved.geometry.path.ok ? solved.geometry.path : { leave: { r: NaN, z: NaN }, top: NaN }, (inside + wire) / 2]
  const height = top - (drawn.cg[2] - centre + leave.z)
  const ell = solved.plan?.ell ?? NaN

  test('bear T = W l / (m h) each, l and h loaded', () => {
    const length = Math.hypot(leave.r - ring, height)
    for (const tension of drawn.T) expect(tension / ((weight * length) / (5 * height))).toBeCloseTo(1, 9)
  })

  test('resist a turn of the pot with W r0 a / h, which a single hook does not', () => {
    const twist = (weight * ring * leave.r) / height / ell ** 2
    expect(Math.min(...drawn.eigenvalues.map((value) => Math.abs(value / twist - 1)))).toBeLessThan(1e-9)
    expect(drawn.status).toBe('OK')
    expect(drawnOf({ 'make.legs': '5' }).drawn.status).toBe('OK_NEUTRAL_TWIST')
  })
})

describe('four legs in the middle of the sides of a trough', () => {
  const { solved, drawn, weight } = drawnOf({ 'pot.shape': 'trough', 'pot.rim': '15 cm', 'pot.base': '12 cm', 'pot.length': '34 cm', 'pot.strandsAt': 'sides', 'make.totalLength': '135 cm' })
  const [end, side] = solved.geometry.legs.map((leg) => leg.path)

  test('bear the weight by their height: equilibrium', () => {
    if (!end || !side) throw new Error('no legs')
    const [a = NaN, b = NaN] = drawn.T
    expect(2 * a * Math.cos(end.angle) + 2 * b * Math.cos(side.angle)).toBeCloseTo(weight, 1)
  })

  test('share as bars of unequal length and slope that yield alike: T = EA cos b d / l (Hooke; textbook on statically indeterminate bars)', () => {
    if (!end || !side) throw new Error('no legs')
    const [a = NaN, b = NaN] = drawn.T
    const byHand = (Math.cos(end.angle) / end.free) / (Math.cos(side.angle) / side.free)
    expect(a / b / byHand).toBeCloseTo(1, 2)
  })
})

/** The six equations of a rest, from the tensions alone: what is left over of force and moment, over the weight. */
function leftOver({ A, B, cg, mass, ell }: SlingInput, { T, R, cg: at }: Balance): number {
  const weight = mass * STANDARD_GRAVITY
  const force = [0, 0, -weight]
  const moment = [0, 0, 0]
  B.forEach((b, i) => {
    const arm = R.map((row) => row[0] * (b[0] - cg[0]) + row[1] * (b[1] - cg[1]) + row[2] * (b[2] - cg[2])) as unknown as Vec3
    const to = (A[i] as Vec3).map((x, k) => x - (at[k] as number) - (arm[k] as number)) as unknown as Vec3
    const pull = to.map((x) => ((T[i] ?? NaN) * x) / Math.hypot(...to)) as unknown as Vec3
    pull.forEach((x, k) => { force[k] = (force[k] as number) + x })
    const turns = [arm[1] * pull[2] - arm[2] * pull[1], arm[2] * pull[0] - arm[0] * pull[2], arm[0] * pull[1] - arm[1] * pull[0]]
    turns.forEach((x, k) => { moment[k] = (moment[k] as number) + x })
  })
  return Math.max(Math.hypot(...force), Math.hypot(...moment) / ell) / weight
}

test('a hundred random hangers of every upper end and pot rest in equilibrium, forces and moments left over below 1e-9, or say that they do not rest', () => {
  let rests = 0
  for (let seed = 1; seed <= 100; seed++) {
    const random = seededRandom(seed)
    const between = (from: number, to: number): number => wholeBetween(random, from, to)
    const rim = between(90, 260)
    const solved = solvedOf({
      'pot.shape': oneOf(random, ['taperedRound', 'square', 'trough', 'bowl']), 'pot.rim': `${rim} mm`, 'pot.base': `${Math.round(rim * 0.75)} mm`, 'pot.length': `${between(rim, 2 * rim)} mm`,
      'pot.strandsAt': oneOf(random, ['corners', 'sides']), 'make.legs': String(oneOf(random, [3, 4, 4, 4, 5, 6, 7, 12])), 'make.totalLength': `${between(120, 220)} cm`,
      'make.top': oneOf(random, ['stick', 'stick', 'ring', 'bunched']), 'stick.length': '60 cm', 'stick.bunch': `${between(0, 300)} mm`, 'ring.lies': oneOf(random, ['level', 'upright']), 'ring.inside': `${between(30, 280)} mm`,
    })
    const [sling, plan] = [solved.slings?.watered, solved.plan]
    if (!sling || plan === null || !('T' in sling.drawn)) {
      expect(sling === undefined || sling.trouble !== 'none', `seed ${seed}`).toBe(true)
      continue
    }
    rests++
    const centre = solved.potted.watered.centre
    const input = slingInput({ plan, stiffness: 1, bedded: 1, mass: solved.loads.watered.weight / STANDARD_GRAVITY, centre, offset: 0, tolerance: 0 }, 1, [0, 0, centre], [])
    expect(leftOver(input, sling.drawn), `seed ${seed}`).toBeLessThan(1e-9)
    expect(sling.trouble, `seed ${seed}`).not.toBe('not converged')
  }
  expect(rests).toBeGreaterThan(90)
})
