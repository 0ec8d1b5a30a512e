import { describe, expect, test } from 'vitest'
import type { PanelGeometry } from '../../../src/check/panel/panelGeometry'
import { slingInput, type BatteryInput } from '../../../src/check/slingBattery'
import { solveSling } from '../../../src/statics/sling/solveSling'
import type { SlingInput, SlingRest, Vec3 } from '../../../src/statics/sling/result'
import type { CheckResult, Patch } from '#core'
import { checkOf } from '../../unit/hanger/hangerOf'
import { PANEL } from '../../unit/hanger/panelPatch'
import { energyOf, generalRest } from '../sling/generalMinimiser'

const PLANTERS: readonly (readonly [string, Patch])[] = [
  ['as told', {}],
  ['a small deep pot on a nail near the wall', { 'pot.rim': '130 mm', 'pot.base': '100 mm', 'pot.height': '150 mm', 'panel.behindWidth': '45 mm', 'cradle.first': '85 mm', 'hook.projection': '18 mm', 'panel.width': '190 mm' }],
  ['a cylinder, wide panel, more strands behind', { 'pot.shape': 'cylinder', 'panel.width': '300 mm', 'panel.behind': '8', 'panel.front': '3', 'panel.cords': '7', 'cradle.first': '130 mm' }],
  ['a bowl, two hooks', { 'pot.shape': 'bowl', 'pot.base': '70 mm', 'pot.height': '120 mm', 'stick.held': 'twoHooks', 'cradle.first': '75 mm', 'panel.width': '280 mm' }],
  ['narrower above', { 'pot.rim': '140 mm', 'pot.base': '165 mm', 'panel.width': '260 mm', 'cradle.first': '120 mm' }],
]

const batteryOf = ({ solved }: CheckResult, offset: number): BatteryInput => {
  if (solved.plan === null) throw new Error('no plan')
  return { plan: solved.plan, stiffness: 40000, bedded: 120000, mass: 5, centre: solved.potted.watered.centre, offset, tolerance: 0 }
}
const restOf = (input: SlingInput): SlingRest => {
  const rest = solveSling(input)
  if (!('iterations' in rest) || !('wallN' in rest)) throw new Error(rest.status)
  return rest
}
const plus = (a: Vec3, b: Vec3, by: number): Vec3 => [a[0] + by * b[0], a[1] + by * b[1], a[2] + by * b[2]]
const cross = (a: Vec3, b: Vec3): Vec3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
const turned = ({ R }: SlingRest, v: Vec3): Vec3 => [0, 1, 2].map((k) => R[k as 0][0] * v[0] + R[k as 0][1] * v[1] + R[k as 0][2] * v[2]) as unknown as Vec3

/** Forces on the pot at a rest with where each acts, world frame: strands, wall, weight. */
function forces(input: SlingInput, rest: SlingRest): readonly (readonly [at: Vec3, force: Vec3])[] {
  const place = (p: Vec3): Vec3 => plus(rest.cg, turned(rest, plus(p, input.cg, -1)), 1)
  const strands = input.A.map((a, i): readonly [Vec3, Vec3] => {
    const b = place(input.B[i]!)
    const d = plus(a, b, -1)
    return [a, plus([0, 0, 0], d, rest.T[i]! / Math.hypot(...d))]
  })
  const axis = turned(rest, [0, 0, 1])
  const wall = (input.wall?.contacts ?? []).map((contact, i): readonly [Vec3, Vec3] => {
    if (contact.type !== 'circle') throw new Error(contact.type)
    // The point of the circle furthest towards the wall, y = -d.
    const towards = plus([0, -1, 0], axis, axis[1])
    const at = plus(place([0, 0, contact.z]), towards, contact.r / Math.hypot(...towards))
    return [at, [0, rest.wallN[i]!, 0]]
  })
  return [...strands, ...wall, [rest.cg, [0, 0, 0 - input.mass * input.gravity]]]
}

const panelOf = ({ solved: { geometry: { panel } } }: CheckResult): PanelGeometry => {
  if (!panel?.ok) throw new Error(panel?.finding.code ?? 'no panel')
  return panel
}

describe.each(PLANTERS)('wall planter: %s', (_, patch) => {
  const check = checkOf({ ...PANEL, ...patch })
  // Newton's laws for the whole: pot, strands, wall and weight, forces and moments about the panel's edge.
  test('strands, wall and weight balance to 1e-9', () => {
    const input = slingInput(batteryOf(check, 0), 40000, [0.004, 0.003, check.solved.potted.watered.centre], [0.003, 0, -0.002, 0.001])
    const rest = restOf(input)
    const all = forces(input, rest)
    const weight = input.mass * input.gravity
    const sum = all.reduce<Vec3>((total, [, f]) => plus(total, f, 1), [0, 0, 0])
    const about = input.A[0]!
    const moment = all.reduce<Vec3>((total, [at, f]) => plus(total, cross(plus(at, about, -1), f), 1), [0, 0, 0])
    expect(Math.hypot(...sum) / weight).toBeLessThan(1e-9)
    expect(Math.hypot(...moment) / weight).toBeLessThan(1e-9)
  })

})

// A cylinder touches with rim and base both: there the wall's parts follow from stiffness too.
describe.each(PLANTERS.filter(([, patch]) => patch['pot.shape'] !== 'cylinder'))('wall planter with one touch of the wall: %s', (_, patch) => {
  const check = checkOf({ ...PANEL, ...patch })
  const panel = panelOf(check)

  // Three equations of plane statics (moments, up and out; textbook) for strands in front, behind and one touch of the wall,
  // strands that do not stretch: no stiffness enters.
  test('stiff strands share by plane statics, and the pull on the fixing is W e / L', () => {
    const input = slingInput(batteryOf(check, 0), 4e9, [0, 0, check.solved.potted.watered.centre], [])
    const rest = restOf(input)
    const weight = input.mass * input.gravity
    const [a, b] = [input.A[0]!, input.B[0]!] as const
    const [c, d] = [input.A[2]!, input.B[2]!] as const
    // Moments about the panel's edge: weight by its lever, the wall by its depth below.
    const depth = panel.edgeHeight - panel.side.touches
    const wall = (weight * (0 - panel.edgeFromAxis)) / depth
    const front = { out: (a[1] - b[1]) / (a[2] - b[2]) }
    const back = { out: (c[1] - d[1]) / (c[2] - d[2]) }
    // up: F + B = W; out: F front.out + B back.out + N = 0
    const F = (-wall - weight * back.out) / (front.out - back.out)
    const lift = (i: number): number => (rest.T[i]! * (input.A[i]![2] - input.B[i]![2])) / Math.hypot(...plus(input.A[i]!, input.B[i]!, -1))
    expect((lift(0) + lift(1)) / weight).toBeCloseTo(F / weight, 4)
    expect(rest.wallN.reduce((x, y) => x + y, 0) / weight).toBeCloseTo(wall / weight, 4)
    const lean = check.links.find((l) => l.case === 'watered' && l.terms.some((t) => t.symbol === 'L_d'))?.terms ?? []
    const at = (symbol: string): number => lean.find((t) => t.symbol === symbol)?.value ?? NaN
    expect(wall / weight).toBeCloseTo((at('r_w') + at('d_c') - at('e')) / at('L_d'), 9)
  })

})

// NLopt's sequential quadratic programming, a general library that knows nothing of slings; see generalMinimiser.ts. It stops by energy, so forces agree to some 1e-6 of the weight. From
// where it starts it may run to a pot hung upside down through its own strands, or stop short in a higher rest: counted.
test('planters tied evenly and unevenly rest where a general minimiser finds them', () => {
  const tally = { same: 0, higher: 0, tipped: 0, noAnswer: 0, other: 0 }
  for (const [, patch] of PLANTERS) {
    const check = checkOf({ ...PANEL, ...patch })
    for (const longer of [[], [0.006, 0.006, 0, 0], [0, 0, -0.004, 0], [0.003, -0.003, 0.001, 0]]) {
      const input = slingInput(batteryOf(check, 0), 40000, [0.003, -0.002, check.solved.potted.watered.centre], longer)
      const [ours, theirs] = [restOf(input), generalRest(input)]
      if (theirs === null) {
        tally.noAnswer++
        continue
      }
      const apart = Math.max(...ours.T.map((T, i) => Math.abs(T - (theirs.T[i] ?? NaN)))) / (input.mass * input.gravity)
      if (apart < 1e-5) tally.same++
      else if (theirs.tiltRadians > 1) tally.tipped++
      else if (energyOf(input, theirs) > energyOf(input, ours)) tally.higher++
      else tally.other++
    }
  }
  expect(tally.other).toBe(0)
  expect(tally.same).toBeGreaterThanOrEqual(15)
})
