import type { SlingInput, SlingRest, SlingResult, Vec3 } from '../../../src/statics/sling/result'
import { solveSling } from '../../../src/statics/sling/solveSling'

export const GRAVITY = 9.80665

export interface Ringed {
  readonly legs: number
  /** Radius of the attachments, of the ring above, unstretched length, stiffness of a leg. */
  readonly a: number
  readonly r0: number
  readonly L0: number
  readonly EA: number
  readonly weight: number
  /** Height of the attachments above the centre of gravity. */
  readonly zb: number
  readonly ell: number
}

/** Equal legs round the z axis, the first at angle 0. The centre of gravity is 0.1 m above the base. */
export function ringed({ legs, a, r0, L0, EA, weight, zb, ell }: Ringed): SlingInput {
  const round = (r: number, z: number): Vec3[] =>
    Array.from({ length: legs }, (_, i): Vec3 => [r * Math.cos((2 * Math.PI * i) / legs), r * Math.sin((2 * Math.PI * i) / legs), z])
  return {
    A: round(r0, 2.5), B: round(a, 0.1 + zb),
    L0: new Array<number>(legs).fill(L0), EA: new Array<number>(legs).fill(EA),
    mass: weight / GRAVITY, cg: [0, 0, 0.1], ell, gravity: GRAVITY, wall: null,
  }
}

/** The rest of a hanger that must have one. */
export function restOf(input: SlingInput): SlingRest {
  const result: SlingResult = solveSling(input)
  if (result.status === 'OK' || result.status === 'OK_WITH_SLACK' || result.status === 'OK_NEUTRAL_TWIST' || result.status === 'LOST_SUPPORT') return result
  throw new Error(`no rest: ${JSON.stringify(result)}`)
}

/** Where the pot's lower ends are, world frame. */
export const lowerEnds = (input: SlingInput, rest: SlingRest): Vec3[] =>
  input.B.map((b) => {
    const arm = [b[0] - input.cg[0], b[1] - input.cg[1], b[2] - input.cg[2]] as const
    const along = (i: 0 | 1 | 2): number => rest.cg[i] + rest.R[i][0] * arm[0] + rest.R[i][1] * arm[1] + rest.R[i][2] * arm[2]
    return [along(0), along(1), along(2)]
  })

export const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

export const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0)
