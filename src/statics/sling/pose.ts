/** Place of the centre of gravity (world frame, m) and rotation of the pot (row by row). Scratch of the solver. */
export interface Pose {
  readonly p: Float64Array
  readonly R: Float64Array
}

export const newPose = (): Pose => ({ p: new Float64Array(3), R: new Float64Array([1, 0, 0, 0, 1, 0, 0, 0, 1]) })

export function copyPose(from: Pose, to: Pose): void {
  to.p.set(from.p)
  to.R.set(from.R)
}

/**
 * to = from, moved by the first three numbers of the step and turned, in world axes, by its last three
 * over ell: R <- exp([theta]x) R, by Rodrigues' formula. Turning from where it stands at every step
 * needs no parameters of rotation and so meets no singular one.
 */
export function movePose(from: Pose, step: Float64Array, ell: number, to: Pose): void {
  for (let i = 0; i < 3; i++) to.p[i] = from.p[i]! + step[i]!
  const x = step[3]! / ell
  const y = step[4]! / ell
  const z = step[5]! / ell
  const square = x * x + y * y + z * z
  const angle = Math.sqrt(square)
  // sin(t)/t and (1 - cos t)/t^2, at their limits for turns too small to matter.
  const s = angle < 1e-8 ? 1 : Math.sin(angle) / angle
  const c = angle < 1e-8 ? 0.5 : (2 * Math.sin(angle / 2) ** 2) / square
  const xx = 1 - c * (y * y + z * z)
  const yy = 1 - c * (x * x + z * z)
  const zz = 1 - c * (x * x + y * y)
  const xy = c * x * y
  const xz = c * x * z
  const yz = c * y * z
  for (let j = 0; j < 3; j++) {
    const a = from.R[j]!
    const b = from.R[3 + j]!
    const d = from.R[6 + j]!
    to.R[j] = xx * a + (xy - s * z) * b + (xz + s * y) * d
    to.R[3 + j] = (xy + s * z) * a + yy * b + (yz - s * x) * d
    to.R[6 + j] = (xz - s * y) * a + (yz + s * x) * b + zz * d
  }
}

/** Cosine of the angle by which the pot is turned, about whatever axis, from upright and unturned: (trace R - 1) / 2. */
export const turnCosine = ({ R }: Pose): number => (R[0]! + R[4]! + R[8]! - 1) / 2
