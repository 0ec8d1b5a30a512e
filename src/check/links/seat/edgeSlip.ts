import { FIBRE_PROPERTIES } from '../../../catalogue/cords'
import { hasCorners } from '../../legPlaces'
import type { Solved } from '../../solved'

/** Strands that lie on a straight edge elsewhere than in its middle. */
export interface EdgeSlip {
  /** Legs, from 1, whose strands slip along it unless held. */
  readonly legs: readonly number[]
  readonly atCorners: boolean
}

/**
 * Strands over a straight edge pull towards its middle, where their way round the pot is shortest: one that lies
 * at an angle d from there, seen from above, needs friction of at least tan d to stay (equilibrium along the edge,
 * the pull of its free part and of its way down both lying in one upright plane). A strand over a corner stands
 * at the ends of two sides and needs as much as the worse of them. None of a pot without corners, or where the
 * friction of cord on pot is enough.
 */
export function edgeSlip({ hanger: { answers }, geometry: { legs, outline } }: Solved): EdgeSlip | null {
  const rim = outline.pot.at(-1)
  if (!hasCorners(answers) || rim === undefined) return null
  const corner = Math.atan2(rim.across, rim.along)
  const needs = legs.map(({ angle }) => {
    // Folded into the quarter between the middles of two sides.
    const folded = Math.acos(Math.min(1, Math.abs(Math.cos(angle))))
    const atCorner = Math.abs(folded - corner) < 1e-6
    return { atCorner, needed: Math.tan(atCorner ? Math.max(corner, Math.PI / 2 - corner) : folded < corner ? folded : Math.PI / 2 - folded) }
  })
  const friction = FIBRE_PROPERTIES[answers['cord.fibre']].onPot.value
  const slipping = needs.flatMap(({ needed }, i) => (needed > friction ? [i + 1] : []))
  if (slipping.length === 0) return null
  return { legs: slipping, atCorners: slipping.every((leg) => needs[leg - 1]?.atCorner === true) }
}

/** How far from the axis the strands hold the pot in the direction in which it tips most easily, m: of a round pot where they leave it. */
export function leastLever({ hanger: { answers }, geometry: { legs } }: Solved, round: number): number {
  if (!hasCorners(answers)) return round
  const most = (part: (angle: number) => number): number => Math.max(...legs.map(({ angle, path }) => Math.abs(path.leave.r * part(angle))))
  return Math.min(most(Math.cos), most(Math.sin))
}
