import { FIBRE_PROPERTIES } from '../../catalogue/cords'
import type { CaseCode } from '../../load/loadCases'
import { metres } from '../../quantity/si'
import { noSlipOffset, slidingSeatLimit } from '../../statics/seat'
import type { Finding } from '../finding'
import { assessLink, type LinkResult } from '../linkResult'
import { CENTRE_MARGIN } from '../solve'
import type { Solved } from '../solved'
import { entering, worked } from '../term'
import { worse, type Verdict } from '../verdict'

const CASES: readonly CaseCode[] = ['dry', 'watered', 'flooded']

/**
 * Whether the pot can tip out of its seat. Below the sliding limit (strands free to run) it cannot;
 * above it only knots that lock the strands, or friction, hold it. The pinned sling must stay upright
 * with a margin besides.
 */
export function seatLink(solved: Solved): readonly LinkResult[] {
  const { path } = solved.geometry
  if (!path.ok) return []
  return CASES.map((code) => {
    const limit = slidingSeatLimit({ leaveRadius: metres(path.leave.r), baseRadius: path.knotToBaseEdge, free: path.free, rise: metres(path.top - path.leave.z) })
    const centre = solved.potted[solved.loads[code].case.state].centre
    const judged = judge(solved, centre + CENTRE_MARGIN <= path.leave.z + limit)
    return assessLink({
      link: 'seat', part: 'sliding', side: 'hanger', case: code,
      demand: { value: centre + CENTRE_MARGIN, unit: 'm' },
      capacity: { value: path.leave.z + limit, unit: 'm', basis: 'computed', source: 'sliding limit of the seat' },
      factors: [],
      grade: 'table',
      overallFactor: null,
      atLeast: judged.atLeast,
      findings: judged.findings,
      terms: seatTerms(solved, centre, limit),
    })
  }).map(settle)
}

interface Judgement {
  readonly atLeast: Verdict
  readonly findings: readonly Finding[]
}

function judge(solved: Solved, belowLimit: boolean): Judgement {
  const { answers } = solved.hanger
  const { path, firstKnots } = solved.geometry
  const findings: Finding[] = []
  let atLeast: Verdict = 'holds'
  if (path.ok && answers['cradle.kind'] === 'net') {
    const first = answers['cradle.first']
    if (firstKnots === 'under the base') findings.push({ code: 'CRADLE_UNDER_BASE', first, least: path.knotToBaseEdge })
    if (firstKnots === 'above the rim') findings.push({ code: 'CRADLE_ABOVE_RIM', first, most: path.knotToLeave })
  }
  if (solved.pinnedMargin === false) {
    findings.push({ code: 'SEAT_TOPPLES' })
    atLeast = 'fails'
  }
  if (belowLimit) return { atLeast, findings }
  if (locks(solved)) return { atLeast, findings: [...findings, { code: 'SEAT_LOCKED' }] }
  const offset = answers['seat.offset']
  const mu = FIBRE_PROPERTIES[answers['cord.fibre']].onPot.value
  if (path.ok && offset / path.leave.r <= noSlipOffset(mu, path.turn)) {
    return { atLeast: worse(atLeast, 'just holds'), findings: [...findings, { code: 'SEAT_ON_FRICTION' }] }
  }
  return { atLeast: 'fails', findings: [...findings, { code: 'SEAT_SLIDES' }] }
}

/** The cradle's first knots hold the strands on the pot's side where neighbouring legs are tied together there. */
const locks = (solved: Solved): boolean => solved.hanger.answers['cradle.kind'] === 'net' && solved.geometry.firstKnots === 'on the side'

/** Above the sliding limit the ratio alone would fail a seat that knots or friction hold: the judgement decides. */
function settle(result: LinkResult): LinkResult {
  const above = result.utilisation !== null && result.utilisation > 1
  if (!above) return result
  const codes = result.findings.map((f) => f.code)
  if (codes.includes('SEAT_TOPPLES') || codes.includes('SEAT_SLIDES')) return result
  return { ...result, verdict: codes.includes('SEAT_LOCKED') ? 'holds' : 'just holds' }
}

function seatTerms(solved: Solved, centre: number, limit: number): LinkResult['terms'] {
  const { path } = solved.geometry
  if (!path.ok) return []
  const a = path.leave.r
  const b = path.knotToBaseEdge
  const rise = path.top - path.leave.z
  const q = (a * a) / (2 * path.free * b) - (a * a) / (2 * path.free * path.free)
  return [
    entering('centreHeight', 'z_g', centre, 'm', 'computed', 'centre of gravity above the base'),
    entering('centreMargin', 'z_m', CENTRE_MARGIN, 'm', 'common practice', 'margin on the centre of gravity'),
    worked('demand', 'E', centre + CENTRE_MARGIN, 'm', 'z_g + z_m', 'height to be held'),
    entering('leaveRadius', 'a', a, 'm', 'computed', 'where the strands leave the pot'),
    entering('baseRadius', 'b', b, 'm', 'computed', 'base edge'),
    entering('freeLength', 'l', path.free, 'm', 'computed', 'free length of a leg'),
    entering('rise', 'h', rise, 'm', 'computed', 'its height'),
    entering('leaveHeight', 'z_l', path.leave.z, 'm', 'computed', 'height of the leave points above the base'),
    worked('slidingRatio', 'q', q, '1', 'a^2 / (2 * l * b) - a^2 / (2 * l^2)', 'energy of strands that slide without friction'),
    worked('slidingLimit', 'y', limit, 'm', 'h * q / (1 + q)', 'energy of strands that slide without friction'),
    worked('capacity', 'R', path.leave.z + limit, 'm', 'z_l + y', 'sliding limit of the seat'),
  ]
}
