import { symmetricEigenvalues } from '../linear/symmetricEigenvalues'
import { onTangent } from './onTangent'
import type { Point } from './point'
import type { Scene } from './scene'

/** An eigenvalue is zero below this share of the largest, or of weight over ell if that is less, but never within rounding. */
const ZERO_SHARE = 1e-8
const ZERO_WEIGHT_SHARE = 1e-6
const ROUNDING_SHARE = 1e-14

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
 * zero but the free turn of a pot that hangs from one point or from one line.
 */
export function stabilityOf(scene: Scene, point: Point, touching: readonly Float64Array[]): Stability {
  const { size, matrix } = onTangent(point.hessian, touching)
  const eigenvalues = symmetricEigenvalues(size, matrix)
  const largest = Math.max(Math.abs(eigenvalues[0] ?? 0), Math.abs(eigenvalues.at(-1) ?? 0))
  const zero = Math.max(ROUNDING_SHARE * largest, Math.min(ZERO_SHARE * largest, (ZERO_WEIGHT_SHARE * scene.weight) / scene.ell))
  const negative = eigenvalues.filter((value) => value < -zero).length
  const zeros = eigenvalues.filter((value) => Math.abs(value) <= zero).length
  const eigMinNonzero = eigenvalues.find((value) => Math.abs(value) > zero) ?? 0
  const zeroIsSymmetry = zeros === 1 && turnsFreely(scene, point, touching, zero)
  return { eigenvalues, eigMinNonzero, negative, zeroIsSymmetry, stable: negative === 0 && (zeros === 0 || zeroIsSymmetry) }
}

/**
 * Whether a turn about a line through all hanging points, that keeps the wall's contacts where they
 * are, meets no stiffness. The legs do not notice such a turn however far it goes.
 */
function turnsFreely({ legs, A, ell }: Scene, { hessian, pose: { p } }: Point, touching: readonly Float64Array[], zero: number): boolean {
  const held = [...touching]
  for (let i = 0; i < legs; i++) {
    if (i > 0 && A[3 * i] === A[0] && A[3 * i + 1] === A[1] && A[3 * i + 2] === A[2]) continue
    const x = (A[3 * i]! - p[0]!) / ell
    const y = (A[3 * i + 1]! - p[1]!) / ell
    const z = (A[3 * i + 2]! - p[2]!) / ell
    // How the pot's point at A moves along x, y and z: u + theta x (A - p).
    held.push(new Float64Array([1, 0, 0, 0, z, -y]), new Float64Array([0, 1, 0, -z, 0, x]), new Float64Array([0, 0, 1, y, -x, 0]))
  }
  const { size, matrix } = onTangent(hessian, held)
  return symmetricEigenvalues(size, matrix).some((value) => Math.abs(value) <= zero)
}
