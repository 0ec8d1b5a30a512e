import { metres, type Metres, type Radians } from '../quantity/si'
import type { ProfilePoint, TautPath } from './tautPath'

/**
 * The point of a strand's way so far along it from the gathering knot: under the base, on the pot's side, or
 * beyond on its free part (plane geometry).
 * @example pointAlong({ touched: [{ r: 0.1, z: 0.2 }, { r: 0.1, z: 0 }], knotToBaseEdge: metres(0.1), knotToLeave: metres(0.3), angle: radians(0) }, metres(0.15)) // { r: 0.1, z: 0.05 }
 */
export function pointAlong({ touched, knotToBaseEdge, knotToLeave, angle }: Pick<TautPath, 'touched' | 'knotToBaseEdge' | 'knotToLeave' | 'angle'>, along: Metres): ProfilePoint {
  if (along <= knotToBaseEdge) return { r: along, z: 0 }
  const side = [...touched].reverse()
  let reached: number = knotToBaseEdge
  for (const [i, lower] of side.entries()) {
    const upper = side[i + 1]
    if (upper === undefined) break
    const stretch = Math.hypot(upper.r - lower.r, upper.z - lower.z)
    if (along <= reached + stretch) {
      const share = (along - reached) / stretch
      return { r: lower.r + (upper.r - lower.r) * share, z: lower.z + (upper.z - lower.z) * share }
    }
    reached += stretch
  }
  const leave = touched[0] ?? { r: 0, z: 0 }
  const free = along - knotToLeave
  return { r: leave.r - free * Math.sin(angle), z: leave.z + free * Math.cos(angle) }
}

/**
 * How far the centre of gravity moves outwards over a knot of the cradle that a pot is tilted over, m: (z_g - z_k) tan t
 * and its offset; none of a centre below the knot. While that is less than the knot's distance from the axis, it rights itself.
 */
export const outwardMove = (centre: Metres, knot: Metres, tilt: Radians, offset: Metres): Metres => metres(Math.max(0, centre - knot) * Math.tan(tilt) + offset)

/**
 * Gap between neighbouring strands of m evenly round a pot, at radius r: 2 r sin(pi / m).
 * @example strandGap(6, metres(0.1)) // 0.1
 */
export const strandGap = (strands: number, radius: Metres): Metres => metres(2 * radius * Math.sin(Math.PI / strands))

/**
 * The girth, m, that the zigzag between two rows of m knots each can open to, the rows `apart` along a strand: 2 m times that.
 * @example netGirth(4, metres(0.08)) // 0.64
 */
export const netGirth = (knots: number, apart: Metres): Metres => metres(2 * knots * apart)
