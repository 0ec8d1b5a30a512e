import { freeTurn, poseOf, turnAbout } from './freeTurn'
import { hangUpright } from './hangUpright'
import { lastingRest } from './lastingRest'
import { letDown } from './letDown'
import { newPoint } from './point'
import { copyPose, movePose, newPose, type Pose } from './pose'
import type { SlingInput, SlingRest, SlingResult } from './result'
import { sceneOf, sceneWallOf, type Scene } from './scene'
import { solveSling } from './solveSling'
import { isWorse } from './worseRest'

/** From this tilt on a pot may have another rest, and this far it is tilted to look for one: 2 and 5 degrees. */
const TILTED = Math.PI / 90
const PUSH = Math.PI / 36
/** Rests are one and the same within this share of the weight in every leg and of the legs' length in place. */
const SAME_FORCE = 1e-5
const SAME_PLACE = 1e-5

/** All that was found of where a pot may come to rest. */
export interface SlingRests {
  /** The answer of solveSling: the rest that an upright start leads to. */
  readonly first: SlingResult
  /** The different lasting rests, the first one first; none if `first` would not last or is an error. */
  readonly rests: readonly SlingRest[]
  /** The worst: one on fewer than three legs before any other, then the one with the greatest tension in a leg; null without any. */
  readonly worst: SlingRest | null
  /** Starts that led to no rest. */
  readonly lost: number
}

/**
 * Looks for all rest positions of a hanger: where a leg is slack, or the pot tilts more than 2 degrees,
 * or nothing was found, it is let go again tilted by 5 degrees towards each slack leg and away from it,
 * or along and across its tilt; where it turns freely and would meet a wall on the way round, from there
 * too. No proof that there are no others.
 */
export function slingRests(input: SlingInput): SlingRests {
  const first = solveSling(input)
  const rested = 'T' in first && first.stable
  if (!rested && first.status !== 'NOT_CONVERGED') return { first, rests: [], worst: 'T' in first ? first : null, lost: 0 }
  const scene = sceneOf(input)
  const wall = sceneWallOf(input)
  const here = newPoint()
  const rests: SlingRest[] = rested ? [first] : []
  let lost = 0
  for (const start of startsFor(input, scene, rested ? first : null)) {
    const rest = lastingRest(scene, here, letDown(scene, wall, start, here))
    if (rest === null) lost++
    else if (!rests.some((one) => isSame(scene, one, rest))) rests.push(rest)
  }
  return { first, rests, worst: rests.reduce<SlingRest | null>((worst, rest) => (worst === null || isWorse(rest, worst) ? rest : worst), null), lost }
}

function startsFor(input: SlingInput, scene: Scene, first: SlingRest | null): Pose[] {
  const upright = newPose()
  hangUpright(scene, upright)
  const starts = directionsOf(input, first).map((angle) => tilted(scene, upright, angle))
  const turn = first === null ? null : freeTurn(input, first)
  if (first !== null && turn !== null && turn.clearance < 0) {
    const met = newPose()
    turnAbout(input, poseOf(first), turn.at, met)
    starts.push(met)
  }
  return starts
}

/** Directions, as angles seen from above, in which the top of the pot is tilted. */
function directionsOf({ B, cg }: SlingInput, first: SlingRest | null): readonly number[] {
  const round = (angle: number, count: number): number[] => Array.from({ length: count }, (_, i) => angle + (2 * Math.PI * i) / count)
  if (first === null) return round(0, 6)
  if (first.slack.includes(true)) return B.flatMap((b, i) => (first.slack[i] === true ? round(Math.atan2(b[1] - cg[1], b[0] - cg[0]), 2) : []))
  return first.tiltRadians > TILTED ? round(Math.atan2(first.R[1][2], first.R[0][2]), 4) : []
}

function tilted(scene: Scene, upright: Pose, angle: number): Pose {
  const pose = newPose()
  copyPose(upright, pose)
  movePose(pose, new Float64Array([0, 0, 0, -Math.sin(angle) * PUSH * scene.ell, Math.cos(angle) * PUSH * scene.ell, 0]), scene.ell, pose)
  return pose
}

/** Compared by tensions, tilt and place of the centre of gravity, where both turn freely no matter how far they are turned. */
function isSame({ A, weight, size }: Scene, a: SlingRest, b: SlingRest): boolean {
  const out = ({ cg }: SlingRest): number => Math.hypot(cg[0] - A[0]!, cg[1] - A[1]!)
  const apart = a.zeroIsSymmetry && b.zeroIsSymmetry ? Math.hypot(out(a) - out(b), a.cg[2] - b.cg[2]) : Math.hypot(a.cg[0] - b.cg[0], a.cg[1] - b.cg[1], a.cg[2] - b.cg[2])
  return apart <= SAME_PLACE * size && Math.abs(a.tiltRadians - b.tiltRadians) <= SAME_PLACE && a.T.every((T, i) => Math.abs(T - b.T[i]!) <= SAME_FORCE * weight)
}
