import type { Solved } from '../check/solved'
import type { CaseCode } from '../load/loadCases'
import type { SlingResult } from '../statics/sling/result'
import type { TautPath } from '../statics/tautPath'

export type Vector = readonly [number, number, number]

/** The pot where the solved sling holds it. */
export interface Pose {
  readonly path: TautPath
  readonly legs: number
  /** Index of the leg that is gone in this case, or null. */
  readonly gone: number | null
  /** World position of a point given in the pot's frame (origin at the base's centre). */
  readonly place: (point: Vector) => Vector
  readonly hangingPoint: Vector
  /** Where a leg leaves the pot, world. */
  readonly leavePoint: (leg: number) => Vector
  /** Angle of a leg round the pot's axis, rad; halves lie between two legs. */
  readonly angle: (leg: number) => number
  readonly tiltDegrees: number
}

/** The pose of the pot in a case, from the sling as drawn; upright where the solve gave no rest. Null if the strands do not reach. */
export function poseOf(solved: Solved, code: CaseCode): Pose | null {
  const { path } = solved.geometry
  if (!path.ok || solved.slings === null) return null
  const { drawn } = solved.slings[code]
  const centre: Vector = [0, 0, solved.potted[solved.loads[code].case.state].centre]
  const legs = solved.hanger.answers['make.legs']
  const angle = (leg: number): number => (2 * Math.PI * leg) / legs
  const place = placing(drawn, centre)
  return {
    path,
    legs,
    gone: code === 'legParted' || code === 'legPartedSudden' ? 0 : null,
    place,
    hangingPoint: [0, 0, path.top],
    angle,
    leavePoint: (leg) => place([path.leave.r * Math.cos(angle(leg)), path.leave.r * Math.sin(angle(leg)), path.leave.z]),
    tiltDegrees: 'tiltRadians' in drawn ? (drawn.tiltRadians * 180) / Math.PI : 0,
  }
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

