import { FRICTION_PAIRS } from '../../catalogue/frictionPairs'
import { TIED_TO_STICK } from '../../catalogue/knots'
import { REFUSED_ANGLE, WIDE_ANGLE } from '../../catalogue/legs'
import { peopleBeneath } from '../../catalogue/reserves'
import { hasStick } from '../../hanger/arrangement'
import type { CaseCode } from '../../load/loadCases'
import { metres, newtons, radians } from '../../quantity/si'
import { overBeam } from '../../statics/overBeam'
import { heldCord, noSlipLoadOffset } from '../../statics/vCordOffset'
import { inCase, stillApplying, type CordStrength } from '../cordStrength'
import type { Finding } from '../finding'
import { assessLink, type LinkResult, type Term } from '../linkResult'
import { saySettlingTests } from '../saySettlingTests'
import { bendEfficiency, thickestCord, topBar, type Section } from '../sections'
import type { Solved } from '../solved'
import { stickBeam, type StickBeam } from '../stickBeam'
import { entering, fromCatalogue, worked } from '../term'
import { cordFactors } from '../timeFactors'
import { worse, type Verdict } from '../verdict'
import { weatherFindings } from '../weatherFindings'
import { temperAssumed } from './assumedPart'
import { thrustTerms } from './stick/stickSums'
import { weightTerms } from './weightTerms'

/**
 * The cord from both ends of the stick over one hook, N: T = W Lc / (4 h), the fuller half where the load is off the
 * middle; weakest where it bends over the hook or is tied to the stick. Findings: of the cord, TOP_CORD_TOO_SHORT,
 * TOP_CORD_SHALLOW, how far off the middle friction holds it (TOP_CORD_OFFSET, TOP_CORD_RUNS, TOP_CORD_LEANS), and over people
 * TOP_CORD_PARTS, since nothing else holds. No results where there is no top cord.
 */
export function topCordLink(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  if (!hasStick(answers) || answers['stick.held'] !== 'topCord') return []
  const whole = saySettlingTests(solved, solved.wholeCases.flatMap((code) => {
    const beam = stickBeam(solved, code)
    if (beam.ok) return [inOneCase(solved, code, beam, answers['stick.topStrands'])]
    return beam.finding.code === 'TOP_CORD_TOO_SHORT' ? [without(solved, code, beam.finding, beam.fails ? 'fails' : 'not enough known')] : []
  }))
  return temperAssumed(solved, ['stick.topCord', 'stick.topStrands'], [...whole, ...strandParted(solved)])
}

function without(solved: Solved, code: CaseCode, finding: Finding, atLeast: Verdict): LinkResult {
  return assessLink({ link: 'topCord', part: 'whole', side: 'hanger', case: code, demand: null, capacity: null, factors: [], grade: 'table', overallFactor: null, atLeast, findings: [finding], terms: weightTerms(solved, code).filter((t) => t.code !== 'demand') })
}

/** Where the top cord is weakest: bent over the hook, or tied to the stick. */
function weakest(solved: Solved, strands: number, cord: CordStrength): Section {
  const { answers } = solved.hanger
  const bend = bendEfficiency(topBar(answers) / (cord.size ?? thickestCord(answers)))
  const [part, efficiency] = bend.value < TIED_TO_STICK.value ? (['bend', bend] as const) : (['tiedToStick', TIED_TO_STICK] as const)
  return { part, strands, efficiency, effective: strands * efficiency.value }
}

function inOneCase(solved: Solved, code: CaseCode, beam: StickBeam, strands: number): LinkResult {
  const { answers } = solved.hanger
  const { case: loadCase, weight } = solved.loads[code]
  const cord = inCase(solved.cord.wrap, loadCase)
  const section = weakest(solved, strands, cord)
  const time = cordFactors(answers, loadCase, false)
  const tension = tensionOf(solved, beam, weight)
  const watered = stickBeam(solved, 'watered')
  const leans = code === 'neighbourDown' ? rowLeans(solved, beam) : null
  const slope = slopeOf(solved, beam)
  const off = code === 'watered' ? offsetHeld(solved, beam) : null
  const said = weatherFindings(answers)
  const plain = solved.cord.wrap.dry.capacity
  return assessLink({
    link: 'topCord', part: section.part, side: 'hanger', case: code,
    demand: { value: tension, unit: 'N' },
    capacity: cord.capacity,
    factors: [{ code: 'effectiveStrands', value: section.effective, basis: section.efficiency.basis, source: section.efficiency.source }, ...stillApplying(cord, time.factors)],
    grade: cord.grade,
    overallFactor: plain === null || !watered.ok || code === 'strandParted' ? null : (strands * plain.value) / tensionOf(solved, watered, solved.loads.watered.weight),
    atLeast: said.reduce((worst, s) => worse(worst, s.atLeast), worse(worse(slope.atLeast, off?.atLeast ?? 'holds'), leans?.atLeast ?? 'holds')),
    findings: [...cord.findings, ...slope.findings, ...said.map((s) => s.finding), ...(off?.findings ?? []), ...(leans === null ? [] : [leans.finding])],
    terms: [...demandTerms(solved, code, beam, tension), ...cord.terms, ...strandTerms(section), ...time.terms],
  })
}

/** Pull in the fuller half: W Lc / (4 h), and as much more as the load is off the middle by lever. */
const tensionOf = ({ hanger: { answers } }: Solved, beam: StickBeam, weight: number): number =>
  ((weight * beam.carried * answers['stick.topCord']) / (4 * beam.height)) * (1 + (2 * beam.offset) / answers['stick.span'])

const demandTerms = (solved: Solved, code: CaseCode, beam: StickBeam, tension: number): readonly Term[] => [
  ...weightTerms(solved, code).filter((t) => t.code !== 'demand'),
  ...thrustTerms(solved.hanger.answers, beam).filter((t) => t.code !== 'thrustShare'),
  worked('demand', 'E', tension, 'N', `W * ${beam.carried === 1 ? '' : 'k_n * '}L_c / (4 * h_c) * (1 + 2 * e_s / s_s)`, 'equilibrium of the V, the fuller half'),
]

const strandTerms = (section: Section): readonly Term[] => [
  entering('strandsThatCarry', 'n_c', section.strands, '1', 'your own', 'strands of the top cord'),
  fromCatalogue('efficiency', 'eta', section.efficiency),
  worked('effectiveStrands', 'n_eff', section.effective, '1', 'n_c * eta', section.efficiency.source),
]

/** A shallow V multiplies the load, as shallow legs do. */
function slopeOf({ hanger: { answers } }: Solved, beam: StickBeam): { readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const angle = Math.atan2(answers['stick.span'] / 2, beam.height)
  const refused = angle > REFUSED_ANGLE.value
  if (!refused && angle <= WIDE_ANGLE.value) return { findings: [], atLeast: 'holds' }
  return { findings: [{ code: 'TOP_CORD_SHALLOW', degrees: 90 - (angle * 180) / Math.PI, refused }], atLeast: refused ? 'fails' : 'just holds' }
}

/**
 * How far off the middle the load may hang before the cord runs over what it lies on, and whether unequal legs bring
 * it further; tied there it cannot run, and only leans.
 */
function offsetHeld(solved: Solved, beam: StickBeam): { readonly findings: readonly Finding[]; readonly atLeast: Verdict } {
  const { answers } = solved.hanger
  const held = heldCord({ cord: answers['stick.topCord'], span: answers['stick.span'], weight: newtons(solved.loads.watered.weight), offset: metres(beam.offset), depth: metres(0) })
  if (!held.ok) return { findings: [], atLeast: 'holds' }
  const { ratio, runs } = overBeam({ pulls: held.tensions, friction: frictionOver(solved), turn: held.turn })
  const degrees = (held.tilt * 180) / Math.PI
  if (runs && answers['stick.over'] === 'loose') return { findings: [{ code: 'TOP_CORD_RUNS', offset: beam.offset, most: mostOffset(solved, beam), ratio }], atLeast: 'just holds' }
  const leans: readonly Finding[] = degrees > LEAN_TOLD ? [{ code: 'TOP_CORD_LEANS', degrees, ratio }] : []
  return { findings: answers['stick.over'] === 'loose' ? [{ code: 'TOP_CORD_OFFSET', most: mostOffset(solved, beam) }, ...leans] : leans, atLeast: 'holds' }
}

/** A stick that leans by so many degrees is seen to. */
const LEAN_TOLD = 2

/** The lowest friction of cord on steel, or on the wood of a beam or branch that it goes round. */
const frictionOver = ({ hanger: { answers } }: Solved): number =>
  (answers['place.support'] === 'overBeam' && (answers['place.substrate'] === 'timber' || answers['place.substrate'] === 'branch') ? FRICTION_PAIRS.nylonRopeOnPine : FRICTION_PAIRS.oiledCottonOnSteel).sliding.low

function mostOffset(solved: Solved, beam: StickBeam): number {
  const span = solved.hanger.answers['stick.span']
  const angle = radians(Math.atan2(2 * beam.height, span))
  return noSlipLoadOffset({ height: metres(beam.height), angle }, metres(span), metres(0), frictionOver(solved))
}

/** One of a row taken down: the stick leans until its load is under the hook, or the cord runs over it. */
function rowLeans(solved: Solved, beam: StickBeam): { readonly finding: Finding; readonly atLeast: Verdict } {
  const { given } = solved.hanger
  const runs = solved.hanger.answers['stick.over'] === 'loose' && beam.offset > mostOffset(solved, beam)
  const said = given.has('row.count') && given.has('row.spacing') && given.has('stick.span') && given.has('stick.topCord')
  return { finding: { code: 'ROW_LEANS', degrees: (Math.atan2(beam.offset, beam.height) * 180) / Math.PI, runs }, atLeast: !runs ? 'just holds' : said ? 'fails' : 'not enough known' }
}

/** Over people one strand of the top cord must not let it fall, for nothing else holds the stick. */
function strandParted(solved: Solved): readonly LinkResult[] {
  const { answers } = solved.hanger
  const beam = stickBeam(solved, 'strandParted')
  if (!beam.ok || !peopleBeneath(answers['place.beneath'])) return []
  const left = answers['stick.topStrands'] - 1
  if (left === 0) return [without(solved, 'strandParted', { code: 'TOP_CORD_PARTS', strands: 1 }, 'fails')]
  const result = inOneCase(solved, 'strandParted', beam, left)
  return [{ ...result, findings: [...result.findings, { code: 'TOP_CORD_PARTS', strands: left + 1 }] }]
}
