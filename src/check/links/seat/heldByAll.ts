import type { CaseCode } from '../../../load/loadCases'
import { metres } from '../../../quantity/si'
import { heldOffset } from '../../../statics/seat/knotFriction'
import { pinnedAt } from '../../../statics/seat/slidingSeat'
import type { Solved } from '../../solved'
import { seatOf } from './seatOf'

/**
 * The largest offset of the weight, m, up to `most`, at which the pulls of all strands can balance at the gathering
 * knot by friction over rim and base edge: of four strands one pair bears all the difference, which leaves it half of
 * what a pair alone would hold. `most` where there is no sling to tell their pulls.
 */
export function heldByAll(solved: Solved, code: CaseCode, friction: number, most: number): number {
  const seat = seatOf(solved, code)
  if (seat === null || solved.plan === null) return most
  return heldOffset({
    sling: pinnedAt(seat), turns: solved.geometry.legs.map(({ path }) => path.turn), edges: seat.edge.map(([x, y]) => [x, y] as const),
    friction, directions: solved.plan.asides, most: metres(most),
  }).offset
}
