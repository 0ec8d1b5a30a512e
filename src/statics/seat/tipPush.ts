import { newtons, radians, type Newtons, type Radians } from '../../quantity/si'
import { balanceAt } from '../sling/balanceAt'
import { hasFallen } from '../sling/findRest'
import { lostSupport } from '../sling/lastingRest'
import { letDown } from '../sling/letDown'
import { newPoint, type Point } from '../sling/point'
import { copyPose, newPose, type Pose } from '../sling/pose'
import type { Balance, SlingInput } from '../sling/result'
import { sceneOf, sceneWallOf, type Scene, type SceneWall } from '../sling/scene'
import { slingError } from '../sling/slingError'
import { solveScene } from '../sling/solveSling'
import { poseOf, turnAbout } from '../sling/freeTurn'
import { lasts, slidingScene, slidingSeatError, type SlidingSeat, type SlidingSeatError } from './slidingSeat'

/** A level push on the pot's axis at a height above its base, m, in some directions, and the lean that counts as tipped. */
export interface PushAt {
  readonly height: number
  /** Where to it pushes, seen from above, rad. */
  readonly directions: readonly number[]
  readonly tipsAbove: Radians
}

export type TipPush =
  | {
    readonly ok: true
    /** The smallest push that tips it, and over the weight; `tips` false where it bears a push as great as MOST_SHARE of it. */
    readonly force: Newtons
    readonly share: number
    readonly tips: boolean
    readonly direction: number
    /** Whether it then leans too far, or has no rest any more. */
    readonly how: 'LEANS' | 'NO_REST'
    /** How far its axis then stands from the line of weight and push together, and from the vertical. */
    readonly lean: Radians
    readonly tilt: Radians
    /** Work of the push up to there, slowly, J. */
    readonly work: number
  }
  /** It does not stay without a push. */
  | { readonly ok: false; readonly reason: 'TIPS_BY_ITSELF' }
  | { readonly ok: false; readonly reason: 'ERROR'; readonly error: SlidingSeatError }

/** First push and the growth of the next, and the greatest, as shares of the weight. */
const FIRST_SHARE = 0.02
const GROWTH = 1.5
export const MOST_SHARE = 2
/** The push is told to this share of the weight. */
const WITHIN = 5e-4
const MOST_HALVINGS = 20
/** A stiffness less than this share of weight over ell below zero tips nothing; how far a pot is turned to leave a saddle, rad. */
const NEUTRAL_SHARE = 1e-3
const NUDGE = 0.05

/** The smallest push that tips a pot whose strands are fixed to it. */
export function pinnedTipPush(sling: SlingInput, at: PushAt): TipPush {
  const error = slingError(sling)
  return error === null ? tipPush(sling, () => sceneOf(sling), at) : { ok: false, reason: 'ERROR', error }
}

/** The smallest push that tips a pot on strands that run over it without friction. */
export function slidingTipPush(seat: SlidingSeat, at: PushAt): TipPush {
  const error = slidingSeatError(seat)
  return error === null ? tipPush(seat, () => slidingScene(seat), at) : { ok: false, reason: 'ERROR', error }
}

interface Pushed {
  readonly lean: number
  readonly tilt: number
  /** Energy without the push, J. */
  readonly energy: number
}

/**
 * Grows the push and follows the rest from each to the next, then halves. A pot that swings out with its hanger does
 * not tip: it leans by the angle between its axis and the pull of weight and push together, as gravity's would be.
 */
function tipPush(sling: SlingInput, scene: () => Scene, { height, directions, tipsAbove }: PushAt): TipPush {
  const own = scene()
  const wall = sceneWallOf(sling)
  const first = solveScene(own, wall)
  if (!('T' in first) || !lasts(sling, first, tipsAbove)) return { ok: false, reason: 'TIPS_BY_ITSELF' }
  const { weight } = own
  const here = newPoint()
  const from = newPose()
  const arm = [0 - sling.cg[0], 0 - sling.cg[1], height - sling.cg[2]] as const
  let best: TipPush | null = null
  let least = MOST_SHARE * weight
  for (const direction of directions) {
    const pushed = (force: number): Pushed | null => {
      own.push = { force: [force * Math.cos(direction), force * Math.sin(direction), 0], arm }
      return pushedRest(own, wall, sling, from, here)
    }
    copyPose(poseOf(first), from)
    const start = pushed(0)
    if (start === null) return { ok: false, reason: 'TIPS_BY_ITSELF' }
    let [low, high] = [0, Infinity]
    let held = start
    let how: 'LEANS' | 'NO_REST' = 'NO_REST'
    for (let i = 0; i < MOST_HALVINGS && high - low > WITHIN * weight; i++) {
      const force: number = high < Infinity ? (low + high) / 2 : Math.min(least, low === 0 ? FIRST_SHARE * weight : GROWTH * low)
      const next = pushed(force)
      if (next !== null && next.lean <= tipsAbove) {
        copyPose(here.pose, from)
        ;[low, held] = [force, next]
        if (force >= least) break
      } else {
        high = force
        how = next === null ? 'NO_REST' : 'LEANS'
      }
    }
    if (best !== null && low >= least) continue
    least = low
    best = { ok: true, force: newtons(low), share: low / weight, tips: high < Infinity, direction, how, lean: radians(held.lean), tilt: radians(held.tilt), work: held.energy - start.energy }
  }
  return best ?? { ok: false, reason: 'TIPS_BY_ITSELF' }
}

/** The rest under the scene's push that follows from a pose; null if there is none that lasts on legs enough. */
function pushedRest(scene: Scene, wall: SceneWall | null, sling: SlingInput, from: Pose, here: Point): Pushed | null {
  const rest = settled(scene, wall, from, here) ?? turned(scene, wall, sling, from, here)
  if (rest === null || (lostSupport(rest) && sling.wall === null)) return null
  const { pose: { p, R }, energy } = here
  const { force: [fx, fy], arm: [x, y, z] } = scene.push as NonNullable<Scene['push']>
  const along = (row: 0 | 1): number => p[row]! + R[3 * row]! * x + R[3 * row + 1]! * y + R[3 * row + 2]! * z
  const upAlong = (scene.weight * R[8]! - fx * R[2]! - fy * R[5]!) / Math.hypot(scene.weight, fx, fy)
  return { lean: Math.acos(Math.min(1, upAlong)), tilt: rest.tiltRadians, energy: energy + fx * along(0) + fy * along(1) }
}

function settled(scene: Scene, wall: SceneWall | null, from: Pose, here: Point): Balance | null {
  const down = letDown(scene, wall, from, here)
  if (!down.converged || hasFallen(here.pose)) return null
  const rest = balanceAt(scene, here, down.forces, down.slopes)
  return (rest.eigenvalues[0] ?? 0) < (0 - NEUTRAL_SHARE * scene.weight) / scene.ell ? null : rest
}

/** A pot under one hook may only turn there until it stands right to the push, which is no tipping: turned a little, it does. */
function turned(scene: Scene, wall: SceneWall | null, sling: SlingInput, from: Pose, here: Point): Balance | null {
  const nudged = newPose()
  turnAbout(sling, from, NUDGE, nudged)
  return settled(scene, wall, nudged, here)
}
