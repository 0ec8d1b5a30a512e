import { findRest } from './findRest'
import { clearOf, leanOn } from './leanOn'
import type { Descent } from './minimise'
import type { Point } from './point'
import type { Pose } from './pose'
import type { Scene, SceneWall } from './scene'

/** How a pot that was let go came to rest. `free`: whether it found a rest without the wall, which says what failed. */
export interface LetDown extends Descent {
  readonly free: boolean
  /** Force of the wall on each contact, N, and the slopes of the gaps of the loaded ones. */
  readonly forces: readonly number[]
  readonly slopes: readonly Float64Array[]
}

/**
 * Lets the pot go at a pose, first as if there were no wall, then, if it ends in the wall or nowhere,
 * against the wall. `here` holds the place reached.
 */
export function letDown(scene: Scene, wall: SceneWall | null, from: Pose, here: Point): LetDown {
  scene.wall = null
  const free = findRest(scene, from, here)
  if (wall === null || (free.converged && clearOf(scene, wall, here.pose))) return { ...free, free: free.converged, forces: wall?.contacts.map(() => 0) ?? [], slopes: [] }
  const lean = leanOn(scene, wall, [here.pose, from], here)
  return { converged: lean.converged, iterations: free.iterations + lean.iterations, bent: free.bent, free: free.converged, forces: lean.forces, slopes: lean.slopes }
}
