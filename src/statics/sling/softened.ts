import type { Scene } from './scene'

/** Stretch of the legs under the weight that a softened restart begins with, as a share of their length, and its growth of stiffness. */
const SOFT_STRETCH = 0.005
const STIFFENING = 4
const MOST_STAGES = 40

/**
 * Calls `slide` with legs soft enough to stretch visibly, then with stiffer and stiffer ones, each time
 * from where the last one ended, and leaves the true ones in place, with which the caller goes on.
 */
export function softened(scene: Scene, slide: () => void): void {
  const truly = scene.k
  let limit = scene.weight / (scene.legs * SOFT_STRETCH * scene.size)
  for (let stage = 1; stage < MOST_STAGES && truly.some((k) => k > limit); stage++) {
    scene.k = truly.map((k) => Math.min(k, limit))
    slide()
    limit *= STIFFENING
  }
  scene.k = truly
}
