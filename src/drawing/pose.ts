import type { Solved } from '../check/solved'
import type { CaseCode } from '../load/loadCases'
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
  readonly leavePoint: (leg: number) => Vector
  readonly tiltDegrees: number
}

/** The pose of the pot in a case, from the sling as drawn; upright where the solve gave no rest. Null if the strands do not reach. */
export function poseOf(solved: Solved, code: CaseCode): Pose | null {
  const { path } = solved.geometry
  if (!path.ok || solved.slings === null) return null
  const { drawn } = solved.slings[code]
  const state = solved.loads[code].case.state
  const centre: Vector = [0, 0, solved.potted[state].centre]
  const rests = 'R' in drawn
  const turn: readonly Vector[] = rests ? drawn.R : [[1, 0, 0], [0, 1, 0], [0, 0, 1]]
  const at: readonly number[] = rests ? drawn.cg : centre
  const place = (point: Vector): Vector => {
    const d = point.map((x, i) => x - (centre[i] as number))
    const row = (i: number): number => (at[i] as number) + (turn[i] ?? []).reduce((sum, r, j) => sum + r * (d[j] as number), 0)
    return [row(0), row(1), row(2)]
  }
  const legs = solved.hanger.answers['make.legs']
  const angle = (leg: number): number => (2 * Math.PI * leg) / legs
  return {
    path,
    legs,
    gone: code === 'legParted' || code === 'legPartedSudden' ? 0 : null,
    place,
    hangingPoint: [0, 0, path.top],
    leavePoint: (leg) => place([path.leave.r * Math.cos(angle(leg)), path.leave.r * Math.sin(angle(leg)), path.leave.z]),
    tiltDegrees: 'tiltRadians' in drawn ? (drawn.tiltRadians * 180) / Math.PI : 0,
  }
}

/** Angle from the front at which legs are drawn, so that no two legs of an even number cover each other. */
export const VIEW_TURN = Math.PI / 7
