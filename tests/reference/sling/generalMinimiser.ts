import nlopt from 'nlopt-js'
import type { Contact, SlingInput, Vec3 } from '../../../src/statics/sling/result'

// The sling by another route: NLopt (a general library of nonlinear optimisation) looks for the least
// energy itself, by sequential quadratic programming with the wall as inequalities. Nothing is shared
// with the core but the model: the pose is a quaternion of any length, not a turn from step to step,
// there is no Hessian, and the start is where the first leg comes taut.
await nlopt.ready

type Four = readonly [number, number, number, number]
type Add = (u: Vec3, v: Vec3, factor: number) => Vec3
const dot = (u: Vec3, v: Vec3): number => u[0] * v[0] + u[1] * v[1] + u[2] * v[2]
const cross = (u: Vec3, v: Vec3): Vec3 => [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]]
const plus: Add = (u, v, factor) => [u[0] + factor * v[0], u[1] + factor * v[1], u[2] + factor * v[2]]
const AXIS: Vec3 = [0, 0, 1]

/** (w^2 - u.u) v + 2 (u.v) u + 2 w u x v, over w^2 + u.u. */
function turn([w, x, y, z]: Four, v: Vec3): Vec3 {
  const u: Vec3 = [x, y, z]
  const square = w * w + dot(u, u)
  const sum = plus(plus(plus([0, 0, 0], v, w * w - dot(u, u)), u, 2 * dot(u, v)), cross(u, v), 2 * w)
  return plus([0, 0, 0], sum, 1 / square)
}

/** Slope of n . turn(q, v) with respect to q. */
function slopeOfTurn(q: Four, n: Vec3, v: Vec3): number[] {
  const [w, x, y, z] = q
  const u: Vec3 = [x, y, z]
  const square = w * w + dot(u, u)
  const whole = dot(n, turn(q, v))
  const side = cross(v, n)
  const raw = [2 * w * dot(n, v) + 2 * dot(n, cross(u, v)), ...u.map((ui, i) => -2 * ui * dot(n, v) + 2 * v[i]! * dot(u, n) + 2 * dot(u, v) * n[i]! + 2 * w * side[i]!)]
  return raw.map((value, i) => (value - 2 * q[i]! * whole) / square)
}

const placeOf = (x: readonly number[]): Vec3 => [x[0]!, x[1]!, x[2]!]
const quaternionOf = (x: readonly number[]): Four => [x[3]!, x[4]!, x[5]!, x[6]!]

/** Vector of leg i from its upper end, and its arm in the pot's frame. */
function legAt({ A, B, cg }: SlingInput, i: number, x: readonly number[]): { readonly d: Vec3; readonly arm: Vec3; readonly l: number } {
  const arm = plus(B[i]!, cg, -1)
  const d = plus(plus(placeOf(x), turn(quaternionOf(x), arm), 1), A[i]!, -1)
  return { d, arm, l: Math.hypot(...d) }
}

const tension = ({ L0, EA }: SlingInput, i: number, l: number): number => EA[i]! * Math.max(0, l / L0[i]! - 1)

function energy(input: SlingInput, x: readonly number[], gradient: number[] | null): number {
  const weight = input.mass * input.gravity
  const slope = [0, 0, weight, 0, 0, 0, 0]
  let sum = weight * x[2]!
  input.A.forEach((_, i) => {
    const { d, arm, l } = legAt(input, i, x)
    const T = tension(input, i, l)
    if (T === 0) return
    sum += (T * T * input.L0[i]!) / (2 * input.EA[i]!)
    const n = plus([0, 0, 0], d, 1 / l)
    n.forEach((value, j) => (slope[j]! += T * value))
    slopeOfTurn(quaternionOf(x), n, arm).forEach((value, j) => (slope[3 + j]! += T * value))
  })
  if (gradient !== null) slope.forEach((value, j) => (gradient[j] = value))
  return sum
}

/** How far a contact stands in the wall n.x = d, n of unit length. */
function depth({ cg }: SlingInput, n: Vec3, d: number, contact: Contact, x: readonly number[], gradient: number[] | null): number {
  const q = quaternionOf(x)
  const [centre, r] = contact.type === 'circle' ? [[0, 0, contact.z] as const, contact.r] : [contact.at, 0]
  const arm = plus(centre, cg, -1)
  const w = dot(n, turn(q, AXIS))
  const sine = Math.sqrt(1 - w * w)
  if (gradient !== null) {
    const ofAxis = slopeOfTurn(q, n, AXIS)
    n.forEach((value, j) => (gradient[j] = value))
    slopeOfTurn(q, n, arm).forEach((value, j) => (gradient[3 + j] = value - ((r * w) / sine) * ofAxis[j]!))
  }
  return dot(n, plus(placeOf(x), turn(q, arm), 1)) + r * sine - d
}

export interface GeneralRest {
  readonly T: readonly number[]
  readonly cg: Vec3
  readonly tiltRadians: number
}

/** Rest of the hanger by the general minimiser; null if it failed, which it tells by its result or by a thrown text. */
export function generalRest(input: SlingInput): GeneralRest | null {
  const { A, B, L0, cg, wall } = input
  const mean = (points: readonly Vec3[], j: 0 | 1): number => points.reduce((sum, point) => sum + point[j], 0) / points.length
  const opt = new nlopt.Optimize(nlopt.Algorithm.LD_SLSQP, 7)
  opt.setMinObjective((x, gradient) => energy(input, x, gradient), 1e-14)
  if (wall !== null) {
    const length = Math.hypot(...wall.n)
    const n = plus([0, 0, 0], wall.n, 1 / length)
    for (const contact of wall.contacts) opt.addInequalityConstraint((x, gradient) => depth(input, n, wall.d / length, contact, x, gradient), 1e-13)
  }
  opt.setMaxeval(2000)
  const top = Math.max(...A.map((a, i) => a[2] - B[i]![2] - L0[i]!)) + cg[2]
  const found = attempt(() => opt.optimize([mean(A, 0) - mean(B, 0) + cg[0], mean(A, 1) - mean(B, 1) + cg[1], top, 1, 0, 0, 0]))
  nlopt.GC.flush()
  if (found?.success !== true) return null
  const axis = turn(quaternionOf(found.x), AXIS)
  return {
    T: A.map((_, i) => tension(input, i, legAt(input, i, found.x).l)),
    cg: placeOf(found.x),
    tiltRadians: Math.atan2(Math.hypot(axis[0], axis[1]), axis[2]),
  }
}

/** What the library finds, or null where it throws the text that stands for a C++ exception, as it does for failure by rounding. */
function attempt<T>(find: () => T): T | null {
  try {
    return find()
  } catch (thrown) {
    if (typeof thrown === 'string') return null
    throw thrown
  }
}

/** Potential energy of a rest given by its leg tensions and the height of its centre of gravity, J. */
export const energyOf = ({ L0, EA, mass, gravity }: SlingInput, { T, cg }: { readonly T: readonly number[]; readonly cg: Vec3 }): number =>
  T.reduce<number>((sum, t, i) => sum + (t * t * L0[i]!) / (2 * EA[i]!), mass * gravity * cg[2])
