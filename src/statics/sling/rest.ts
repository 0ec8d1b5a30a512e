import { evaluate } from './energy'
import { balanceGoal, minimise, type Descent } from './minimise'
import type { Point } from './point'
import { copyPose, type Pose } from './pose'
import type { Scene } from './scene'

/** Stretch of the legs under the weight that a softened restart begins with, as a share of their length, and its growth of stiffness. */
const SOFT_STRETCH = 0.005
const STIFFENING = 4
const MOST_STAGES = 40

/**
 * Looks for a rest from a starting pose. If the search ends without one it is made again with legs soft
 * enough to stretch visibly, then stiffer and stiffer from where it came to rest, up to the true ones.
 */
export function findRest(scene: Scene, start: Pose, here: Point): Descent {
  const goal = balanceGoal(scene)
  copyPose(start, here.pose)
  evaluate(scene, here)
  const direct = minimise(scene, here, goal)
  if (direct.converged) return direct
  const truly = scene.k
  let limit = scene.weight / (scene.legs * SOFT_STRETCH * scene.size)
  let { iterations, bent } = direct
  copyPose(start, here.pose)
  for (let stage = 1; ; stage++) {
    const soft = truly.map((k) => Math.min(k, limit))
    const last = stage === MOST_STAGES || soft.every((k, i) => k === truly[i])
    scene.k = last ? truly : soft
    evaluate(scene, here)
    const descent = minimise(scene, here, goal)
    iterations += descent.iterations
    bent ||= descent.bent
    if (last) return { converged: descent.converged, iterations, bent }
    limit *= STIFFENING
  }
}
