import { newtonStep } from '../linear/newtonStep'
import { evaluate } from './energy'
import { balanceGoal, norm, roundingFloor } from './minimise'
import { copyPoint, newPoint, type Point } from './point'
import { copyPose, movePose, turnCosine, type Pose } from './pose'
import type { Scene } from './scene'

const MOST_STEPS = 60
/** A balance turned further than this from the start is not the one looked for: cosine of 5 degrees. */
const NEAR = Math.cos(Math.PI / 36)
/** A turn longer than this in one step, rad, leaves the balance that is looked for. */
const LONGEST_TURN = 0.2

const trial = newPoint()
const step = new Float64Array(6)
const square = new Float64Array(36)
const slope = new Float64Array(6)

/**
 * Looks for a balance near a starting pose, whether it would last or not: Levenberg and Marquardt's
 * steps on the square of the imbalance, (H'H + shift I) dx = -H' g. Used to show the upright position
 * that a pot would leave. True if `here` holds a balance, turned less than 5 degrees from the start.
 */
export function findBalance(scene: Scene, start: Pose, here: Point): boolean {
  const { stiffness, ell } = scene
  const goal = balanceGoal(scene)
  copyPose(start, here.pose)
  evaluate(scene, here)
  const least = (1e-9 * stiffness) ** 2
  let shift = least
  let size = norm(here.gradient)
  for (let i = 0; i < MOST_STEPS && size > goal; i++) {
    const { hessian: H, gradient: g } = here
    squareOf(H, g)
    if (!newtonStep(6, square, shift, slope, step)) {
      if (!(shift < Infinity)) return false
      shift = Math.max(4 * shift, least)
      continue
    }
    const turn = Math.sqrt(step[3]! ** 2 + step[4]! ** 2 + step[5]! ** 2) / ell
    if (turn > LONGEST_TURN) for (let a = 0; a < 6; a++) step[a]! *= LONGEST_TURN / turn
    movePose(here.pose, step, ell, trial.pose)
    evaluate(scene, trial)
    const trialSize = norm(trial.gradient)
    if (trialSize < size) {
      copyPoint(trial, here)
      size = trialSize
      shift = Math.max(least, shift / 10)
      if (turnCosine(here.pose) < NEAR) return false
    } else {
      if (size <= roundingFloor(scene)) return true
      shift *= 10
    }
  }
  return size <= Math.max(goal, roundingFloor(scene))
}

/** H'H into `square` and H'g into `slope`, H being symmetric. */
function squareOf(H: Float64Array, g: Float64Array): void {
  for (let a = 0; a < 6; a++) {
    slope[a] = 0
    for (let b = 0; b < 6; b++) {
      slope[a]! += H[6 * a + b]! * g[b]!
      let sum = 0
      for (let c = 0; c < 6; c++) sum += H[6 * a + c]! * H[6 * c + b]!
      square[6 * a + b] = sum
    }
  }
}
