import type { SlingErrorCode, SlingInput, SlingResult, Vec3 } from '../sling/result'
import type { KnotShift } from '../sling/knot'
import { sceneOf, sceneWallOf, type Scene } from '../sling/scene'
import { slingError } from '../sling/slingError'
import { solveScene } from '../sling/solveSling'

/**
 * A sling whose strands run over the pot without friction: from A over the pot at B, down its side, round its base
 * edge at `edge`, to a gathering knot that may shift sideways under the base. Each keeps its whole length `L0` (m,
 * without load), and stretches along all of it by `EA`. Points of edge and knot in the pot's frame, m. A wall holds
 * the pot off as in any sling.
 */
export interface SlidingSeat extends SlingInput {
  readonly edge: readonly Vec3[]
  readonly knot: Vec3
}

/** Why strands cannot run so: one is shorter than its way round the pot, or has no way under the base. */
export type SlidingSeatError = SlingErrorCode | 'SHORTER_THAN_WAY_ROUND' | 'NO_WAY_UNDER_BASE'

export type SlidingSeatResult = Exclude<SlingResult, { readonly status: 'ERROR' }> | { readonly status: 'ERROR'; readonly error: SlidingSeatError }

/** Share of the way under the base by which the energy is rounded where the knot meets an edge. */
const ROUNDING = 1e-4
/** A way under the base shorter than this share of the pot's radius leaves the knot no direction. */
const LEAST_WAY = 1e-3

const apart = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

/** Ways of every strand round the pot as drawn: from B down to its edge, and from there to the knot, m. */
const waysRound = ({ B, edge, knot }: SlidingSeat): readonly (readonly [down: number, under: number])[] =>
  B.map((b, i) => [apart(b, edge[i] ?? b), apart(edge[i] ?? b, knot)])

/** The same hanger with its strands fixed to the pot at B, with the free part of each as stretchy as the whole strand. */
export function pinnedAt(seat: SlidingSeat): SlingInput {
  const { A, B, mass, cg, ell, gravity, wall } = seat
  const L0 = waysRound(seat).map(([down, under], i) => (seat.L0[i] ?? NaN) - down - under)
  return { A, B, L0, EA: L0.map((free, i) => ((seat.EA[i] ?? NaN) * free) / (seat.L0[i] ?? NaN)), mass, cg, ell, gravity, wall }
}

/** The first reason why strands cannot run so, or null. */
export function slidingSeatError(seat: SlidingSeat): SlidingSeatError | null {
  const { A, B, L0, EA, edge, knot, ell } = seat
  if (A.length < 3) return 'TOO_FEW_LEGS'
  const finite = [...edge, knot].every((point) => point.every(Number.isFinite))
  if ([B, L0, EA, edge].some((list) => list.length !== A.length) || !finite) return 'NOT_FINITE'
  // Before lengths and stiffnesses are taken along the free part alone.
  const whole = slingError({ ...seat, A: [...A], L0: L0.map((length, i) => length + apart(A[i] as Vec3, B[i] as Vec3)) })
  if (whole !== null && whole !== 'UNREACHABLE') return whole
  if (!L0.every((length) => length > 0)) return 'BAD_LENGTH'
  const ways = waysRound(seat)
  if (ways.some(([, under]) => !(under > LEAST_WAY * ell))) return 'NO_WAY_UNDER_BASE'
  if (ways.some(([down, under], i) => !((L0[i] as number) > down + under))) return 'SHORTER_THAN_WAY_ROUND'
  return slingError(pinnedAt(seat))
}

/** Lays out a valid seat for the solver. */
export function slidingScene(seat: SlidingSeat): Scene {
  const { edge, knot } = seat
  const legs = edge.length
  const under = waysRound(seat).map(([, way]) => way)
  const rounding = ROUNDING * Math.min(...under)
  const shift: KnotShift = {
    edge: edge.flatMap((point) => [point[0] - knot[0], point[1] - knot[1], point[2] - knot[2]]),
    drawn: under.map((way) => Math.hypot(way, rounding)),
    rounding,
    at: new Float64Array(2), longer: new Float64Array(legs), towards: new Float64Array(2 * legs), own: new Float64Array(4), cross: new Float64Array(12),
  }
  return { ...sceneOf(pinnedAt(seat)), knot: shift }
}

/**
 * Where a pot comes to rest on strands that run over it without friction, and whether that lasts: the other bound to
 * solveSling, which fixes them to the pot (endless friction). Pose of the pot and place of the knot are eight
 * unknowns; the knot is settled for every pose, and what is left is solved and judged as any sling. Its eigenvalues
 * are those of the pot with the knot giving way: they are all positive exactly when those of all eight unknowns are.
 */
export function solveSlidingSeat(seat: SlidingSeat): SlidingSeatResult {
  const error = slidingSeatError(seat)
  if (error !== null) return { status: 'ERROR', error }
  return solveScene(slidingScene(seat), sceneWallOf(seat))
}

/** Whether a result is a rest that lasts, tilted by no more than an angle, rad; on two strands only where a wall helps. */
export const lasts = (seat: Pick<SlingInput, 'wall'>, result: SlingResult | SlidingSeatResult, mostTilt: number): boolean =>
  'T' in result && result.stable && (result.status !== 'LOST_SUPPORT' || seat.wall !== null) && result.tiltRadians <= mostTilt
