import { addOuter, type Point } from './point'
import type { Pose } from './pose'
import type { SceneContact, SceneWall } from './scene'

/** Below this square of the sine between axis and wall normal a circle lies flat on the wall and its edge has no direction. */
const FLAT = 1e-12

/** How far a contact stands in the wall, m, and how that changes with a small motion (u, ell theta). */
export interface Gap {
  s: number
  readonly slope: Float64Array
}

export const newGap = (): Gap => ({ s: 0, slope: new Float64Array(6) })

const gap = newGap()
const turnOfAxis = new Float64Array(6)

/**
 * Gap of a circle of radius r and centre p + b, axis a, to the wall n.x = d:
 * s = n.(p + b) + r sqrt(1 - (n.a)^2) - d, at most zero when free;
 * slope = [n ; b x n + f1 a x n], w = n.a, f1 = -r w / sqrt(1 - w^2). (Textbook statics.)
 */
export function measureGap(wall: SceneWall, contact: SceneContact, ell: number, { p, R }: Pose, to: Gap): void {
  const [nx, ny, nz] = wall.n
  const { x, y, z, r } = contact
  const bx = R[0]! * x + R[1]! * y + R[2]! * z
  const by = R[3]! * x + R[4]! * y + R[5]! * z
  const bz = R[6]! * x + R[7]! * y + R[8]! * z
  const w = nx * R[2]! + ny * R[5]! + nz * R[8]!
  const sine2 = 1 - w * w
  const f1 = sine2 > FLAT ? (-r * w) / Math.sqrt(sine2) : 0
  to.s = nx * (p[0]! + bx) + ny * (p[1]! + by) + nz * (p[2]! + bz) + r * Math.sqrt(Math.max(0, sine2)) - wall.d
  const ex = bx + f1 * R[2]!
  const ey = by + f1 * R[5]!
  const ez = bz + f1 * R[8]!
  to.slope[0] = nx
  to.slope[1] = ny
  to.slope[2] = nz
  to.slope[3] = (ey * nz - ez * ny) / ell
  to.slope[4] = (ez * nx - ex * nz) / ell
  to.slope[5] = (ex * ny - ey * nx) / ell
}

/**
 * Adds the wall to a point's energy, gradient and upper Hessian. With a penalty rho > 0: the augmented
 * Lagrangian, force N = max(0, N0 + rho s), energy (N^2 - N0^2) / (2 rho). Without: the Lagrangian
 * N0 s, of which the stiffness at a solution is taken.
 * Hess(s) = rot(sym(n e') - (n.e) I) + f2 (a x n)(a x n)', e = b + f1 a, f2 = -r / (1 - w^2)^1.5.
 */
export function addContacts(wall: SceneWall, ell: number, point: Point): void {
  const { contacts, force, penalty, n } = wall
  const { gradient: g, hessian: H } = point
  const { R } = point.pose
  for (let i = 0; i < contacts.length; i++) {
    const contact = contacts[i]!
    measureGap(wall, contact, ell, point.pose, gap)
    const given = force[i]!
    const N = Math.max(0, given + penalty * gap.s)
    point.energy += penalty > 0 ? (N * N - given * given) / (2 * penalty) : given * gap.s
    if (N === 0) continue
    for (let a = 0; a < 6; a++) g[a]! += N * gap.slope[a]!
    addOuter(H, gap.slope, penalty)
    addCurvature(H, n, R, contact, ell, N)
  }
}

function addCurvature(H: Float64Array, n: SceneWall['n'], R: Float64Array, { x, y, z, r }: SceneContact, ell: number, N: number): void {
  const [nx, ny, nz] = n
  const ax = R[2]!, ay = R[5]!, az = R[8]!
  const w = nx * ax + ny * ay + nz * az
  const sine2 = 1 - w * w
  const f1 = sine2 > FLAT ? (-r * w) / Math.sqrt(sine2) : 0
  const f2 = sine2 > FLAT ? -r / sine2 ** 1.5 : 0
  const ex = R[0]! * x + R[1]! * y + R[2]! * z + f1 * ax
  const ey = R[3]! * x + R[4]! * y + R[5]! * z + f1 * ay
  const ez = R[6]! * x + R[7]! * y + R[8]! * z + f1 * az
  const q = N / (ell * ell)
  const ne = nx * ex + ny * ey + nz * ez
  H[21]! += q * (nx * ex - ne)
  H[28]! += q * (ny * ey - ne)
  H[35]! += q * (nz * ez - ne)
  H[22]! += 0.5 * q * (nx * ey + ny * ex)
  H[23]! += 0.5 * q * (nx * ez + nz * ex)
  H[29]! += 0.5 * q * (ny * ez + nz * ey)
  turnOfAxis[3] = (ay * nz - az * ny) / ell
  turnOfAxis[4] = (az * nx - ax * nz) / ell
  turnOfAxis[5] = (ax * ny - ay * nx) / ell
  addOuter(H, turnOfAxis, N * f2)
}
