import { copyPose, newPose, type Pose } from './pose'

/**
 * Energy of the hanging pot at a pose, with its first and second derivatives with respect to a small
 * motion (u, ell theta): displacement of the centre of gravity and turn in world axes times ell, so
 * that all six unknowns are metres and all stiffnesses N/m. Scratch of the solver.
 */
export interface Point {
  readonly pose: Pose
  energy: number
  /** Force and moment over ell that are out of balance, N, with the sign of a gradient. */
  readonly gradient: Float64Array
  /** Row by row, 6 x 6, whole. */
  readonly hessian: Float64Array
}

export const newPoint = (): Point => ({ pose: newPose(), energy: 0, gradient: new Float64Array(6), hessian: new Float64Array(36) })

export function copyPoint(from: Point, to: Point): void {
  copyPose(from.pose, to.pose)
  to.energy = from.energy
  to.gradient.set(from.gradient)
  to.hessian.set(from.hessian)
}

/** Adds factor J J' to the upper triangle of H. */
export function addOuter(H: Float64Array, v: Float64Array, factor: number): void {
  for (let a = 0; a < 6; a++) {
    const f = factor * v[a]!
    for (let b = a; b < 6; b++) H[6 * a + b]! += f * v[b]!
  }
}
