import type { Pose } from './pose'
import type { Scene } from './scene'

const HALVINGS = 12
const WIDENINGS = 60

/**
 * Sets the pot upright with its attachments centred under the hanging points, as deep as the legs
 * together carry its weight (the vertical pull grows with depth, so halving finds it). The solver must
 * not start with all legs slack: there the energy has no curvature at all.
 */
export function hangUpright(scene: Scene, pose: Pose): void {
  const { legs, A, arm, L0, weight, stiffness } = scene
  let x = 0
  let y = 0
  for (let i = 0; i < legs; i++) {
    x += A[3 * i]! - arm[3 * i]!
    y += A[3 * i + 1]! - arm[3 * i + 1]!
  }
  x /= legs
  y /= legs
  let top = -Infinity
  for (let i = 0; i < legs; i++) {
    const runX = x + arm[3 * i]! - A[3 * i]!
    const runY = y + arm[3 * i + 1]! - A[3 * i + 1]!
    const run2 = runX * runX + runY * runY
    const drop = Math.sqrt(Math.max(0, L0[i]! * L0[i]! - run2))
    top = Math.max(top, A[3 * i + 2]! - arm[3 * i + 2]! - drop)
  }
  // The first leg comes taut at `top`; a few stretches below it the legs carry the pot.
  let reach = (2 * weight) / stiffness + 1e-3 * scene.size
  let low = top - reach
  for (let i = 0; i < WIDENINGS && verticalPull(scene, x, y, low) < weight; i++) {
    reach *= 2
    low -= reach
  }
  // There no leg pulls upwards yet.
  let high = top
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (verticalPull(scene, x, y, middle) < weight) high = middle
    else low = middle
  }
  pose.p[0] = x
  pose.p[1] = y
  pose.p[2] = low
  pose.R.fill(0)
  pose.R[0] = pose.R[4] = pose.R[8] = 1
}

function verticalPull({ legs, A, arm, L0, k }: Scene, x: number, y: number, z: number): number {
  let pull = 0
  for (let i = 0; i < legs; i++) {
    const dx = A[3 * i]! - x - arm[3 * i]!
    const dy = A[3 * i + 1]! - y - arm[3 * i + 1]!
    const dz = A[3 * i + 2]! - z - arm[3 * i + 2]!
    const l = Math.sqrt(dx * dx + dy * dy + dz * dz)
    if (l > L0[i]!) pull += (k[i]! * (l - L0[i]!) * dz) / l
  }
  return pull
}
