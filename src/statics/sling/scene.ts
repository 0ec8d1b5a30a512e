import type { KnotShift } from './knot'
import type { Push } from './push'
import type { Contact, SlingInput } from './result'

/** A contact while solving: the centre of its circle as seen from the centre of gravity, pot frame, and its radius. */
export interface SceneContact {
  readonly x: number
  readonly y: number
  readonly z: number
  readonly r: number
}

/** The wall while solving. `force` and `penalty` are the multipliers of the augmented Lagrangian (leanOn.ts). */
export interface SceneWall {
  readonly n: readonly [number, number, number]
  readonly d: number
  readonly contacts: readonly SceneContact[]
  readonly force: number[]
  penalty: number
}

/** The input as the solver wants it: points as x, y, z one after another, lower ends as seen from the centre of gravity. */
export interface Scene {
  readonly legs: number
  readonly A: readonly number[]
  readonly arm: readonly number[]
  readonly L0: readonly number[]
  /** Stiffness of each leg, N/m: EA / L0, or less while a start is being softened (findRest.ts). */
  k: readonly number[]
  readonly weight: number
  readonly ell: number
  /** Sum of the true stiffnesses, N/m, and of stiffness times length, N: the scales of rounding. */
  readonly stiffness: number
  readonly pull: number
  /** Mean length of the legs, m. */
  readonly size: number
  /** The wall whose contacts count now; null while the pot is taken to hang free. */
  wall: SceneWall | null
  /** The knot that gives way under a pot on which the strands slide; null where they are fixed to it. */
  knot: KnotShift | null
  /** A force besides the weight; null without. */
  push: Push | null
}

/** Lays out a valid input for the solver, without its wall. */
export function sceneOf(input: SlingInput): Scene {
  const { A, B, L0, EA, cg } = input
  const legs = A.length
  const tops: number[] = []
  const arm: number[] = []
  const k: number[] = []
  let stiffness = 0
  let pull = 0
  let length = 0
  for (let i = 0; i < legs; i++) {
    const a = A[i]!
    const b = B[i]!
    tops.push(a[0], a[1], a[2])
    arm.push(b[0] - cg[0], b[1] - cg[1], b[2] - cg[2])
    const ki = EA[i]! / L0[i]!
    k.push(ki)
    stiffness += ki
    pull += EA[i]!
    length += L0[i]!
  }
  return { legs, A: tops, arm, L0, k, weight: input.mass * input.gravity, ell: input.ell, stiffness, pull, size: length / legs, wall: null, knot: null, push: null }
}

/** Lays out the wall of a valid input, with its normal made a unit vector; null without wall or contacts. */
export function sceneWallOf({ wall, cg }: SlingInput): SceneWall | null {
  if (wall === null || wall.contacts.length === 0) return null
  const length = Math.hypot(...wall.n)
  const [x, y, z] = wall.n
  const place = (contact: Contact): SceneContact =>
    contact.type === 'circle'
      ? { x: -cg[0], y: -cg[1], z: contact.z - cg[2], r: contact.r }
      : { x: contact.at[0] - cg[0], y: contact.at[1] - cg[1], z: contact.at[2] - cg[2], r: 0 }
  return {
    n: [x / length, y / length, z / length],
    d: wall.d / length,
    contacts: wall.contacts.map(place),
    force: wall.contacts.map(() => 0),
    penalty: 0,
  }
}
