import type { Point } from './point'

/** A force of fixed size and direction on a point of the pot: N, world frame; the point as seen from the centre of gravity, pot frame, m. */
export interface Push {
  readonly force: readonly [number, number, number]
  readonly arm: readonly [number, number, number]
}

/**
 * Adds a steady force to a point's energy, gradient and upper Hessian: V = -F.(p + R arm), with b = R arm,
 * gradient -[F ; b x F], Hessian -rot((F b' + b F')/2 - (F.b) I) (textbook statics, as for a leg's own turn in energy.ts).
 */
export function addPush({ force: [fx, fy, fz], arm: [x, y, z] }: Push, ell: number, point: Point): void {
  const { gradient: g, hessian: H, pose: { p, R } } = point
  const bx = R[0]! * x + R[1]! * y + R[2]! * z
  const by = R[3]! * x + R[4]! * y + R[5]! * z
  const bz = R[6]! * x + R[7]! * y + R[8]! * z
  point.energy -= fx * (p[0]! + bx) + fy * (p[1]! + by) + fz * (p[2]! + bz)
  g[0]! -= fx
  g[1]! -= fy
  g[2]! -= fz
  g[3]! -= (by * fz - bz * fy) / ell
  g[4]! -= (bz * fx - bx * fz) / ell
  g[5]! -= (bx * fy - by * fx) / ell
  const q = 1 / (ell * ell)
  const fb = fx * bx + fy * by + fz * bz
  H[21]! -= q * (fx * bx - fb)
  H[28]! -= q * (fy * by - fb)
  H[35]! -= q * (fz * bz - fb)
  H[22]! -= 0.5 * q * (fx * by + fy * bx)
  H[23]! -= 0.5 * q * (fx * bz + fz * bx)
  H[29]! -= 0.5 * q * (fy * bz + fz * by)
}
