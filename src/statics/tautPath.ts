import { metres, radians, type Metres, type Radians } from '../quantity/si'

/** A point of a pot's outer profile: radius from the axis, height above the base. */
export interface ProfilePoint {
  readonly r: number
  readonly z: number
}

export interface TautPathInput {
  /** Convex profile from the base edge upwards, m. */
  readonly profile: readonly ProfilePoint[]
  /** Length of one strand from the hanging point to the gathering knot under the middle of the base, m. */
  readonly strand: Metres
}

/** The way of a taut strand from one hanging point on the axis over the pot to the knot under it; lengths in m. */
export interface TautPath {
  readonly ok: true
  /** Where the strand leaves the pot. */
  readonly leave: ProfilePoint
  /** Points the strand touches from the leave point down to the base edge. */
  readonly touched: readonly ProfilePoint[]
  /** Height of the hanging point above the pot's base. */
  readonly top: Metres
  /** Free length from the hanging point to the leave point. */
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
 * Finds the hanging height and the leave point of a taut strand of known length over a convex
 * profile of revolution (statics of a string over a frictionless convex body: the leave point is
 * where the straight part just touches). All legs end in one point on the pot's axis. A strand that
 * would bring that point below the pot's highest edge is no path: the answer is the least that would do.
 * @example tautPath({ profile: [{ r: 0.1, z: 0 }, { r: 0.1, z: 0.2 }], strand: metres(0.8) }).top // 0.6899
 */
export function tautPath({ profile, strand }: TautPathInput): TautPath | NoTautPath {
  const along = alongProfile(profile)
  const highest = Math.max(...profile.map((p) => p.z))
  // The path that leaves at point i is the true one if no higher point pokes through its straight part.
  for (let i = profile.length - 1; i >= 0; i--) {
    const leave = profile[i] as ProfilePoint
    const free = strand - (along[i] as number)
    if (free <= leave.r) continue
    const rise = Math.sqrt(free * free - leave.r * leave.r)
    const top = leave.z + rise
    // The hanging point cannot be inside the pot.
    if (top <= highest) continue
    const pokes = profile.slice(i + 1).some((p) => p.z < top && p.r > (leave.r * (top - p.z)) / rise + 1e-12)
    const bends = i === 0 || isConvexAt(profile[i - 1] as ProfilePoint, leave, top)
    if (pokes || !bends) continue
    return {
      ok: true,
      leave,
      touched: profile.slice(0, i + 1).reverse(),
      top: metres(top),
      free: metres(free),
      angle: radians(Math.atan2(leave.r, rise)),
      // Every turn adds up to that from the free direction to the horizontal: the profile is convex.
      turn: radians(Math.atan2(leave.r, rise) + Math.PI / 2),
      knotToBaseEdge: metres((profile[0] as ProfilePoint).r),
      knotToLeave: metres(along[i] as number),
    }
  }
  return { ok: false, least: metres(leastStrand(profile, along, highest)) }
}

/** The strand that brings the hanging point level with the pot's highest edge. */
function leastStrand(profile: readonly ProfilePoint[], along: readonly number[], highest: number): number {
  return Math.max(...profile.map((p, i) => (along[i] as number) + Math.hypot(p.r, highest - p.z)))
}

/** Whether a strand coming down from the hanging point presses on the point rather than passing clear of it. */
function isConvexAt(below: ProfilePoint, leave: ProfilePoint, top: number): boolean {
  const slopeAbove = leave.r / (top - leave.z)
  const run = leave.z - below.z
  if (run <= 0) return leave.r >= below.r
  const slopeBelow = (leave.r - below.r) / run
  return slopeBelow > -slopeAbove - 1e-12
}
