import { CENTRE_MARGIN, TILT_BY_HAND } from '../../catalogue/seat'
import { HOLDS_LIMIT } from '../../catalogue/reserves'
import { BUNDLE_PACKING } from '../../catalogue/knots'
import { UNMEASURED_DIAMETER } from '../../catalogue/cords'
import { CASES_AT_REST, type CaseCode } from '../../load/loadCases'
import type { Level } from '../../load/outline'
import { sectionReach } from '../../load/section'
import { metres, radians } from '../../quantity/si'
import { netGirth, outwardMove, pointAlong, strandGap } from '../../statics/cradleFit'
import type { TautPath } from '../../statics/tautPath'
import type { Finding } from '../finding'
import { knotCord } from '../knotCord'
import { assessLink, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import type { Verdict } from '../verdict'
import { temperAssumed } from './assumedPart'
import { temperByShape } from './shapeDoubt'

/**
 * Whether the pot fits its cradle, by geometry, m. Tilted by hand over the highest knots that close the gaps between the
 * legs, its centre of gravity must still stand within them, else it walks out; its base must be wider than the bundle it stands on;
 * and where a second row of knots is told, the net between both rows must open round the widest part that goes through it.
 * Findings: CRADLE_LOW, CRADLE_GAPS, CRADLE_SECOND_LOW, BASE_ON_KNOT, NET_TOO_NARROW, SHAPE_NOT_RECKONED, VESSEL_ASSUMED.
 * No results of a panel, or where the strands do not reach round the pot.
 */
export function cradleLink(solved: Solved): readonly LinkResult[] {
  const { path, panel } = solved.geometry
  if (!path.ok || panel !== null) return []
  return temperByShape(solved, [...walkOut(solved, path), onKnot(solved, path), ...netOpens(solved)])
}

/** A height of the pot that is closed all round by knots, and how far they lie from the axis, m. */
interface ClosedTo {
  readonly row: 'none' | 'first' | 'second'
  readonly r: number
  readonly z: number
}

const least = (points: readonly { readonly r: number; readonly z: number }[]): { readonly r: number; readonly z: number } =>
  points.reduce((a, b) => ({ r: Math.min(a.r, b.r), z: Math.min(a.z, b.z) }))

/** The base edge where it is nearest the axis. */
const baseEdge = ({ geometry: { legs, between } }: Solved): ClosedTo => ({ row: 'none', z: 0, r: Math.min(...[...legs, ...between].map(({ path }) => path.knotToBaseEdge)) })

/** A second row is one only above the first. */
const secondRow = ({ 'cradle.kind': kind, 'cradle.first': first, 'cradle.second': second }: Solved['hanger']['answers']): number | null =>
  (kind === 'net' && second !== null && second > first ? second : null)

function closedTo(solved: Solved): ClosedTo {
  const { hanger: { answers }, geometry: { between, firstKnots, legs } } = solved
  if (answers['cradle.kind'] !== 'net' || firstKnots !== 'on the side') return baseEdge(solved)
  const second = secondRow(answers)
  if (second !== null) return { row: 'second', ...least(legs.map(({ path }) => pointAlong(path, metres(second)))) }
  return { row: 'first', ...least(between.map(({ path }) => pointAlong(path, metres(answers['cradle.first'])))) }
}

function walkOut(solved: Solved, path: TautPath): readonly LinkResult[] {
  const closed = closedTo(solved)
  const results = CASES_AT_REST.map((code) => overKnots(solved, code, path, closed))
  if (closed.row === 'none') return results
  // Where the pot would stay without any knots, it does not matter that they were only assumed.
  const open = CASES_AT_REST.map((code) => overKnots(solved, code, path, baseEdge(solved)))
  const bySecond = closed.row === 'second'
  return results.flatMap((result, i) => (open[i]?.verdict === 'holds' || bySecond ? [result] : temperAssumed(solved, ['cradle.kind', 'cradle.first'], [result])))
}

function overKnots(solved: Solved, code: CaseCode, path: TautPath, { row, r, z }: ClosedTo): LinkResult {
  const { answers } = solved.hanger
  const centre = solved.potted[solved.loads[code].case.state].centre
  const move = outwardMove(metres(centre + CENTRE_MARGIN.value), metres(z), radians(TILT_BY_HAND.value), metres(answers['seat.offset']))
  const { findings, atLeast } = row === 'none' ? gaps(solved, path) : { findings: [], atLeast: 'holds' as Verdict }
  const low: readonly Finding[] = move > r * HOLDS_LIMIT.table.value && answers['cradle.kind'] === 'net' ? [{ code: 'CRADLE_LOW', first: answers['cradle.first'], needed: firstNeeded(solved, centre) }] : []
  return assessLink({
    link: 'cradle', part: 'overKnots', side: 'hanger', case: code,
    demand: { value: move, unit: 'm' },
    capacity: { value: r, unit: 'm', basis: 'computed', source: row === 'none' ? 'base edge' : 'knots of the cradle on the pot’s side' },
    factors: [], grade: 'table', overallFactor: null, atLeast,
    findings: [...findings, ...low],
    terms: [
      entering('centreHeight', 'z_g', centre, 'm', 'computed', 'centre of gravity above the base'),
      fromCatalogue('centreMargin', 'z_m', CENTRE_MARGIN),
      entering('knotsHeight', 'z_k', z, 'm', 'computed', 'up to there the gaps between the legs are closed'),
      fromCatalogue('tiltByHand', 't', TILT_BY_HAND),
      entering('seatOffset', 'e', answers['seat.offset'], 'm', 'common practice', 'offset of the weight from the axis'),
      worked('demand', 'E', move, 'm', 'max(0, z_g + z_m - z_k) * tan(t) + e', 'way of the centre of gravity outwards as the pot is tilted over the knots'),
    ],
  })
}

/** Between strands that no knots join, the base can slip out where the gap is as wide as it. */
function gaps({ hanger: { answers } }: Solved, path: TautPath): { readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const gap = strandGap(answers['make.legs'], metres(path.leave.r))
  const base = 2 * path.knotToBaseEdge
  return gap < base ? { findings: [], atLeast: 'holds' } : { findings: [{ code: 'CRADLE_GAPS', gap, base }], atLeast: 'just holds' }
}

/** Steps in which a height for the first knots is looked for, m. */
const STEP = 0.005

/** From where on first knots would hold the pot well, m along a strand from the gathering knot; null if nowhere on its side. */
function firstNeeded({ hanger: { answers }, geometry: { between, onSide } }: Solved, centre: number): number | null {
  for (let along = Math.ceil(onSide.from / STEP + 1e-9) * STEP; along <= onSide.to; along += STEP) {
    const { r, z } = least(between.map(({ path }) => pointAlong(path, metres(along))))
    if (outwardMove(metres(centre + CENTRE_MARGIN.value), metres(z), radians(TILT_BY_HAND.value), metres(answers['seat.offset'])) <= r * HOLDS_LIMIT.table.value) return along
  }
  return null
}

/** What the base stands on: where it is no wider than the gathered strands, the pot rides on the knot. */
function onKnot(solved: Solved, path: TautPath): LinkResult {
  const { answers } = solved.hanger
  const { bundle, strands } = knotCord(answers)
  const base = 2 * Math.min(baseEdge(solved).r, path.knotToBaseEdge)
  return assessLink({
    link: 'cradle', part: 'onKnot', side: 'hanger', case: 'watered',
    demand: { value: bundle, unit: 'm' },
    capacity: { value: base, unit: 'm', basis: 'computed', source: 'width of what stands on the strands' },
    factors: [], grade: 'table', overallFactor: null, atLeast: 'holds',
    findings: bundle > base * HOLDS_LIMIT.table.value ? [{ code: 'BASE_ON_KNOT', bundle, base }] : [],
    terms: [
      entering('gatheredStrands', 'n_g', strands, '1', 'computed', 'strands gathered under the pot, with the loop of the wrapping cord'),
      entering('diameter', 'd', answers['cord.diameter'] ?? UNMEASURED_DIAMETER.value, 'm', answers['cord.diameter'] === null ? UNMEASURED_DIAMETER.basis : 'your own', 'diameter of the cord'),
      fromCatalogue('bundlePacking', 'p', BUNDLE_PACKING),
      worked('demand', 'E', bundle, 'm', 'd * sqrt(n_g / p)', 'width of the gathered strands'),
    ],
  })
}

/** How far the straight sides between these levels reach from the axis up to a height, m; 0 of what begins above it. */
const widestUpTo = (levels: readonly Level[], top: number): number => Math.max(0, ...levels.map((level, i) => {
  if (level.z <= top) return sectionReach(level)
  const below = levels[i - 1]
  if (below === undefined || below.z > top) return 0
  return sectionReach(below) + ((sectionReach(level) - sectionReach(below)) * (top - below.z)) / (level.z - below.z)
}))

/** Whether the net between its two rows opens round the widest part of the pot that has to go through it. */
function netOpens(solved: Solved): readonly LinkResult[] {
  const { hanger: { answers }, geometry: { legs, outline } } = solved
  const second = secondRow(answers)
  const base = { link: 'cradle', part: 'netOpens', side: 'hanger', case: 'watered', factors: [], grade: 'fit', overallFactor: null } as const
  if (second === null) {
    const first = answers['cradle.first']
    return answers['cradle.kind'] !== 'net' || answers['cradle.second'] === null ? [] : [assessLink({ ...base, demand: null, capacity: null, atLeast: 'not enough known', findings: [{ code: 'CRADLE_SECOND_LOW', first, second: answers['cradle.second'] }], terms: [] })]
  }
  const top = Math.max(...legs.map(({ path }) => pointAlong(path, metres(second)).z))
  const widest = Math.max(...[outline.pot, outline.saucer ?? [], outline.cover ?? []].map((levels) => widestUpTo(levels, top)))
  const girth = 2 * Math.PI * widest
  const apart = second - answers['cradle.first']
  const opens = netGirth(answers['make.legs'], metres(apart))
  return [assessLink({
    ...base,
    demand: { value: girth, unit: 'm' },
    capacity: { value: opens, unit: 'm', basis: 'computed', source: 'round the net between its two rows, pulled open' },
    atLeast: 'holds',
    findings: girth > opens ? [{ code: 'NET_TOO_NARROW', girth, opens, second: answers['cradle.first'] + girth / (2 * answers['make.legs']) }] : [],
    terms: [
      entering('legs', 'm', answers['make.legs'], '1', 'your own', 'knots in each row, one for each leg'),
      entering('rowsApart', 's', apart, 'm', 'your own', 'from the first row to the second along a strand'),
      worked('capacity', 'R', opens, 'm', '2 * m * s', 'round the net between its two rows, pulled open'),
      entering('demand', 'E', girth, 'm', 'computed', 'round the widest part that goes through'),
    ],
  })]
}
