import { FIBRE_PROPERTIES } from '../../catalogue/cords'
import { CENTRE_MARGIN, LEAST_OFFSET } from '../../catalogue/seat'
import { CASES_AT_REST, type CaseCode } from '../../load/loadCases'
import { noSlipOffset } from '../../statics/seat'
import type { TautPath } from '../../statics/tautPath'
import type { Finding } from '../finding'
import { legsMatchCorners } from '../legPlaces'
import { assessLink, type Evidence, type LinkResult, type Term } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import type { Verdict } from '../verdict'
import { temperAssumed } from './assumedPart'
import { edgeSlip, leastLever } from './seat/edgeSlip'
import { heldByAll } from './seat/heldByAll'
import { lockedLimit, slidingLimit } from './seat/seatLimit'
import { temperByShape } from './shapeDoubt'

/**
 * Whether the pot can tip out of its seat. Where the cradle's first knots lock the strands on the
 * pot's side they count as fixed to it; else its centre of gravity must stay below the sliding limit;
 * above that only friction holds it, at best "just". The pinned sling must stay upright with a margin
 * in any case. Demand and capacity are heights above the base, m, or offsets from the axis where
 * friction decides. Findings: SEAT_LOCKED, SEAT_ON_FRICTION, SEAT_SLIDES, SEAT_TOPPLES,
 * CRADLE_UNDER_BASE, CRADLE_ABOVE_RIM, STRANDS_SLIP_ALONG, SHAPE_NOT_RECKONED, VESSEL_ASSUMED. No results where the strands do not reach round the pot.
 */
export function seatLink(solved: Solved): readonly LinkResult[] {
  const { path } = solved.geometry
  if (!path.ok) return []
  const placed = legsMatchCorners(solved.hanger.answers) ? temperAssumed(solved, ['pot.strandsAt'], onPot(solved, path)) : onPot(solved, path)
  return temperByShape(solved, placed)
}

function onPot(solved: Solved, path: TautPath): readonly LinkResult[] {
  if (locks(solved)) {
    const locked = CASES_AT_REST.map((code) => assessLink(byLockedStrands(solved, code, path)))
    // Nothing holds a pot better than locked strands: what tips with them tips in any other cradle.
    return locked.flatMap((l) => (l.verdict === 'fails' ? [l] : temperAssumed(solved, ['cradle.kind', 'cradle.first'], [l])))
  }
  return CASES_AT_REST.map((code) => {
    const sliding = assessLink(bySliding(solved, code, path))
    return sliding.utilisation !== null && sliding.utilisation <= 1 ? sliding : assessLink(byFriction(solved, code, path))
  })
}

/** The cradle's first knots hold the strands on the pot's side where neighbouring legs are tied together there. */
const locks = (solved: Solved): boolean => solved.hanger.answers['cradle.kind'] === 'net' && solved.geometry.firstKnots === 'on the side'

type Base = Omit<Evidence, 'part' | 'demand' | 'capacity' | 'terms' | 'grade'>

function base(solved: Solved, code: CaseCode, more: readonly Finding[]): Base {
  const topples = solved.pinnedMargin === false
  const slip = edgeSlip(solved)
  const held = locks(solved)
  const findings: Finding[] = [...cradleFindings(solved), ...more]
  if (slip !== null) findings.push({ code: 'STRANDS_SLIP_ALONG', legs: slip.legs, atCorners: slip.atCorners, held })
  if (topples) findings.push({ code: 'SEAT_TOPPLES' })
  return { link: 'seat', side: 'hanger', case: code, factors: [], overallFactor: null, atLeast: topples ? 'fails' : slip !== null && !held ? 'not enough known' : 'holds', findings }
}

function cradleFindings(solved: Solved): readonly Finding[] {
  const { firstKnots, onSide } = solved.geometry
  const { answers } = solved.hanger
  if (answers['cradle.kind'] !== 'net') return []
  const first = answers['cradle.first']
  if (firstKnots === 'under the base') return [{ code: 'CRADLE_UNDER_BASE', first, least: onSide.from }]
  return firstKnots === 'above the rim' ? [{ code: 'CRADLE_ABOVE_RIM', first, most: onSide.to }] : []
}

function height(solved: Solved, code: CaseCode, path: TautPath): { readonly centre: number; readonly terms: readonly Term[] } {
  const centre = solved.potted[solved.loads[code].case.state].centre
  const rise = path.top - path.leave.z
  return {
    centre,
    terms: [
      entering('centreHeight', 'z_g', centre, 'm', 'computed', 'centre of gravity above the base'),
      fromCatalogue('centreMargin', 'z_m', CENTRE_MARGIN),
      worked('demand', 'E', centre + CENTRE_MARGIN.value, 'm', 'z_g + z_m', 'height to be held'),
      entering('leaveRadius', 'a', path.leave.r, 'm', 'computed', 'where the strands leave the pot'),
      entering('freeLength', 'l', path.free, 'm', 'computed', 'free length of a leg'),
      entering('rise', 'h', rise, 'm', 'computed', 'its height'),
      entering('leaveHeight', 'z_l', path.leave.z, 'm', 'computed', 'height of the leave points above the base'),
    ],
  }
}

function byLockedStrands(solved: Solved, code: CaseCode, path: TautPath): Evidence {
  const { centre, terms } = height(solved, code, path)
  const { limit, terms: limitTerms } = lockedLimit(solved, code, path)
  const needed = centre + CENTRE_MARGIN.value > path.leave.z + slidingLimit(solved, code, path).limit
  return {
    ...base(solved, code, needed ? [{ code: 'SEAT_LOCKED' }] : []),
    part: 'locked',
    demand: { value: centre + CENTRE_MARGIN.value, unit: 'm' },
    capacity: { value: path.leave.z + limit, unit: 'm', basis: 'computed', source: 'tipping limit of a pot with its strands locked' },
    grade: 'table',
    terms: [
      ...terms,
      ...limitTerms,
      worked('capacity', 'R', path.leave.z + limit, 'm', 'z_l + y', 'tipping limit with strands locked'),
    ],
  }
}

function bySliding(solved: Solved, code: CaseCode, path: TautPath): Evidence {
  const { centre, terms } = height(solved, code, path)
  const { limit, terms: limitTerms } = slidingLimit(solved, code, path)
  return {
    ...base(solved, code, []),
    part: 'sliding',
    demand: { value: centre + CENTRE_MARGIN.value, unit: 'm' },
    capacity: { value: path.leave.z + limit, unit: 'm', basis: 'computed', source: 'sliding limit of the seat' },
    grade: 'table',
    terms: [
      ...terms,
      ...limitTerms,
      worked('capacity', 'R', path.leave.z + limit, 'm', 'z_l + y', 'sliding limit of the seat'),
    ],
  }
}

function byFriction(solved: Solved, code: CaseCode, path: TautPath): Evidence {
  const { answers } = solved.hanger
  const friction = FIBRE_PROPERTIES[answers['cord.fibre']].onPot
  const lever = leastLever(solved, path.leave.r)
  const pair = noSlipOffset(friction.value, path.turn)
  const all = heldByAll(solved, code, friction.value, pair * lever) / lever
  const share = Math.min(pair, all)
  const held = share * lever
  const offset = Math.max(answers['seat.offset'], LEAST_OFFSET.value)
  const slides = offset > held
  const judged = base(solved, code, [{ code: slides ? 'SEAT_SLIDES' : 'SEAT_ON_FRICTION' }])
  const atLeast: Verdict = slides ? 'fails' : judged.atLeast
  return {
    ...judged,
    atLeast,
    part: 'friction',
    demand: { value: offset, unit: 'm' },
    capacity: { value: held, unit: 'm', basis: 'computed', source: 'no-slip test of the strands at the gathering knot' },
    // Friction on a wet glazed rim is nobody's measured number.
    grade: 'model',
    terms: [
      entering('seatOffset', 'E', offset, 'm', 'common practice', 'offset of the weight from the axis, 5 mm at least'),
      entering('leaveRadius', 'a', lever, 'm', 'computed', 'where the strands leave the pot, in the direction in which it tips most easily'),
      fromCatalogue('frictionOnPot', 'mu_pot', friction),
      entering('turnAngle', 'alpha', path.turn, 'rad', 'computed', 'turn over rim and base edge'),
      all < pair
        ? entering('frictionShare', 'e_a', share, '1', 'computed', 'tensions T e^(+-mu alpha) of all strands must balance at the knot, in the worst direction')
        : worked('frictionShare', 'e_a', share, '1', 'tanh(mu_pot * alpha)', 'tensions T e^(+-mu alpha) of one pair must balance at the knot'),
      worked('capacity', 'R', held, 'm', 'a * e_a', 'offset that friction can hold'),
    ],
  }
}
