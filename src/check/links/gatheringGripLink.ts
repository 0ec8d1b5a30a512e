import { FIBRE_PROPERTIES } from '../../catalogue/cords'
import { DROP_HEIGHT } from '../../catalogue/jolts'
import { MOST_DROP_SLIP, WRAP_RELAXATION, WRAP_TENSION } from '../../catalogue/knots'
import { RESERVE_IN_ACCIDENT } from '../../catalogue/reserves'
import { MOST_TEST_SLIP, TEST_SHARE_AT_REST } from '../../catalogue/testHang'
import { CASES_AT_REST, type CaseCode } from '../../load/loadCases'
import { pullerOf } from '../../load/reach'
import { newtons, radians, STANDARD_GRAVITY } from '../../quantity/si'
import { afterTurn, wrapGrip } from '../../statics/friction'
import type { Finding } from '../finding'
import { knotCord } from '../knotCord'
import { assessLink, factor, reserve, type LinkResult, type Term } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { byTestHang, liftFindings, pottedPull, testHangFaults, testHangMass } from '../testHang'
import { pulledBelow } from '../tiers/pulledBelow'
import { allowableReserve, reserveTerms, strengthReserve } from '../timeFactors'
import { worse } from '../verdict'

const ALWAYS = [...CASES_AT_REST, 'bump', 'setDown'] as const satisfies readonly CaseCode[]

/**
 * The cases in which the knot is asked to grip: a gust outdoors too, and a cat in the pot; a child pulls at the fringe, below
 * the wraps, and so on strands that run on up the legs, which draws none of them up through the wraps.
 */
const casesOf = ({ hanger: { answers }, wholeCases }: Solved): readonly CaseCode[] =>
  [...ALWAYS, ...wholeCases.filter((code) => code === 'gust' || code === 'lowerOut' || (code === 'tug' && pullerOf(answers) === 'cat'))]

/**
 * The grip of the gathering knot's wraps on the strands that want to slip up and out. With a good
 * test hang the test mass decides; without one the model 2 pi mu n t, never better than "just holds".
 * A knot that is dropped slips and stops instead of breaking: there the slip is judged, m, elsewhere
 * the pull that reaches the wraps, N. Findings: TEST_HANG_LIFTS, or GRIP_UNTESTED and why a test hang does not count;
 * WRAPPING_CORD_SHORT where the wrapping cord does not make the wraps: then only those count that it makes.
 */
export function gatheringGripLink(solved: Solved): readonly LinkResult[] {
  const faults = testHangFaults(solved, true)
  const counts = faults?.length === 0
  const findings: readonly Finding[] = [...shortCord(solved), ...(counts ? [] : [...(faults ?? []), untested(solved)])]
  const held = casesOf(solved).map((code) => {
    const model = withSlipSeen(solved, code, byModel(solved, code, findings))
    if (!counts) return model
    // A knot that held its test mass holds at least that; beyond it the model still says what it says.
    const tested = assessLink({ link: 'gatheringGrip', part: 'testHang', side: 'hanger', case: code, ...byTestHang(solved, code), grade: 'tested', overallFactor: null, atLeast: 'holds', findings: liftFindings(solved, true) })
    return (tested.utilisation ?? Infinity) <= 1 ? tested : { ...model, findings: [...model.findings, untested(solved)] }
  })
  return [...held, withSlipSeen(solved, 'drop', dropped(solved, counts, findings))]
}

/** The same by the model alone, as if nothing had ever hung in it. */
export const gripByModel = (solved: Solved): readonly LinkResult[] => [...casesOf(solved).map((code) => byModel(solved, code, [])), dropped(solved, false, [])]

/** The cases in which the knot is asked to grip, with that in whose state it is dropped. */
export const gripCases = (solved: Solved): readonly CaseCode[] => [...new Set<CaseCode>([...casesOf(solved), solved.loads.drop.case.state])]

function shortCord({ hanger: { answers } }: Solved): readonly Finding[] {
  const { makes, length: needed } = knotCord(answers)
  const length = answers['gathering.cordLength']
  return length === null || makes === null || makes >= answers['gathering.wraps'] ? [] : [{ code: 'WRAPPING_CORD_SHORT', length, makes, wraps: answers['gathering.wraps'], needed }]
}

/** A knot seen to slip is not better than the model says: not known, and failing under what it slipped with. */
function withSlipSeen(solved: Solved, code: CaseCode, result: LinkResult): LinkResult {
  const { answers, given } = solved.hanger
  const mass = testHangMass(answers)
  if (mass === null || !given.has('testHang.slip') || answers['testHang.slip'] < MOST_TEST_SLIP.value) return result
  return { ...result, verdict: worse(result.verdict, mass <= pottedPull(solved.loads[code]) / STANDARD_GRAVITY ? 'fails' : 'not enough known') }
}

/** What to hang to settle it: twice the heaviest state, times the reserve on what was tested, and enough to stop a drop. */
function untested(solved: Solved): Finding {
  const heaviest = Math.max(...CASES_AT_REST.map((state) => solved.loads[state].potted))
  const atRest = (heaviest / TEST_SHARE_AT_REST.value) * allowableReserve(solved.hanger.answers, solved.loads.watered.case).value
  const { potted, hanger } = solved.loads[solved.loads.drop.case.state]
  return { code: 'GRIP_UNTESTED', testMass: Math.max(atRest, (potted + hanger) * (1 + DROP_HEIGHT.value / MOST_DROP_SLIP.value)) }
}

interface Model {
  /** Pull that reaches the wraps, N; null where the sling was not solved. */
  readonly slip: number | null
  /** That it is, in symbols; where a pot hangs below, more or less than the pull of the legs. */
  readonly formula: string
  readonly grip: number
  readonly terms: readonly Term[]
}

function model(solved: Solved, code: CaseCode): Model {
  const { answers } = solved.hanger
  const fibre = FIBRE_PROPERTIES[answers['cord.fibre']]
  const path = solved.geometry.path
  const pull = solved.slings?.[code].sum ?? null
  // The pot holds some of the pull back by friction, the turn over other cords into the wraps some more; low friction is safe here.
  // Where the knot is drawn down the strands turn less over the base edge and into the wraps.
  const intoWraps = radians(solved.drawnKnot?.angleBelow ?? Math.PI / 2)
  const turn = path.ok ? radians(path.turn - (Math.PI / 2 - intoWraps)) : radians(0)
  const legs = pull === null ? null : afterTurn(afterTurn(newtons(pull), fibre.onPot.value, turn), fibre.onItself.value, intoWraps)
  const lower = pulledBelow(solved, code)
  const makes = knotCord(answers).makes ?? Infinity
  const wraps = Math.min(answers['gathering.wraps'], makes)
  const grip = wrapGrip(fibre.onItself.value, wraps, newtons(WRAP_TENSION.value))
  return {
    slip: legs === null ? null : lower.slipWith(legs),
    formula: lower.formula,
    grip,
    terms: [
      fromCatalogue('frictionOnItself', 'mu', fibre.onItself),
      ...(pull === null || legs === null ? [] : [
        entering('knotPull', 'N_T', pull, 'N', 'computed', 'sum of the legs’ tensions as drawn'),
        fromCatalogue('frictionOnPot', 'mu_pot', fibre.onPot),
        entering('turnAngle', 'alpha', turn, 'rad', 'computed', 'turn over rim and base edge'),
        ...(solved.drawnKnot === null ? [] : [entering('turnIntoWraps', 'alpha_w', intoWraps, 'rad', 'computed', 'turn of the strands into the wraps that are drawn down')]),
        worked('slipPull', 'F_s', legs, 'N', `N_T * exp(-mu_pot * alpha - mu * ${solved.drawnKnot === null ? 'pi / 2' : 'alpha_w'})`, 'capstan equation (Euler and Eytelwein), over the pot and into the wraps'),
        ...lower.terms,
      ]),
      entering('wraps', 'n_w', wraps, '1', 'your own', makes < answers['gathering.wraps'] ? 'wraps that the wrapping cord makes' : 'wraps of the gathering knot'),
      fromCatalogue('wrapTension', 't_w', WRAP_TENSION),
    ],
  }
}

const GRIP_FORMULA = '2 * pi * mu * n_w * t_w'

function byModel(solved: Solved, code: CaseCode, findings: readonly Finding[]): LinkResult {
  const { slip, formula, grip, terms } = model(solved, code)
  const reserveOf = strengthReserve(solved.hanger.answers, solved.loads[code].case)
  return assessLink({
    link: 'gatheringGrip', part: 'gripModel', side: 'hanger', case: code,
    demand: slip === null ? null : { value: slip, unit: 'N' },
    capacity: { value: grip, unit: 'N', basis: 'computed', source: 'grip of the wraps, from their number, tension and friction; no published test' },
    factors: [factor('relaxation', WRAP_RELAXATION), reserve(reserveOf)],
    grade: 'model', overallFactor: null, atLeast: 'holds', findings,
    terms: [
      ...terms,
      ...(slip === null ? [] : [worked('demand', 'E', slip, 'N', formula, 'pull that reaches the wraps')]),
      worked('capacity', 'R', grip, 'N', GRIP_FORMULA, 'normal force 2 pi n t of wraps round a bundle times friction'),
      ...reserveTerms(reserveOf),
    ],
  })
}

/**
 * The drop: the knot grips with a constant force and lets the strands slip until the energy of the
 * fall is spent, s = W h / (F - W), F the weight it can hold for a moment.
 */
function dropped(solved: Solved, counts: boolean, findings: readonly Finding[]): LinkResult {
  const { state } = solved.loads.drop.case
  const { slip, formula, grip, terms } = model(solved, state)
  const load = solved.loads[state]
  const relaxed = grip * WRAP_RELAXATION.value
  const byGrip = slip === null ? null : (load.weight * relaxed) / slip
  const tested = counts ? (testHangMass(solved.hanger.answers) ?? 0) * STANDARD_GRAVITY : 0
  const testDecides = tested > load.weight && (load.weight * DROP_HEIGHT.value) / (tested - load.weight) <= MOST_DROP_SLIP.value
  const held = testDecides ? tested : byGrip
  const distance = held !== null && held > load.weight ? (load.weight * DROP_HEIGHT.value) / (held - load.weight) : null
  return assessLink({
    link: 'gatheringGrip', part: 'dropSlip', side: 'hanger', case: 'drop',
    demand: distance === null ? null : { value: distance, unit: 'm' },
    capacity: { value: MOST_DROP_SLIP.value, unit: 'm', basis: MOST_DROP_SLIP.basis, source: MOST_DROP_SLIP.source },
    factors: [reserve(RESERVE_IN_ACCIDENT)],
    grade: testDecides ? 'tested' : 'model',
    overallFactor: null,
    atLeast: 'holds',
    findings: counts && !testDecides ? [untested(solved)] : findings,
    terms: [
      ...terms,
      entering('weight', 'W', load.weight, 'N', 'computed', 'weight at rest in this state'),
      fromCatalogue('relaxation', 'k_relax', WRAP_RELAXATION),
      ...(held === null ? [] : [
        testDecides
          ? entering('weightHeld', 'F_held', held, 'N', 'your own', 'weight of the test hang')
          : worked('weightHeld', 'F_held', held, 'N', `W * ${GRIP_FORMULA} * k_relax / ${formula === 'F_s' ? formula : `(${formula})`}`, 'weight the wraps can hold for a moment'),
      ]),
      fromCatalogue('dropHeight', 'h', DROP_HEIGHT),
      ...(distance === null ? [] : [worked('demand', 'E', distance, 'm', 'W * h / (F_held - W)', 'energy of the fall against the work of friction')]),
      fromCatalogue('capacity', 'R', MOST_DROP_SLIP),
      ...reserveTerms(RESERVE_IN_ACCIDENT),
    ],
  })
}
