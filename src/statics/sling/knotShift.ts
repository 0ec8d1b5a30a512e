import { newtonStep } from '../linear/newtonStep'
import type { KnotShift } from './knot'
import type { Pose } from './pose'
import type { Scene } from './scene'

const MOST_STEPS = 40
const MOST_HALVINGS = 12
/** Rounding: differences of energy below this share are none, and a slope below that share of the legs' EA. */
const ROUNDING = 1e-12
const SETTLED = 1e-15

const slope = new Float64Array(2)
const step = new Float64Array(2)
const from = new Float64Array(2)
let free = new Float64Array(16)

/**
 * Moves the knot to where the strands' energy is least while the pot keeps its pose. The way from an edge to the knot
 * is convex in the knot's place and energy rises with it, so there is one such place and Newton's steps, halved where
 * they lead up, end there. Leaves the lengths gained in `longer`.
 */
export function settleKnot(scene: Scene, knot: KnotShift, pose: Pose): void {
  const { at } = knot
  freeStretches(scene, pose)
  if (!(Number.isFinite(at[0]!) && Number.isFinite(at[1]!))) at.fill(0)
  let energy = energyAt(scene, knot)
  const settled = SETTLED * scene.pull
  for (let i = 0; i < MOST_STEPS; i++) {
    if (!(Math.hypot(slope[0]!, slope[1]!) > settled) || !newtonStep(2, knot.own, 0, slope, step)) return
    from.set(at)
    const before = energy
    const size = Math.hypot(slope[0]!, slope[1]!)
    let better = false
    for (let halving = 0, share = 1; halving < MOST_HALVINGS && !better; halving++, share /= 2) {
      at[0] = from[0]! + share * step[0]!
      at[1] = from[1]! + share * step[1]!
      energy = energyAt(scene, knot)
      // Within rounding of the energy the slope is the better judge.
      better = energy < before * (1 - ROUNDING) || Math.hypot(slope[0]!, slope[1]!) < size / 2
    }
    if (better) continue
    at.set(from)
    energyAt(scene, knot)
    return
  }
}

/** Stretch of every leg with the knot as drawn, from the pose; negative where it is slack. */
function freeStretches({ legs, A, arm, L0 }: Scene, { p, R }: Pose): void {
  if (free.length < legs) free = new Float64Array(legs)
  for (let i = 0; i < legs; i++) {
    const x = arm[3 * i]!, y = arm[3 * i + 1]!, z = arm[3 * i + 2]!
    const dx = p[0]! + R[0]! * x + R[1]! * y + R[2]! * z - A[3 * i]!
    const dy = p[1]! + R[3]! * x + R[4]! * y + R[5]! * z - A[3 * i + 1]!
    const dz = p[2]! + R[6]! * x + R[7]! * y + R[8]! * z - A[3 * i + 2]!
    free[i] = Math.sqrt(dx * dx + dy * dy + dz * dz) - L0[i]!
  }
}

/** Energy of the strands at the knot's place; fills in slope, `longer`, `towards` and `own`. */
function energyAt({ legs, k }: Scene, { edge, drawn, rounding, at, longer, towards, own }: KnotShift): number {
  let energy = 0
  slope.fill(0)
  own.fill(0)
  for (let i = 0; i < legs; i++) {
    const dx = at[0]! - edge[3 * i]!, dy = at[1]! - edge[3 * i + 1]!, dz = edge[3 * i + 2]!
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz + rounding * rounding)
    longer[i] = length - drawn[i]!
    const mx = dx / length, my = dy / length
    towards[2 * i] = mx
    towards[2 * i + 1] = my
    const stretch = free[i]! + longer[i]!
    if (stretch <= 0) continue
    const T = k[i]! * stretch
    energy += 0.5 * T * stretch
    slope[0]! += T * mx
    slope[1]! += T * my
    const t = T / length, rest = k[i]! - t
    own[0]! += t + rest * mx * mx
    own[1]! += rest * mx * my
    own[3]! += t + rest * my * my
  }
  own[2] = own[1]!
  return energy
}

/** Notes how leg i ties the knot's shift to the pot's motion J. */
export function addCross({ cross, towards }: KnotShift, i: number, J: Float64Array, k: number): void {
  const x = k * towards[2 * i]!, y = k * towards[2 * i + 1]!
  for (let a = 0; a < 6; a++) {
    cross[a]! += x * J[a]!
    cross[6 + a]! += y * J[a]!
  }
}

/**
 * Takes from the upper triangle of H what the knot gives way: the stiffness left is that of the pot with the knot
 * always where it settles (Schur's complement), and has as many negative directions as that of pot and knot together
 * (Haynsworth's inertia).
 */
export function giveWay({ own, cross }: KnotShift, H: Float64Array): void {
  const [xx, xy, , yy] = own as unknown as readonly [number, number, number, number]
  const det = xx * yy - xy * xy
  if (!(det > 0)) return
  for (let a = 0; a < 6; a++) {
    const u = (yy * cross[a]! - xy * cross[6 + a]!) / det, v = (xx * cross[6 + a]! - xy * cross[a]!) / det
    for (let b = a; b < 6; b++) H[6 * a + b]! -= u * cross[b]! + v * cross[6 + b]!
  }
}
