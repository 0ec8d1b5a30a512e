import type { Balance, SlingInput, Vec3 } from '../../../../src/statics/sling/result'

export const turned = ({ R }: Balance, v: Vec3): Vec3 => {
  const row = (i: 0 | 1 | 2): number => R[i][0] * v[0] + R[i][1] * v[1] + R[i][2] * v[2]
  return [row(0), row(1), row(2)]
}
const cross = (a: Vec3, b: Vec3): Vec3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
export const plus = (a: Vec3, b: Vec3, factor: number): Vec3 => [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]]
export const length = (v: Vec3): number => Math.hypot(...v)

/** Force over W and moment about the centre of gravity over W ell that are out of balance, from the answer alone; infinite if a contact stands in the wall or pushes without touching it. */
export function imbalance(input: SlingInput, balance: Balance): number {
  const { A, B, cg, mass, gravity, ell, wall } = input
  const W = mass * gravity
  let force: Vec3 = [0, 0, -W]
  let worst = 0
  let moment: Vec3 = [0, 0, 0]
  A.forEach((top, i) => {
    const arm = turned(balance, plus(B[i]!, cg, -1))
    const leg = plus(top, plus(balance.cg, arm, 1), -1)
    const pull = plus([0, 0, 0], leg, balance.T[i]! / length(leg))
    force = plus(force, pull, 1)
    moment = plus(moment, cross(arm, pull), 1)
  })
  wall?.contacts.forEach((contact, i) => {
    if (contact.type !== 'circle') throw new Error('circles only here')
    // The point of the circle that is farthest along the wall's normal.
    const axis = turned(balance, [0, 0, 1])
    const along = wall.n[0] * axis[0] + wall.n[1] * axis[1] + wall.n[2] * axis[2]
    const out = plus(wall.n, axis, -along)
    const arm = plus(turned(balance, plus([0, 0, contact.z], cg, -1)), out, contact.r / length(out))
    const push = plus([0, 0, 0], wall.n, -Number(balance.wallN[i]))
    force = plus(force, push, 1)
    moment = plus(moment, cross(arm, push), 1)
    const gap = wall.d - (wall.n[0] * (balance.cg[0] + arm[0]) + wall.n[1] * (balance.cg[1] + arm[1]) + wall.n[2] * (balance.cg[2] + arm[2]))
    if (gap < -1e-9 || (balance.wallN[i]! > 0 && gap > 1e-9)) worst = Infinity
  })
  return Math.max(worst, length(force) / W, length(moment) / (W * ell))
}
