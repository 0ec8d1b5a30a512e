import { measureGap, newGap } from './contact'
import { copyPose, newPose, type Pose } from './pose'
import type { Balance, SlingInput } from './result'
import { sceneOf, sceneWallOf } from './scene'

const TURNS = 180
const NARROWINGS = 40
const GOLDEN = (Math.sqrt(5) - 1) / 2

/** The turn at which a pot that turns freely under its hook comes nearest to the wall. */
export interface FreeTurn {
  /** Least distance of a contact from the wall on the way round, m; negative: the pot would meet the wall. */
  readonly clearance: number
  /** How far the pot is turned there, about the vertical, counterclockwise from above, rad, 0 to 2 pi. */
  readonly at: number
}

/**
 * Scans the whole turn of a pot that hangs free to turn beside a wall: a rest may be clear of the wall
 * as it stands and meet it when somebody turns the pot. Null where there is no wall, where the pot
 * already leans on it, or where it does not turn freely.
 */
export function freeTurn(input: SlingInput, rest: Balance): FreeTurn | null {
  const wall = sceneWallOf(input)
  if (wall === null || !rest.zeroIsSymmetry || rest.wallN.some((N) => N > 0)) return null
  const { ell } = sceneOf(input)
  const from = poseOf(rest)
  const pose = newPose()
  const gap = newGap()
  const depth = (angle: number): number => {
    turnAbout(input, from, angle, pose)
    return Math.max(...wall.contacts.map((contact) => {
      measureGap(wall, contact, ell, pose, gap)
      return gap.s
    }))
  }
  const stride = (2 * Math.PI) / TURNS
  let best = 0
  let deepest = -Infinity
  for (let i = 0; i < TURNS; i++) {
    const s = depth(i * stride)
    if (s > deepest) [best, deepest] = [i * stride, s]
  }
  let [low, high] = [best - stride, best + stride]
  for (let i = 0; i < NARROWINGS; i++) {
    const span = GOLDEN * (high - low)
    if (depth(high - span) > depth(low + span)) high = low + span
    else low = high - span
  }
  const at = (low + high) / 2
  return { clearance: -Math.max(deepest, depth(at)), at: (at + 2 * Math.PI) % (2 * Math.PI) }
}

/** The pose of a balance, for the solver. */
export function poseOf({ cg, R }: Pick<Balance, 'cg' | 'R'>): Pose {
  const pose = newPose()
  pose.p.set(cg)
  pose.R.set(R.flat())
  return pose
}

/** to = from, turned about the vertical through the first hanging point. */
export function turnAbout({ A }: SlingInput, from: Pose, angle: number, to: Pose): void {
  const [x, y] = A[0]!
  const c = Math.cos(angle)
  const s = Math.sin(angle)
  copyPose(from, to)
  to.p[0] = x + c * (from.p[0]! - x) - s * (from.p[1]! - y)
  to.p[1] = y + s * (from.p[0]! - x) + c * (from.p[1]! - y)
  for (let j = 0; j < 3; j++) {
    to.R[j] = c * from.R[j]! - s * from.R[3 + j]!
    to.R[3 + j] = s * from.R[j]! + c * from.R[3 + j]!
  }
}
