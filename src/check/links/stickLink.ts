import { CREEP, NATURAL_STICK_DIVISOR, SAG_TOLD, UNKNOWN_WOOD } from '../../catalogue/sticks'
import { hasStick } from '../../hanger/arrangement'
import type { CaseCode } from '../../load/loadCases'
import type { FieldPath } from '../../hanger/fields'
import { assessLink, reserve, type LinkResult } from '../linkResult'
import type { Finding } from '../finding'
import { stickBeam, stickSag, type StickBeam } from '../stickBeam'
import { dowelNeeded } from '../dowelNeeded'
import { stickSection } from '../stickSection'
import { stickWood } from '../stickWood'
import type { Solved } from '../solved'
import { fromCatalogue } from '../term'
import { byTestHang, liftFindings, testHangFaults, testMassFor } from '../testHang'
import { allowableReserve, reserveTerms } from '../timeFactors'
import { isWorse } from '../verdict'
import { temperAssumed } from './assumedPart'
import { stickRoutes, withoutBeam } from './stick/stickRoutes'
import { bendingCapacity } from './stick/stickSums'
import { weightTerms } from './weightTerms'

/**
 * The stick the legs hang from, N of weight: bent, and sheared along its grain, under the loads at its lark's heads
 * and the thrust of its top cord; of wood that a table knows both by its strength and by a permissible stress.
 * Natural sticks are not known until test-hung (STICK_UNRATED), nor is bamboo of unmeasured hollow
 * (BAMBOO_HOLLOW_UNKNOWN). Says which dowel would do (STICK_DIAMETER_NEEDED, STICK_NONE_THICK_ENOUGH), how it sags
 * (STICK_SAGS). No results where the legs hang from something else.
 */
export function stickLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (!hasStick(answers)) return []
  const beam = stickBeam(solved, 'watered')
  if (!beam.ok) return solved.wholeCases.map((code) => withoutBeam(solved, code, beam))
  const findings = notes(solved, beam)
  const natural = answers['stick.wood'] === 'natural'
  const reckoned = natural ? solved.wholeCases.map((code) => judged(solved, code)) : temperAssumed(solved, deciding(solved), sayDowel(solved, stickRoutes(solved)))
  return withTestHang(solved, reckoned).map((result): LinkResult => (result.case === 'watered' ? { ...result, findings: [...result.findings, ...findings] } : result))
}

/** The measures that decide; where the supports were measured the ends do not matter. */
const deciding = ({ hanger: { given } }: Solved): readonly FieldPath[] => (given.has('stick.span') ? ['stick.diameter'] : ['stick.diameter', 'stick.length'])

/** A natural stick: a judged share of what weak wood bears, never more than a hint. */
function judged(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const beam = stickBeam(solved, code)
  if (!beam.ok) return withoutBeam(solved, code, beam)
  const sum = bendingCapacity(answers, beam, {
    stress: UNKNOWN_WOOD.value / NATURAL_STICK_DIVISOR.high, formula: 'f_m / q',
    source: NATURAL_STICK_DIVISOR.source,
    terms: [
      fromCatalogue('rupture', 'f_m', UNKNOWN_WOOD),
      fromCatalogue('stickDivisor', 'q', { ...NATURAL_STICK_DIVISOR, value: NATURAL_STICK_DIVISOR.high }),
    ],
  })
  const reserveOf = allowableReserve(answers, solved.loads[code].case)
  return assessLink({
    link: 'stick', part: 'judgedBending', side: 'hanger', case: code, demand: { value: solved.loads[code].weight, unit: 'N' },
    capacity: { value: sum.capacity, unit: 'N', basis: 'common practice', source: NATURAL_STICK_DIVISOR.source },
    factors: [reserve(reserveOf)], grade: 'model', overallFactor: null, atLeast: 'not enough known',
    findings: [{ code: 'STICK_UNRATED', testMass: testMassFor(solved) }],
    terms: [...weightTerms(solved, code), ...sum.terms, ...reserveTerms(reserveOf)],
  })
}

/** A stick of which the wood is not known may have held a test hang; what its wood says counts where it says more. */
function withTestHang(solved: Solved, reckoned: readonly LinkResult[]): readonly LinkResult[] {
  const wood = solved.hanger.answers['stick.wood']
  if ((wood !== 'natural' && wood !== 'bamboo' && wood !== 'unknown') || testHangFaults(solved, false)?.length !== 0) return reckoned
  const inRow = solved.hanger.answers['make.arrangement'] === 'row'
  return solved.wholeCases.flatMap((code) => {
    const known = reckoned.filter((r) => r.case === code)
    const held = assessLink({ ...byTestHang(solved, code), link: 'stick', part: 'testHang', side: 'hanger', case: code, grade: 'tested', overallFactor: null, atLeast: 'holds', findings: [...liftFindings(solved, false), ...(inRow ? [{ code: 'ROW_TESTED' } as const] : [])] })
    return held.utilisation !== null && held.utilisation <= 1 && known.some((k) => isWorse(k.verdict, held.verdict)) ? [held] : known
  })
}

/** The smallest usual dowel of the same wood that would hold, where this one does not. */
function sayDowel(solved: Solved, results: readonly LinkResult[]): readonly LinkResult[] {
  if (solved.hanger.answers['stick.wood'] === 'bamboo' || results.every((r) => r.verdict === 'holds')) return results
  const finding = dowelNeeded(solved)
  return results.map((r): LinkResult => (r.verdict === 'holds' ? r : { ...r, findings: [...r.findings, finding] }))
}

function notes(solved: Solved, beam: StickBeam): readonly Finding[] {
  const { answers } = solved.hanger
  const wood = answers['stick.wood']
  const findings: Finding[] = []
  if (wood === 'bamboo') findings.push({ code: 'BAMBOO_SPLITS' })
  if (wood === 'bamboo' && answers['stick.hollow'] === null) findings.push({ code: 'BAMBOO_HOLLOW_UNKNOWN' })
  if (wood !== 'natural' && wood !== 'bamboo' && answers['stick.state'] === 'dry' && answers['place.exposure'] === 'outdoors') findings.push({ code: 'STICK_WET_OUTDOORS' })
  const sag = (stickSag(beam) * solved.loads.watered.weight) / (stickWood(answers).stiffness.value * CREEP.high * stickSection(answers).inertia)
  if (sag > SAG_TOLD.value * answers['stick.span']) findings.push({ code: 'STICK_SAGS', sag, lasting: sag * CREEP.high })
  findings.push(...rowFindings(solved))
  return findings
}

/** Whether the pots of a row have room beside one another. */
function rowFindings({ hanger: { answers } }: Solved): readonly Finding[] {
  if (answers['make.arrangement'] !== 'row') return []
  const widest = Math.max(answers['pot.rim'], answers['pot.shape'] === 'bellied' ? answers['pot.belly'] : 0)
  return widest > answers['row.spacing'] ? [{ code: 'ROW_TOUCHES', least: widest }] : []
}
