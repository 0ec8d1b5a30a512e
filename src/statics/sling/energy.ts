import { addContacts } from './contact'
import { addCross, giveWay, settleKnot } from './knotShift'
import { addOuter, type Point } from './point'
import type { Pose } from './pose'
import { addPush } from './push'
import type { Scene } from './scene'

const J = new Float64Array(6)

/**
 * Fills in energy, gradient and Hessian at the point's pose.
 *
 * Leg i: d = p + R (B - c) - A, l = |d|, n = d / l, T = k max(0, l - L0), b = R (B - c),
 * J = [n ; b x n], and with p the centre of gravity
 * V = sum T^2 / (2 k) + W p_z, gradient = sum T J + W e_z,
 * Hessian = sum (k - T/l) J J' + (T/l) [I, -[b]x]' [I, -[b]x] + T rot((n b' + b n')/2 - (n.b) I),
 * where rot() stands in the rows and columns of the rotation. (Textbook statics; the last term is how
 * b itself turns.) A slack leg adds nothing. Contacts with the wall are added after the legs, and a push.
 * Where the strands slide to a knot that gives way, it is moved to where it settles: the energy is the least
 * over its places (knotShift.ts).
 */
export function evaluate(scene: Scene, point: Point): void {
  const { legs, A, arm, L0, k, ell, weight, knot } = scene
  const { p, R } = point.pose
  const g = point.gradient.fill(0)
  const H = point.hessian.fill(0)
  const px = p[0]!, py = p[1]!, pz = p[2]!
  const r0 = R[0]!, r1 = R[1]!, r2 = R[2]!, r3 = R[3]!, r4 = R[4]!, r5 = R[5]!, r6 = R[6]!, r7 = R[7]!, r8 = R[8]!
  let energy = weight * pz
  g[2] = weight
  if (knot !== null) {
    settleKnot(scene, knot, point.pose)
    knot.cross.fill(0)
  }
  for (let i = 0; i < legs; i++) {
    const ax = arm[3 * i]!, ay = arm[3 * i + 1]!, az = arm[3 * i + 2]!
    const bx = r0 * ax + r1 * ay + r2 * az
    const by = r3 * ax + r4 * ay + r5 * az
    const bz = r6 * ax + r7 * ay + r8 * az
    const dx = px + bx - A[3 * i]!
    const dy = py + by - A[3 * i + 1]!
    const dz = pz + bz - A[3 * i + 2]!
    const l = Math.sqrt(dx * dx + dy * dy + dz * dz)
    const stretch = l - L0[i]! + (knot === null ? 0 : knot.longer[i]!)
    if (stretch <= 0) continue
    const T = k[i]! * stretch
    energy += 0.5 * T * stretch
    const nx = dx / l, ny = dy / l, nz = dz / l
    // Arms over ell from here on: the rotations are counted in metres at that radius.
    const cx = bx / ell, cy = by / ell, cz = bz / ell
    J[0] = nx
    J[1] = ny
    J[2] = nz
    J[3] = cy * nz - cz * ny
    J[4] = cz * nx - cx * nz
    J[5] = cx * ny - cy * nx
    if (knot !== null) addCross(knot, i, J, k[i]!)
    const t = T / l
    addOuter(H, J, k[i]! - t)
    for (let a = 0; a < 6; a++) g[a]! += T * J[a]!
    H[0]! += t
    H[7]! += t
    H[14]! += t
    H[4]! += t * cz
    H[5]! -= t * cy
    H[9]! -= t * cz
    H[11]! += t * cx
    H[15]! += t * cy
    H[16]! -= t * cx
    const q = T / ell
    const nc = nx * cx + ny * cy + nz * cz
    const own = t * (cx * cx + cy * cy + cz * cz) - q * nc
    H[21]! += own - t * cx * cx + q * nx * cx
    H[28]! += own - t * cy * cy + q * ny * cy
    H[35]! += own - t * cz * cz + q * nz * cz
    H[22]! += 0.5 * q * (nx * cy + ny * cx) - t * cx * cy
    H[23]! += 0.5 * q * (nx * cz + nz * cx) - t * cx * cz
    H[29]! += 0.5 * q * (ny * cz + nz * cy) - t * cy * cz
  }
  if (knot !== null) giveWay(knot, H)
  point.energy = energy
  if (scene.push !== null) addPush(scene.push, ell, point)
  if (scene.wall !== null) addContacts(scene.wall, ell, point)
  for (let a = 1; a < 6; a++) for (let b = 0; b < a; b++) H[6 * a + b] = H[6 * b + a]!
}

/** Tensions of the legs at a pose, N. */
export function tensionsAt(scene: Scene, pose: Pose): number[] {
  const { legs, A, arm, L0, k, knot } = scene
  const { p, R } = pose
  if (knot !== null) settleKnot(scene, knot, pose)
  const T: number[] = []
  for (let i = 0; i < legs; i++) {
    const x = arm[3 * i]!, y = arm[3 * i + 1]!, z = arm[3 * i + 2]!
    const dx = p[0]! + R[0]! * x + R[1]! * y + R[2]! * z - A[3 * i]!
    const dy = p[1]! + R[3]! * x + R[4]! * y + R[5]! * z - A[3 * i + 1]!
    const dz = p[2]! + R[6]! * x + R[7]! * y + R[8]! * z - A[3 * i + 2]!
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz) + (knot === null ? 0 : knot.longer[i]!)
    T.push(k[i]! * Math.max(0, length - L0[i]!))
  }
  return T
}
