import { symmetricEigenvalues } from '../linear/symmetricEigenvalues'
import type { Point } from './point'
import type { Scene } from './scene'
import { onTangent } from './tangent'

/** An eigenvalue is zero below this share of the largest, or of weight over ell if that is less, but never within rounding. */
const ZERO_SHARE = 1e-8
const ZERO_WEIGHT_SHARE = 1e-6
const ROUNDING_SHARE = 1e-14
/** How far the turn about the vertical may be from an exact zero mode, as a share of the largest eigenvalue. */
const SYMMETRY_SHARE = 1e-8

export interface Stability {
  readonly eigenvalues: readonly number[]
  readonly eigMinNonzero: number
  readonly negative: number
  readonly zeroIsSymmetry: boolean
  readonly stable: boolean
}

/**
 * Judges the balance at a point by the eigenvalues of its Hessian; with loaded wall contacts, given by
 * the slopes of their gaps, on the motions that keep them in touch. Stable: none negative, and none
 * zero but the free turn about the vertical of a pot that hangs from one point.
 */
export function stabilityOf(scene: Scene, point: Point, touching: readonly Float64Array[]): Stability {
  const { size, matrix } = onTangent(point.hessian, touching)
  const eigenvalues = symmetricEigenvalues(size, matrix)
  const largest = Math.max(Math.abs(eigenvalues[0] ?? 0), Math.abs(eigenvalues.at(-1) ?? 0))
  const zero = Math.max(ROUNDING_SHARE * largest, Math.min(ZERO_SHARE * largest, (ZERO_WEIGHT_SHARE * scene.weight) / scene.ell))
  const negative = eigenvalues.filter((value) => value < -zero).length
  const zeros = eigenvalues.filter((value) => Math.abs(value) <= zero).length
  const eigMinNonzero = eigenvalues.find((value) => Math.abs(value) > zero) ?? 0
  const zeroIsSymmetry = zeros === 1 && turnsFreely(scene, point, SYMMETRY_SHARE * largest)
  return { eigenvalues, eigMinNonzero, negative, zeroIsSymmetry, stable: negative === 0 && (zeros === 0 || zeroIsSymmetry) }
}

/** Whether all legs hang from one vertical line and turning about it meets no stiffness. */
function turnsFreely({ legs, A, ell, size }: Scene, { hessian: H, pose: { p } }: Point, least: number): boolean {
  for (let i = 1; i < legs; i++) {
    if (Math.abs(A[3 * i]! - A[0]!) > 1e-9 * size || Math.abs(A[3 * i + 1]! - A[1]!) > 1e-9 * size) return false
  }
  // The turn about the vertical through A moves the centre of gravity by e_z x (p - A).
  const motion = [A[1]! - p[1]!, p[0]! - A[0]!, 0, 0, 0, ell]
  const length = Math.hypot(...motion)
  for (let a = 0; a < 6; a++) {
    let force = 0
    for (let b = 0; b < 6; b++) force += H[6 * a + b]! * motion[b]!
    if (Math.abs(force) > least * length) return false
  }
  return true
}
