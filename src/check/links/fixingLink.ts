import { ALLOWABLE_DURATION, PERMANENT_IN_TIMBER, TIMBER_DURATION, TIMBER_GRAVITY } from '../../catalogue/timber'
import { LEAST_PENETRATION, WITHDRAWAL_ALLOWABLE, WITHDRAWAL_SCATTER, WITHDRAWAL_ULTIMATE } from '../../catalogue/withdrawal'
import { value, type Value } from '../../catalogue/basis'
import { PROOF_PULL, RESERVE_ON_ALLOWABLE, RESERVE_ON_UNPROVED_SCREW } from '../../catalogue/reserves'
import { CASES_WHOLE, type CaseCode, type LoadCase } from '../../load/loadCases'
import { metres, type Metres } from '../../quantity/si'
import type { Finding } from '../finding'
import { assessLink, factor, reserve, type Evidence, type LinkResult, type Term } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, safeValueReserve, strengthReserve } from '../timeFactors'
import type { Verdict } from '../verdict'
import { allowableWithdrawal, ultimateWithdrawal } from '../withdrawal'
import { madisonShare } from '../woodStrength'
import { temperAssumed } from './assumedPart'
import { ratedFactors } from './ringLink'
import { weightTerms } from './weightTerms'

/**
 * What holds the hook in the building: a wood screw (or screw hook) in the side grain of a joist by
 * both published routes (USDA Wood Handbook on the strength, National Design Specification on the
 * allowable), or a packet rating; otherwise refused or not known, saying what would settle it:
 * PLASTERBOARD_REFUSED, SUBSTRATE_UNKNOWN, MASONRY_NEEDS_RATING, PENETRATION_TOO_SHORT, PULL_IN_PLACE.
 * Straight pull out, N; side pull is the shank's.
 */
export function fixingLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const substrate = answers['place.substrate']
  return CASES_WHOLE.flatMap((code) => {
    if (substrate === 'plasterboard') return [withoutCapacity(solved, code, { code: 'PLASTERBOARD_REFUSED' }, 'fails')]
    if (substrate === 'unknown') return [withoutCapacity(solved, code, { code: 'SUBSTRATE_UNKNOWN' }, 'not enough known')]
    if (answers['fixing.rated'] !== null) return [rated(solved, code, answers['fixing.rated'])]
    if (substrate === 'masonry') return [withoutCapacity(solved, code, { code: 'MASONRY_NEEDS_RATING' }, 'not enough known')]
    return temperAssumed(solved, ['fixing.penetration', 'fixing.diameter'], solved.loads[code].case.accidental ? [ultimateRoute(solved, code)] : [ultimateRoute(solved, code), allowableRoute(solved, code)])
  })
}

type Base = Pick<Evidence, 'link' | 'side' | 'case' | 'demand' | 'overallFactor'>
const base = (solved: Solved, code: CaseCode): Base => ({ link: 'fixing', side: 'place', case: code, demand: { value: solved.loads[code].weight, unit: 'N' }, overallFactor: null })

function withoutCapacity(solved: Solved, code: CaseCode, finding: Finding, atLeast: Verdict): LinkResult {
  return assessLink({ ...base(solved, code), part: 'whole', capacity: null, factors: [], grade: 'table', atLeast, findings: [finding], terms: weightTerms(solved, code) })
}

function rated(solved: Solved, code: CaseCode, rating: number): LinkResult {
  const { factors, terms } = ratedFactors(solved, code)
  return assessLink({
    ...base(solved, code), part: 'rated', capacity: { value: rating, unit: 'N', basis: 'your own', source: 'packet rating of the fixing in this substrate' },
    factors, grade: 'rated', atLeast: 'holds', findings: [], terms: [...weightTerms(solved, code), ...terms],
  })
}

/** Shared by both routes: what is screwed in, and whether it is enough to be counted at all. */
function screw(solved: Solved): { readonly diameter: Metres; readonly terms: readonly Term[]; readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const { answers } = solved.hanger
  const least = LEAST_PENETRATION.woodScrew.value * answers['fixing.diameter']
  const short = answers['fixing.penetration'] < least
  // Below its least penetration a thick screw holds no better than a thinner one that reaches its own.
  const diameter = metres(Math.min(answers['fixing.diameter'], answers['fixing.penetration'] / LEAST_PENETRATION.woodScrew.value))
  return {
    diameter,
    terms: [
      entering('screwDiameter', 'D', diameter, 'm', 'your own', short ? 'thread counted no thicker than a sixth of its penetration' : 'outside diameter of the thread'),
      entering('penetration', 'L', answers['fixing.penetration'], 'm', 'your own', 'thread in the timber, board not counted'),
    ],
    findings: short ? [{ code: 'PENETRATION_TOO_SHORT', given: answers['fixing.penetration'], least }] : [],
    atLeast: 'holds',
  }
}

function ultimateRoute(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const gravity = TIMBER_GRAVITY[answers['place.timber']].handbook
  const threads = screw(solved)
  const loadCase = solved.loads[code].case
  const ultimate = ultimateWithdrawal('woodScrew', gravity.value, threads.diameter, answers['fixing.penetration'])
  const duration: Value = value(madisonShare(loadCase.time), '1', TIMBER_DURATION.basis, TIMBER_DURATION.source)
  const reserveOf = strengthReserve(answers, loadCase)
  return assessLink({
    ...base(solved, code), part: 'ultimateRoute',
    capacity: { value: ultimate, unit: 'N', basis: WITHDRAWAL_ULTIMATE.woodScrew.basis, source: WITHDRAWAL_ULTIMATE.woodScrew.source },
    factors: [factor('scatter', WITHDRAWAL_SCATTER), factor('duration', duration), reserve(reserveOf)],
    grade: 'table', atLeast: threads.atLeast, findings: threads.findings,
    terms: [
      ...weightTerms(solved, code), ...threads.terms,
      fromCatalogue('gravityIndex', 'G', gravity),
      fromCatalogue('withdrawalConstant', 'c_w', WITHDRAWAL_ULTIMATE.woodScrew),
      worked('capacity', 'R', ultimate, 'N', 'c_w * G^2 * D * L', WITHDRAWAL_ULTIMATE.woodScrew.source),
      entering('loadTime', 't', loadCase.time, 's', 'common practice', 'time under this load over the service life'),
      worked('duration', 'k_dur', duration.value, '1', `min(1, ${TIMBER_DURATION.a} + ${TIMBER_DURATION.b} * t^(-${TIMBER_DURATION.n}))`, TIMBER_DURATION.source),
      ...reserveTerms(reserveOf),
    ],
  })
}

/** Load duration factor on an allowable value in timber: a hung plant is permanent, a jolt is not (National Design Specification, table 2.3.2). */
export function allowableDuration(loadCase: LoadCase): Value {
  if (['dry', 'watered'].includes(loadCase.code)) return PERMANENT_IN_TIMBER
  const step = ALLOWABLE_DURATION.steps.find(([longest]) => loadCase.time <= longest)
  return value(step?.[1] ?? PERMANENT_IN_TIMBER.value, '1', ALLOWABLE_DURATION.basis, ALLOWABLE_DURATION.source)
}

function allowableRoute(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const gravity = TIMBER_GRAVITY[answers['place.timber']].specification
  const threads = screw(solved)
  const loadCase = solved.loads[code].case
  const allowed = allowableWithdrawal('woodScrew', gravity.value, threads.diameter, answers['fixing.penetration'])
  const heaviest = Math.max(solved.loads.watered.potted + solved.loads.watered.hanger, solved.loads.flooded.potted + solved.loads.flooded.hanger)
  const proved = (answers['fixing.proof'] ?? 0) >= PROOF_PULL.value * heaviest
  const reserveOf = safeValueReserve(answers, loadCase, proved ? RESERVE_ON_ALLOWABLE : RESERVE_ON_UNPROVED_SCREW)
  return assessLink({
    ...base(solved, code), part: 'allowableRoute',
    capacity: { value: allowed, unit: 'N', basis: WITHDRAWAL_ALLOWABLE.woodScrew.basis, source: WITHDRAWAL_ALLOWABLE.woodScrew.source },
    factors: [factor('duration', allowableDuration(loadCase)), reserve(reserveOf)],
    grade: 'table', atLeast: threads.atLeast,
    findings: proved ? threads.findings : [...threads.findings, { code: 'PULL_IN_PLACE', mass: PROOF_PULL.value * heaviest }],
    terms: [
      ...weightTerms(solved, code), ...threads.terms,
      fromCatalogue('gravityIndex', 'G', gravity),
      fromCatalogue('withdrawalConstant', 'c_w', WITHDRAWAL_ALLOWABLE.woodScrew),
      worked('capacity', 'R', allowed, 'N', 'c_w * G^2 * D * L', WITHDRAWAL_ALLOWABLE.woodScrew.source),
      ...reserveTerms(reserveOf),
    ],
  })
}
