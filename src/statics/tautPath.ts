import { metres, radians, type Metres, type Radians } from '../quantity/si'

/** A point of a pot's outer profile: radius from the axis, height above the base. */
export interface ProfilePoint {
  readonly r: number
  readonly z: number
}

/** Where a strand hangs, seen from above, m from the axis: outwards in the plane of its profile, and aside of that plane. */
export interface UpperEnd {
  readonly out: number
  readonly aside: number
}

/** Over the pot's axis. */
export const ON_AXIS: UpperEnd = { out: 0, aside: 0 }

export interface TautPathInput {
  /** Convex profile from the base edge upwards, m; no two points at one height. */
  readonly profile: readonly ProfilePoint[]
  readonly upper: UpperEnd
  /** Length of one strand from the hanging point to the gathering knot under the middle of the base, m. */
  readonly strand: Metres
}

/** The way of a taut strand from its upper end over the pot to the knot under it; lengths in m. */
export interface TautPath {
  readonly ok: true
  /** Where the strand leaves the pot. */
  readonly leave: ProfilePoint
  /** Points the strand touches from the leave point down to the base edge. */
  readonly touched: readonly ProfilePoint[]
  /** Height of the upper end above the pot's base. */
  readonly top: Metres
  /** Free length from the upper end to the leave point. */
  readonly free: Metres
  /** Angle of the free length from the vertical. */
  readonly angle: Radians
  /** Total turn from the free length to the horizontal under the base. */
  readonly turn: Radians
  /** Length from the gathering knot along the strand to the base edge, and to the leave point. */
  readonly knotToBaseEdge: Metres
  readonly knotToLeave: Metres
}

/** The strand is too short to reach round the pot: it needs more than `least`. */
export interface NoTautPath {
  readonly ok: false
  readonly least: Metres
}

const distance = (a: ProfilePoint, b: ProfilePoint): number => Math.hypot(a.r - b.r, a.z - b.z)

/** Lengths along the profile from the knot to each of its points. */
function alongProfile(profile: readonly ProfilePoint[]): number[] {
  const lengths: number[] = []
  let length = 0
  profile.forEach((point, i) => {
    const before = profile[i - 1]
    length += before ? distance(before, point) : point.r
    lengths.push(length)
  })
  return lengths
}

/**
 * Finds the hanging height and the leave point of a taut strand of known length over a convex profile
 * (statics of a string over a frictionless convex body: the leave point is where the straight part just
 * touches). A strand that would bring its upper end below the pot's highest edge is no path: the answer is the
 * least that would do.
 *
 * Exact where the upper end lies in the plane of the profile. Where it lies aside, the strand is taken to be
 * held in that plane up to where it leaves the pot, by friction and the knots of its cradle: the free length
 * and angle are then exact, the leave point is too, since the rise of the surface under the strand only meets
 * the part of it that lies in the plane, and its free part never enters a round pot. What is left out is that
 * such a strand would slip round the pot towards its upper end.
 * @example tautPath({ profile: [{ r: 0.1, z: 0 }, { r: 0.1, z: 0.2 }], upper: ON_AXIS, strand: metres(0.8) }).top // 0.6899
 */
export function tautPath({ profile, upper, strand }: TautPathInput): TautPath | NoTautPath {
  const along = alongProfile(profile)
  const highest = Math.max(...profile.map((p) => p.z))
  // The path that leaves at point i is the true one if no higher point pokes through its straight part.
  for (let i = profile.length - 1; i >= 0; i--) {
    const leave = profile[i] as ProfilePoint
    const free = strand - (along[i] as number)
    const run = runTo(upper, leave)
    if (free <= run) continue
    const rise = Math.sqrt(free * free - run * run)
    const top = leave.z + rise
    // The upper end cannot be inside the pot.
    if (top <= highest) continue
    if (!pokes(profile.slice(i + 1), leave, upper, top) && bendsAt(profile[i - 1] ?? null, leave, upper, top)) return pathAt(profile, along, i, upper, top)
  }
  return { ok: false, least: metres(leastStrand(profile, along, highest, upper)) }
}

/**
 * The taut path to an upper end of known height above the base, which must be above the pot's highest edge: its
 * free part leaves where it leans furthest out.
 * @example tautPathTo([{ r: 0.1, z: 0 }, { r: 0.1, z: 0.2 }], ON_AXIS, 0.7).free // 0.5099
 */
export function tautPathTo(profile: readonly ProfilePoint[], upper: UpperEnd, top: number): TautPath {
  const slope = ({ r, z }: ProfilePoint): number => (r - upper.out) / (top - z)
  const leave = profile.reduce((best, p, i) => (slope(p) > slope(profile[best] as ProfilePoint) ? i : best), 0)
  return pathAt(profile, alongProfile(profile), leave, upper, top)
}

function pathAt(profile: readonly ProfilePoint[], along: readonly number[], i: number, upper: UpperEnd, top: number): TautPath {
  const leave = profile[i] as ProfilePoint
  const rise = top - leave.z
  const run = runTo(upper, leave)
  return {
    ok: true,
    leave,
    touched: profile.slice(0, i + 1).reverse(),
    top: metres(top),
    free: metres(Math.hypot(run, rise)),
    angle: radians(Math.atan2(run, rise)),
    // Every turn adds up to that from the free direction to the horizontal: the profile is convex.
    turn: radians(Math.atan2(leave.r - upper.out, rise) + Math.PI / 2),
    knotToBaseEdge: metres((profile[0] as ProfilePoint).r),
    knotToLeave: metres(along[i] as number),
  }
}

const runTo = ({ out, aside }: UpperEnd, { r }: ProfilePoint): number => Math.hypot(r - out, aside)

/** Whether one of the points above the leave point, all below its upper end, pokes through the straight part. */
const pokes = (above: readonly ProfilePoint[], leave: ProfilePoint, { out }: UpperEnd, top: number): boolean =>
  above.some((p) => p.r - out > ((leave.r - out) * (top - p.z)) / (top - leave.z) + 1e-12)

/** The strand that brings its upper end level with the pot's highest edge. */
function leastStrand(profile: readonly ProfilePoint[], along: readonly number[], highest: number, upper: UpperEnd): number {
  return Math.max(...profile.map((p, i) => (along[i] as number) + Math.hypot(runTo(upper, p), highest - p.z)))
}

/** Whether a strand coming down from its upper end presses on the point rather than passing clear of it. */
function bendsAt(below: ProfilePoint | null, leave: ProfilePoint, { out }: UpperEnd, top: number): boolean {
  if (below === null) return true
  const slopeAbove = (leave.r - out) / (top - leave.z)
  const slopeBelow = (leave.r - below.r) / (leave.z - below.z)
  return slopeBelow > -slopeAbove - 1e-12
}
