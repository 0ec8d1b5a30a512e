import { COUNTED_LEGS, REFUSED_ANGLE, WIDE_ANGLE } from '../../catalogue/legs'
import { peopleBeneath } from '../../catalogue/reserves'
import type { CaseCode } from '../../load/loadCases'
import { STANDARD_GRAVITY } from '../../quantity/si'
import { inCase, stillApplying } from '../cordStrength'
import type { Finding } from '../finding'
import { assessLink, type Factor, type LinkResult, type Term } from '../linkResult'
import { strandsGone } from '../inspected'
import { redundancy } from '../redundancy'
import { saySettlingTests } from '../saySettlingTests'
import { joinUnknown, legSections, weakestSection, type Section } from '../sections'
import { legAngle } from '../slingPlan'
import type { CaseSling, Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { cordFactors } from '../timeFactors'
import { worse, type Verdict } from '../verdict'
import { cornersUnreckoned } from './shapeDoubt'
import { weatherFindings } from '../weatherFindings'

/**
 * One leg from the ring to the pot: the worst leg's tension against its weakest section, new strength
 * reduced by wet, ageing, duration and reserve. Findings: of the cord (CORD_UNKNOWN,
 * CORD_BY_DIAMETER and others), a join of which nothing is known (JOIN_UNKNOWN), its length and angle (LEG_TOO_SHORT, LEG_ANGLE_WIDE, LEG_ANGLE_REFUSED), ways that differ (STRANDS_UNEQUAL), corners (SHAPE_NOT_RECKONED), the sling
 * (SLING_…, NEARLY_SLACK), natural or unknown cord outdoors, and over people STRAND_PARTS_AND_FALLS or STRAND_PARTS_UNKNOWN.
 */
export function legLink(solved: Solved): readonly LinkResult[] {
  return saySettlingTests(solved, [...solved.wholeCases.map((code) => legInCase(solved, code, 0)), ...strandParted(solved)])
}

/**
 * One strand gone. Where the rest of the leg carries on, that is shown; where it does not, other legs
 * may still catch the pot (see redundancy), and only over people must a strand not decide.
 */
function strandParted(solved: Solved): readonly LinkResult[] {
  const left = weakestSection(legSections(solved.hanger.answers, 1 + strandsGone(solved), inCase(solved.cord.leg, solved.loads.strandParted.case)))
  const result = left.effective > 0 ? legInCase(solved, 'strandParted', 1) : null
  if (result !== null && (result.utilisation ?? Infinity) <= 1) return [result]
  if (!peopleBeneath(solved.hanger.answers['place.beneath'])) return []
  const { strand } = redundancy(solved)
  if (strand === 'stays') return []
  if (strand !== 'unknown') return [strandGone(left, 'fails', 'STRAND_PARTS_AND_FALLS')]
  return [result !== null && result.utilisation === null ? result : strandGone(left, 'not enough known', 'STRAND_PARTS_UNKNOWN')]
}

function legInCase(solved: Solved, code: CaseCode, parted: number): LinkResult {
  const { answers } = solved.hanger
  const load = solved.loads[code]
  const cord = inCase(solved.cord.leg, load.case)
  const sections = legSections(answers, parted + strandsGone(solved), cord)
  const section = weakestSection(sections)
  const sling = solved.slings?.[code] ?? null
  const time = cordFactors(answers, load.case, false)
  const effective: Factor = { code: 'effectiveStrands', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }
  const trouble = geometryFindings(solved, code)
  const watered = solved.slings?.watered.tension ?? null
  // Guidance for rope speaks of new, dry rope without knots: as many strands as carry where the fewest do, however well they do there.
  const plain = solved.cord.wrap.dry.capacity
  const fewest = Math.min(...sections.map((s) => s.strands))
  const overall = plain === null || watered === null || code === 'strandParted' ? null : (fewest * plain.value) / watered
  return assessLink({
    link: 'leg',
    part: section.part,
    side: 'hanger',
    case: code,
    demand: sling === null || sling.tension === null ? null : { value: sling.tension, unit: 'N' },
    capacity: cord.capacity,
    factors: [effective, ...stillApplying(cord, time.factors)],
    grade: cord.grade,
    overallFactor: overall,
    atLeast: trouble.atLeast,
    findings: [...cord.findings, ...trouble.findings],
    terms: [...demandTerms(solved, code), ...cord.terms, ...sectionTerms(answers['make.strands'], section), ...time.terms],
  })
}

/** Over people one strand must not decide, and it must be known that it does not. */
function strandGone(section: Section, atLeast: Verdict, code: 'STRAND_PARTS_AND_FALLS' | 'STRAND_PARTS_UNKNOWN'): LinkResult {
  return assessLink({
    link: 'leg', part: section.part, side: 'hanger', case: 'strandParted', demand: null, capacity: null, factors: [],
    grade: 'table', overallFactor: null, atLeast, findings: [{ code }], terms: [],
  })
}

function sectionTerms(strandsPerLeg: number, section: Section): readonly Term[] {
  return [
    entering('strandsPerLeg', 'n', strandsPerLeg, '1', 'your own', 'strands in one leg'),
    entering('strandsThatCarry', 'n_c', section.strands, '1', 'computed', 'strands that carry in the weakest section'),
    fromCatalogue('efficiency', 'eta', section.efficiency),
    worked('effectiveStrands', 'n_eff', section.effective, '1', 'n_c * eta', section.efficiency.source),
  ]
}

/** How the tension in the worst leg came about: weight, the solved sling, the standards' floor W / (min(m, 3) cos b). */
export function demandTerms(solved: Solved, code: CaseCode): readonly Term[] {
  const load = solved.loads[code]
  const sling = solved.slings?.[code]
  const { plan, geometry: { path } } = solved
  const terms: Term[] = [
    entering('pottedMass', 'm_pot', load.potted, 'kg', solved.potted[load.case.state].weighed && load.below === 0 ? 'your own' : 'computed', load.below === 0 ? 'potted plant in this state, high value' : 'potted plant in this state and those that hang below, high values'),
    entering('hangerMass', 'm_h', load.hanger, 'kg', 'computed', 'the hanger’s own cords and ring, high value'),
    entering('gravity', 'g', STANDARD_GRAVITY, 'm/s2', 'published', 'standard acceleration of free fall (3rd CGPM, 1901)'),
    ...load.factorTerms,
    worked('weight', 'W', load.weight, 'N', '(m_pot + m_h) * g * phi', 'weight in this case'),
  ]
  if (!sling || !path.ok || sling.tension === null || sling.solvedTension === null) return terms
  const counted = Math.min(solved.hanger.answers['make.legs'], COUNTED_LEGS.value)
  const worst = worstLeg(sling)
  const angle = plan?.legs[worst] === undefined ? path.angle : legAngle(plan.legs[worst])
  return [
    ...terms,
    entering('legs', 'm_3', counted, '1', COUNTED_LEGS.basis, `legs that may be counted on, at most three: ${COUNTED_LEGS.source}`),
    entering('legAngle', 'beta', angle, 'rad', 'computed', 'angle of the worst leg from the vertical, taut path over the pot'),
    entering('solvedTension', 'T_s', sling.solvedEach?.[worst] ?? sling.solvedTension, 'N', 'computed', 'worst leg of the solved sling: as drawn, off centre, legs longer and shorter'),
    worked('leastTension', 'T_min', load.weight / (counted * Math.cos(angle)), 'N', 'W / (m_3 * cos(beta))', 'standards’ floor'),
    worked('demand', 'E', sling.tension, 'N', 'max(T_s, T_min)', 'worst leg'),
  ]
}

/** The leg that bears most, from 0. */
const worstLeg = ({ each }: CaseSling): number => (each ?? []).reduce((worst, tension, i) => (tension > (each?.[worst] ?? 0) ? i : worst), 0)

/** That the ways round the pot differ by more than legs are told to: those whose strands must be made shorter. */
function unequal({ hanger: { answers }, geometry: { legs } }: Solved): Finding | null {
  const longest = Math.max(...legs.map(({ strand }) => strand))
  const shorter = legs.flatMap(({ strand }, i) => (longest - strand > answers['make.tolerance'] ? [{ leg: i + 1, by: longest - strand }] : []))
  return shorter.length === 0 ? null : { code: 'STRANDS_UNEQUAL', legs: shorter.map(({ leg }) => leg), shorter: Math.max(...shorter.map(({ by }) => by)) }
}

function geometryFindings(solved: Solved, code: CaseCode): { readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const findings: Finding[] = []
  let atLeast: Verdict = 'holds'
  const say = (finding: Finding, verdict: Verdict): void => {
    findings.push(finding)
    atLeast = worse(atLeast, verdict)
  }
  const { answers, given } = solved.hanger
  const { path, strand } = solved.geometry
  const corners = cornersUnreckoned(answers)
  if (corners !== null) say(corners, 'not enough known')
  // A length that was only assumed, or that goes round corners, cannot be at fault.
  const lengthSaid = corners === null && (answers['make.legLength'] !== null || given.has('make.totalLength'))
  if (!path.ok) say({ code: 'LEG_TOO_SHORT', strand, least: path.least }, lengthSaid ? 'fails' : 'not enough known')
  else {
    const differs = corners === null ? unequal(solved) : null
    if (differs !== null) say(differs, 'just holds')
    const degrees = (path.angle * 180) / Math.PI
    if (path.angle > REFUSED_ANGLE.value) say({ code: 'LEG_ANGLE_REFUSED', degrees, longer: path.free * (Math.sin(path.angle) / Math.sin(WIDE_ANGLE.value) - 1) }, 'fails')
    else if (path.angle > WIDE_ANGLE.value) say({ code: 'LEG_ANGLE_WIDE', degrees, longer: path.free * (Math.sin(path.angle) / Math.sin(WIDE_ANGLE.value) - 1) }, 'just holds')
  }
  if (joinUnknown(answers, inCase(solved.cord.leg, solved.loads[code].case).tied)) say({ code: 'JOIN_UNKNOWN' }, 'not enough known')
  for (const said of weatherFindings(answers)) say(said.finding, said.atLeast)
  const sling = solved.slings?.[code]
  if (sling?.trouble === 'unstable') say({ code: 'SLING_UNSTABLE' }, 'fails')
  if (sling?.trouble === 'lost support') say({ code: 'SLING_LOST_SUPPORT' }, 'fails')
  if (sling?.trouble === 'not converged') say({ code: 'SLING_NOT_CONVERGED' }, 'not enough known')
  if (sling && sling.nearlySlack > 0 && code === 'watered') say({ code: 'NEARLY_SLACK', legs: sling.nearlySlack, millimetres: answers['make.tolerance'] * 1000 }, 'holds')
  return { findings, atLeast }
}
