import { newtonStep } from '../linear/newtonStep'
import { evaluate } from './energy'
import { copyPoint, newPoint, type Point } from './point'
import { movePose } from './pose'
import type { Scene } from './scene'

const MOST_STEPS = 250
/** Smallest shift, as a share of the legs' stiffness: enough to bridge an exact zero mode, too small to slow the others. */
export const LEAST_SHIFT = 1e-12
/** From this share on the shift grows slowly; below it is only a search for the right order of size. */
const COARSE_SHIFT = 1e-7
/** Longest step: share of the legs' mean length, and turn in rad. */
const LONGEST_MOVE = 0.2
const LONGEST_TURN = 0.5
/** Where a step promises less than this share of the energies at play, differences of energy are rounding. */
const ROUNDING_SHARE = 1e-10
const ULPS = 1e-14
/** Imbalance, as a share of the weight, that counts as none; rounding may leave more: so many ulps of the legs' stiffnesses, up to this share. */
const BALANCED = 1e-11
const ROUNDING = 200
const ACCEPTABLE = 1e-6

export interface Descent {
  readonly converged: boolean
  readonly iterations: number
  /** Whether the energy curves downward, or not at all, where the descent began. */
  readonly bent: boolean
}

const trial = newPoint()
const step = new Float64Array(6)

export function norm(v: Float64Array): number {
  let square = 0
  for (let a = 0; a < 6; a++) square += v[a]! * v[a]!
  return Math.sqrt(square)
}

/** Imbalance, N, that counts as balance. */
export const balanceGoal = ({ weight }: Scene): number => BALANCED * weight

/** Imbalance, N, below which the rounding of the legs' lengths may leave nothing to improve, as long as it is small beside the weight. */
export const roundingFloor = ({ pull, weight }: Scene): number => Math.min(ROUNDING * Number.EPSILON * pull, ACCEPTABLE * weight)

/**
 * Slides the pot from where `here` stands to the nearest minimum of energy by damped Newton steps
 * (Levenberg and Marquardt's shift, steered by the ratio of won to promised energy). `here` must be
 * evaluated and holds the place reached. Started exactly on a saddle it stays there; the eigenvalues
 * tell (stability.ts).
 *
 * @param goal imbalance, N, at which the search ends
 * @param stride share of the longest step to be used, 1 or less
 */
export function minimise(scene: Scene, here: Point, goal: number, stride: number): Descent {
  const { stiffness, ell, weight } = scene
  const floor = roundingFloor(scene)
  const least = LEAST_SHIFT * stiffness
  let shift = least
  let bent = false
  let size = norm(here.gradient)
  for (let iterations = 0; iterations < MOST_STEPS; iterations++) {
    if (!(size > goal)) return { converged: size <= goal, iterations, bent }
    while (!newtonStep(6, here.hessian, shift, here.gradient, step)) {
      if (!Number.isFinite(size) || !(shift < Infinity)) return { converged: false, iterations, bent }
      shift = Math.max(least, shift * (100 * shift < COARSE_SHIFT * stiffness ? 100 : 4))
      bent ||= iterations === 0 && shift > 1e-7 * stiffness
    }
    const length = capStep(scene, stride)
    const fall = firstOrderFall(here)
    const promised = fall - 0.5 * curvature(here)
    movePose(here.pose, step, ell, trial.pose)
    evaluate(scene, trial)
    const trialSize = norm(trial.gradient)
    const scale = Math.abs(here.energy) + weight * scene.size
    const atFloor = promised < ROUNDING_SHARE * scale
    // Near a saddle the imbalance must grow before it can vanish further down.
    const better = promised > fall ? trial.energy <= here.energy + ULPS * scale : trialSize < size
    const ratio = atFloor ? (better ? 1 : -1) : (here.energy - trial.energy) / promised
    if (ratio > 1e-4) {
      copyPoint(trial, here)
      size = trialSize
      if (ratio > 0.75) shift = Math.max(least, shift / (ratio > 0.9 ? 100 : 10))
      else if (ratio < 0.25) shift *= 4
    } else {
      if (atFloor && size <= floor) return { converged: true, iterations, bent }
      // A step of half this length needs about the stiffness met along it as shift.
      shift = Math.max(4 * shift, size / length)
    }
  }
  return { converged: size <= Math.max(goal, floor), iterations: MOST_STEPS, bent }
}

/** Shortens the step to the longest allowed; its length. */
function capStep({ size, ell }: Scene, stride: number): number {
  const move = length3(step[0]!, step[1]!, step[2]!)
  const turn = length3(step[3]!, step[4]!, step[5]!)
  const share = Math.min(1, (stride * LONGEST_MOVE * size) / move, (stride * LONGEST_TURN * ell) / turn)
  if (share < 1) for (let i = 0; i < 6; i++) step[i]! *= share
  return share * Math.sqrt(move * move + turn * turn)
}

const length3 = (x: number, y: number, z: number): number => Math.sqrt(x * x + y * y + z * z)

/** Energy that the step would win by the slope alone. */
function firstOrderFall({ gradient: g }: Point): number {
  let fall = 0
  for (let a = 0; a < 6; a++) fall -= g[a]! * step[a]!
  return fall
}

/** Second derivative of the energy along the step. */
function curvature({ hessian: H }: Point): number {
  let sum = 0
  for (let a = 0; a < 6; a++) for (let b = 0; b < 6; b++) sum += step[a]! * H[6 * a + b]! * step[b]!
  return sum
}
