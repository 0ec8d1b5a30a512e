import { evaluate } from './energy'
import { balanceGoal, minimise, type Descent } from './minimise'
import type { Point } from './point'
import { copyPose, type Pose } from './pose'
import type { Scene } from './scene'
import { softened } from './softened'

/** Share of the longest step with which a fall is looked at again. */
const CAREFUL = 0.1

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

function findRestSoftened(scene: Scene, start: Pose, here: Point): Descent {
  let sum: Descent = { converged: false, iterations: 0, bent: false }
  copyPose(start, here.pose)
  const slide = (): void => {
    evaluate(scene, here)
    sum = add(sum, minimise(scene, here, balanceGoal(scene), 1))
  }
  softened(scene, slide)
  slide()
  return sum
}

/** Two descents one after the other; the second one decides. */
const add = (first: Descent, second: Descent): Descent => ({
  converged: second.converged,
  iterations: first.iterations + second.iterations,
  bent: first.bent || second.bent,
})
