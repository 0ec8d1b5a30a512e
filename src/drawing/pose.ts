import type { SlingPlan } from '../check/slingPlan'
import type { Solved } from '../check/solved'
import type { CaseCode } from '../load/loadCases'
import type { SlingResult } from '../statics/sling/result'
import type { TautPath } from '../statics/tautPath'

export type Vector = readonly [number, number, number]

/** The pot where the solved sling holds it. */
export interface Pose {
  /** The way of the leg that leans most. */
  readonly path: TautPath
  readonly legs: number
  /** Index of the leg that is gone in this case, or null. */
  readonly gone: number | null
  /** World position of a point given in the pot's frame (origin at the base's centre). */
  readonly place: (point: Vector) => Vector
  /** How far the pot has turned about its axis under what it hangs from, rad. */
  readonly turned: number
  /** The middle of all upper ends; and that of one leg. */
  readonly hangingPoint: Vector
  readonly upperEnd: (leg: number) => Vector
  /** Where a leg leaves the pot, world. */
  readonly leavePoint: (leg: number) => Vector
  /** Angle of a leg round the pot's axis, rad, and the way of its strands; halves lie between two legs. */
  readonly angle: (leg: number) => number
  readonly way: (leg: number) => TautPath
  readonly tiltDegrees: number
}

/** The pose of the pot in a case, from the sling as drawn; upright where the solve gave no rest. Null if the strands do not reach. */
export function poseOf(solved: Solved, code: CaseCode): Pose | null {
  const { path, legs: places, between, panel } = solved.geometry
  const { plan, slings } = solved
  if (!path.ok || plan === null || slings === null) return null
  const { drawn, gone } = slings[code]
  const centre: Vector = [0, 0, solved.loads[code].centre]
  const legs = plan.legs.length
  const place = placing(drawn, centre)
  const ways = (leg: number): { readonly angle: number; readonly path: TautPath } => {
    const [whole, from] = [Math.floor(leg), Number.isInteger(leg) ? places : between]
    const way = from[(whole + places.length) % places.length] ?? { angle: 0, path }
    return { ...way, angle: way.angle + 2 * Math.PI * Math.floor(whole / places.length) }
  }
  return {
    path,
    legs,
    gone: code === 'legParted' || code === 'legPartedSudden' ? gone : null,
    place,
    turned: 'R' in drawn ? Math.atan2(drawn.R[1][0], drawn.R[0][0]) : 0,
    hangingPoint: [0, panel?.ok ? panel.stickFromAxis : 0, path.top],
    upperEnd: (leg) => plan.legs[leg]?.upper ?? [0, 0, path.top],
    angle: (leg) => (panel === null ? ways(leg).angle : placeAngle(plan, leg)),
    way: (leg) => (panel === null ? ways(leg).path : path),
    leavePoint: (leg) => place(plan.legs[leg]?.lower ?? [0, 0, 0]),
    tiltDegrees: 'tiltRadians' in drawn ? (drawn.tiltRadians * 180) / Math.PI : 0,
  }
}

/** Where a leg comes to the pot, seen from above, rad. */
function placeAngle({ legs }: SlingPlan, leg: number): number {
  const [x, y] = legs[leg]?.lower ?? [1, 0, 0]
  return Math.atan2(y, x)
}

/** x_world = cg + R (x_pot - centre), as the solver moves the pot. */
function placing(drawn: SlingResult, centre: Vector): Pose['place'] {
  if (!('R' in drawn)) return (point) => point
  const [p, q, r] = drawn.cg
  return (point) => {
    const d = point.map((x, i) => x - (centre[i] as number))
    const turned = (row: Vector): number => row.reduce((sum, x, j) => sum + x * (d[j] as number), 0)
    return [p + turned(drawn.R[0]), q + turned(drawn.R[1]), r + turned(drawn.R[2])]
  }
}

