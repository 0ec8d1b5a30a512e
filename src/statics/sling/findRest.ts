import { evaluate } from './energy'
import { balanceGoal, minimise, type Descent } from './minimise'
import type { Point } from './point'
import { copyPose, type Pose } from './pose'
import type { Scene } from './scene'

/** Share of the longest step with which a fall is looked at again. */
const CAREFUL = 0.1
/** Stretch of the legs under the weight that a softened restart begins with, as a share of their length, and its growth of stiffness. */
const SOFT_STRETCH = 0.005
const STIFFENING = 4
const MOST_STAGES = 40

/** Whether the pot's axis lies level or points down. */
export const hasFallen = ({ R }: Pose): boolean => R[8]! <= 0

/**
 * Looks for a rest from a starting pose. A pot that falls over is let down again in short steps, for a
 * long one may have carried it over a rest that was there. A search that ends without a rest is made
 * again with softened legs.
 */
export function findRest(scene: Scene, start: Pose, here: Point): Descent {
  const direct = descend(scene, start, here, 1)
  if (!direct.converged) return add(direct, findRestSoftened(scene, start, here))
  if (!hasFallen(here.pose)) return direct
  const careful = add(direct, descend(scene, start, here, CAREFUL))
  return careful.converged ? careful : add(careful, descend(scene, start, here, 1))
}

function descend(scene: Scene, start: Pose, here: Point, stride: number): Descent {
  copyPose(start, here.pose)
  evaluate(scene, here)
  return minimise(scene, here, balanceGoal(scene), stride)
}

/** From the start with legs soft enough to stretch visibly, then stiffer and stiffer from where it came to rest, up to the true ones. */
function findRestSoftened(scene: Scene, start: Pose, here: Point): Descent {
  const truly = scene.k
  let limit = scene.weight / (scene.legs * SOFT_STRETCH * scene.size)
  let sum: Descent = { converged: false, iterations: 0, bent: false }
  copyPose(start, here.pose)
  for (let stage = 1; ; stage++) {
    const soft = truly.map((k) => Math.min(k, limit))
    const last = stage === MOST_STAGES || soft.every((k, i) => k === truly[i])
    scene.k = last ? truly : soft
    evaluate(scene, here)
    sum = add(sum, minimise(scene, here, balanceGoal(scene), 1))
    if (last) return sum
    limit *= STIFFENING
  }
}

/** Two descents one after the other; the second one decides. */
const add = (first: Descent, second: Descent): Descent => ({
  converged: second.converged,
  iterations: first.iterations + second.iterations,
  bent: first.bent || second.bent,
})
