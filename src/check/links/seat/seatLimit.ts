import { TIPS_ABOVE } from '../../../catalogue/seat'
import type { CaseCode } from '../../../load/loadCases'
import { metres, radians } from '../../../quantity/si'
import { lockedSeatLimit, slidingRatio, slidingSeatLimit } from '../../../statics/seat'
import { slidingHeightLimit } from '../../../statics/seat/slidingHeightLimit'
import { lasts, solveSlidingSeat } from '../../../statics/seat/slidingSeat'
import { strandedSeatLimit, type SeatStrand } from '../../../statics/strandedSeat'
import type { TautPath } from '../../../statics/tautPath'
import { hasCorners } from '../../legPlaces'
import type { Term } from '../../linkResult'
import { tensionsOf } from '../../slingBattery'
import type { Solved } from '../../solved'
import { entering, worked } from '../../term'
import { legStrain } from '../legStrain'
import { seatOf } from './seatOf'

/** How far above the leave points the centre of gravity may stand, m, and the lines it follows from; symbol y. */
export interface SeatLimit {
  readonly limit: number
  readonly terms: readonly Term[]
}

const SLIDING = 'energy of a pot on strands that slide without friction'

/** Whether all legs are alike round a circle and hang from one point, so that the closed forms hold. */
const isRound = ({ hanger: { answers }, geometry: { ringRadius, spread } }: Solved): boolean => !hasCorners(answers) && ringRadius === 0 && !spread

/** The limit of strands that the cradle's first knots lock to the pot. */
export function lockedLimit(solved: Solved, code: CaseCode, path: TautPath): SeatLimit {
  const strain = legStrain(solved, code)
  const strainTerm = entering('strain', 'eps', strain, '1', 'computed', 'strain of the legs, half as stiff')
  if (!isRound(solved)) {
    const limit = limitOfStrands(solved, code, true)
    return { limit, terms: [strainTerm, entering('lockedLimit', 'y', limit, 'm', 'computed', 'stability of a sling with these strands, sway and tilt in its weakest direction')] }
  }
  const limit = lockedSeatLimit(metres(path.leave.r), path.free, metres(path.top - path.leave.z), strain)
  return { limit, terms: [strainTerm, worked('lockedLimit', 'y', limit, 'm', 'h * a^2 / (2 * eps * l^2 + a^2)', 'stability of a symmetric sling, sway and tilt')] }
}

/** The limit of strands that run over the pot without friction. */
export function slidingLimit(solved: Solved, code: CaseCode, path: TautPath): SeatLimit {
  if (!isRound(solved)) {
    const limit = limitOfStrands(solved, code, false)
    return { limit, terms: [entering('slidingLimit', 'y', limit, 'm', 'computed', `${SLIDING}, in its weakest direction`)] }
  }
  const seat = { leaveRadius: metres(path.leave.r), baseRadius: path.knotToBaseEdge, free: path.free, rise: metres(path.top - path.leave.z) }
  const limit = slidingSeatLimit(seat)
  return {
    limit,
    terms: [
      entering('baseRadius', 'b', path.knotToBaseEdge, 'm', 'computed', 'base edge'),
      worked('slidingRatio', 'q', slidingRatio(seat), '1', 'a^2 / (2 * l * b) - a^2 / (2 * l^2)', SLIDING),
      worked('slidingLimit', 'y', limit, 'm', 'h * q / (1 + q)', SLIDING),
    ],
  }
}

/**
 * With strands of any places, the lesser of two: as they hang, and taken to hang from a point over the pot: from where a stick carries them; of a level
 * ring from the hook, or from where the legs would meet if they ran on, whichever is worse, for the ring may tilt.
 */
function limitOfStrands(solved: Solved, code: CaseCode, locked: boolean): number {
  const { hanger: { answers }, geometry: { legs, ringRadius } } = solved
  const strain = legStrain(solved, code)
  const drawn = solved.slings?.[code].drawn
  const tensions = drawn === undefined ? [] : tensionsOf(drawn)
  const lift = legs.map(({ path }, i) => (tensions[i] ?? 1) * Math.cos(path.angle))
  const all = lift.reduce((sum, x) => sum + x, 0)
  const strands = legs.map(({ angle, path, strand }, i): SeatStrand => {
    const at = (r: number): readonly [number, number] => [r * Math.cos(angle), r * Math.sin(angle)]
    return { leave: at(path.leave.r), edge: at(path.knotToBaseEdge), share: (lift[i] ?? 0) / all, strain, stretches: locked ? path.free : strand }
  })
  const rise = Math.min(...legs.map(({ path }) => path.top - path.leave.z))
  const out = Math.min(...legs.map(({ path }) => path.leave.r))
  const points = ringRadius === 0 ? [rise] : [rise + answers['ring.rise'], ...(out > ringRadius ? [(rise * out) / (out - ringRadius)] : [])]
  const limit = Math.min(...points.map((from) => strandedSeatLimit({ strands, rise: metres(from), locked })))
  return locked ? limit : Math.min(limit, limitAsHung(solved, code, limit))
}

/** So fine that a heavier pot never seems to stand a hair better. */
const WITHIN = metres(1e-7)

/**
 * With every strand from its own upper end, above the leave points, if that is less than a height known to count;
 * solved as it hangs, so that it tips where it would lean too far. -Infinity where it finds no rest even with its
 * centre of gravity at its base.
 */
function limitAsHung(solved: Solved, code: CaseCode, most: number): number {
  const { geometry: { path } } = solved
  const seat = seatOf(solved, code)
  if (seat === null || !path.ok || !Number.isFinite(most)) return most
  const at = path.leave.z + most
  const mostTilt = radians(TIPS_ABOVE.value)
  if (lasts(seat, solveSlidingSeat({ ...seat, cg: [0, 0, at] }), mostTilt)) return most
  const found = slidingHeightLimit(seat, { least: metres(Math.min(0, at)), most: metres(at), within: WITHIN, mostTilt })
  return found.ok ? found.limit - path.leave.z : -Infinity
}
