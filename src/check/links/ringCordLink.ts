import { COUNTED_LEGS, REFUSED_ANGLE, WIDE_ANGLE } from '../../catalogue/legs'
import { liesLevel } from '../../hanger/arrangement'
import type { CaseCode } from '../../load/loadCases'
import { inCase, stillApplying, type CordStrength } from '../cordStrength'
import type { Finding } from '../finding'
import { assessLink, type LinkResult } from '../linkResult'
import { saySettlingTests } from '../saySettlingTests'
import { bendEfficiency, larksHeadEfficiency, thickestCord, topBar, weakestSection, type Section } from '../sections'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { cordFactors } from '../timeFactors'
import { worse, type Verdict } from '../verdict'
import { weatherFindings } from '../weatherFindings'
import { temperAssumed } from './assumedPart'
import { weightTerms } from './weightTerms'

/**
 * One of the cords by which a level ring hangs from the hook, N: T = W / (min(n, 3) cos c), c their angle from the
 * vertical; weakest where it bends over the hook or is tied to the ring. Findings: of the cord, RING_CORDS_WIDE. No
 * results where the ring hangs upright.
 */
export function ringCordLink(solved: Solved): readonly LinkResult[] {
  if (!liesLevel(solved.hanger.answers)) return []
  return temperAssumed(solved, ['ring.cords', 'ring.cordStrands', 'ring.rise'], saySettlingTests(solved, solved.wholeCases.map((code) => inOneCase(solved, code))))
}

function inOneCase(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const { case: loadCase, weight } = solved.loads[code]
  const cord = inCase(solved.cord.wrap, loadCase)
  const section = weakest(solved, cord)
  const time = cordFactors(answers, loadCase, false)
  const counted = Math.min(answers['ring.cords'], COUNTED_LEGS.value)
  const angle = Math.atan2(solved.geometry.ringRadius, answers['ring.rise'])
  const tension = (load: number): number => load / (counted * Math.cos(angle))
  const plain = solved.cord.wrap.dry.capacity
  const slope = slopeOf(angle)
  const said = weatherFindings(answers)
  return assessLink({
    link: 'ringCord', part: section.part, side: 'hanger', case: code,
    demand: { value: tension(weight), unit: 'N' },
    capacity: cord.capacity,
    factors: [{ code: 'effectiveStrands', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }, ...stillApplying(cord, time.factors)],
    grade: cord.grade,
    overallFactor: plain === null ? null : (section.strands * plain.value) / tension(solved.loads.watered.weight),
    atLeast: said.reduce((worst, s) => worse(worst, s.atLeast), slope.atLeast),
    findings: [...cord.findings, ...slope.findings, ...said.map((s) => s.finding)],
    terms: [
      ...weightTerms(solved, code).filter((t) => t.code !== 'demand'),
      entering('legs', 'm_3', counted, '1', COUNTED_LEGS.basis, `cords that may be counted on, at most three: ${COUNTED_LEGS.source}`),
      entering('meanRadius', 'r_m', solved.geometry.ringRadius, 'm', 'computed', 'to the middle of the ring’s bar'),
      entering('ringRise', 'h_r', answers['ring.rise'], 'm', 'your own', 'height of the hook above the ring'),
      worked('demand', 'E', tension(weight), 'N', 'W * sqrt(r_m^2 + h_r^2) / (m_3 * h_r)', 'standards’ floor: as many cords as may be counted on'),
      ...cord.terms,
      entering('strandsThatCarry', 'n_c', section.strands, '1', 'your own', 'strands of one cord above the ring'),
      fromCatalogue('efficiency', 'eta', section.efficiency),
      worked('effectiveStrands', 'n_eff', section.effective, '1', 'n_c * eta', section.efficiency.source),
      ...time.terms,
    ],
  })
}

function weakest(solved: Solved, cord: CordStrength): Section {
  const { answers } = solved.hanger
  const strands = answers['ring.cordStrands']
  const thick = cord.size ?? thickestCord(answers)
  const section = (part: Section['part'], efficiency: Section['efficiency']): Section => ({ part, strands, efficiency, effective: strands * efficiency.value })
  return weakestSection([section('bend', bendEfficiency(topBar(answers) / thick)), section('larksHead', larksHeadEfficiency(answers['ring.wire'] / thick))])
}

/** Shallow cords multiply the load, as shallow legs do. */
function slopeOf(angle: number): { readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const refused = angle > REFUSED_ANGLE.value
  if (!refused && angle <= WIDE_ANGLE.value) return { findings: [], atLeast: 'holds' }
  return { findings: [{ code: 'RING_CORDS_WIDE', degrees: (angle * 180) / Math.PI, refused }], atLeast: refused ? 'fails' : 'just holds' }
}
