import { value } from '../../catalogue/basis'
import { FIBRE_PROPERTIES } from '../../catalogue/cords'
import { DAY } from '../../catalogue/duration'
import { WRAP_RELAXATION, WRAP_TENSION } from '../../catalogue/knots'
import { peopleBeneath, RESERVE_ON_ALLOWABLE } from '../../catalogue/reserves'
import type { CaseCode, LoadCase } from '../../load/loadCases'
import { newtons, radians, STANDARD_GRAVITY } from '../../quantity/si'
import { afterTurn, wrapGrip } from '../../statics/friction'
import type { Finding } from '../finding'
import { assessLink, factor, reserve, type Factor, type LinkResult } from '../linkResult'
import type { Solved } from '../solved'
import { entering, fromCatalogue, worked } from '../term'
import { reserveTerms, strengthReserve } from '../timeFactors'

const CASES: readonly CaseCode[] = ['dry', 'watered', 'flooded', 'bump', 'setDown', 'drop']

/** A test hang counts from this length on, and up to this slip of marked strands. */
const LEAST_TEST_TIME = DAY
const MOST_SLIP = 0.003
/** Share of a test mass that the knot may be asked to hold for good. */
const AT_REST = value(0.5, '1', 'common practice', 'half the test mass at rest, all of it for a moment')

/**
 * The grip of the gathering knot's wraps on the strands that want to slip up and out. With a good
 * test hang the test mass decides; without one the model 2 pi mu n t, never better than "just holds".
 */
export function gatheringGripLink(solved: Solved): readonly LinkResult[] {
  const test = testHangFindings(solved)
  return CASES.map((code) => {
    const model = byModel(solved, code, test.findings)
    if (!test.counts) return model
    // A knot that held its test mass holds at least that; beyond it the model still says what it says.
    const tested = byTestHang(solved, code)
    return tested.utilisation !== null && tested.utilisation <= 1 ? tested : model
  })
}

function testHangFindings(solved: Solved): { readonly counts: boolean; readonly findings: readonly Finding[] } {
  const { answers } = solved.hanger
  const heaviest = Math.max(...(['dry', 'watered', 'flooded'] as const).map((s) => solved.loads[s].potted))
  const untested: Finding = { code: 'GRIP_UNTESTED', testMass: (heaviest / AT_REST.value) * (peopleBeneath(answers['place.beneath']) ? 1.5 : 1) }
  if (answers['testHang.mass'] === null) return { counts: false, findings: [untested] }
  const findings: Finding[] = []
  if (answers['testHang.time'] < LEAST_TEST_TIME) findings.push({ code: 'TEST_HANG_TOO_SHORT', time: answers['testHang.time'], least: LEAST_TEST_TIME })
  if (answers['testHang.slip'] >= MOST_SLIP) findings.push({ code: 'TEST_HANG_SLIPPED', slip: answers['testHang.slip'], most: MOST_SLIP })
  return findings.length === 0 ? { counts: true, findings } : { counts: false, findings: [...findings, untested] }
}

const atRest = (loadCase: LoadCase): boolean => ['dry', 'watered', 'flooded'].includes(loadCase.code)

function byTestHang(solved: Solved, code: CaseCode): LinkResult {
  const { answers } = solved.hanger
  const load = solved.loads[code]
  const mass = answers['testHang.mass'] ?? 0
  const capacity = mass * STANDARD_GRAVITY
  const pulled = load.potted * STANDARD_GRAVITY * load.factor
  const reserveOf = load.case.accidental ? value(1, '1', 'common practice', 'an accident may use up the whole reserve') : RESERVE_ON_ALLOWABLE[answers['place.beneath']]
  const factors: Factor[] = [...(atRest(load.case) ? [factor('atRest', AT_REST)] : []), reserve(reserveOf)]
  return assessLink({
    link: 'gatheringGrip', part: 'testHang', side: 'hanger', case: code,
    demand: { value: pulled, unit: 'N' },
    capacity: { value: capacity, unit: 'N', basis: 'your own', source: 'test hang' },
    factors,
    grade: 'tested',
    overallFactor: null,
    atLeast: 'holds',
    findings: [],
    terms: [
      entering('pottedMass', 'm_pot', load.potted, 'kg', 'computed', 'potted plant in this state, high value'),
      entering('gravity', 'g', STANDARD_GRAVITY, 'm/s2', 'published', 'standard acceleration of free fall (3rd CGPM, 1901)'),
      entering('caseFactor', 'phi', load.factor, '1', 'computed', load.factorSource),
      worked('demand', 'E', pulled, 'N', 'm_pot * g * phi', 'what the test mass stood for'),
      entering('testMass', 'm_test', mass, 'kg', 'your own', 'mass of the test hang'),
      worked('capacity', 'R', capacity, 'N', 'm_test * g', 'test hang'),
      ...reserveTerms(reserveOf),
    ],
  })
}

function byModel(solved: Solved, code: CaseCode, findings: readonly Finding[]): LinkResult {
  const { answers } = solved.hanger
  const fibre = FIBRE_PROPERTIES[answers['cord.fibre']]
  const load = solved.loads[code]
  const path = solved.geometry.path
  const pull = solved.slings?.[code].sum ?? null
  // The pot holds some of the pull back by friction, the turn over other cords into the wraps some more; low friction is safe here.
  const turn = path.ok ? path.turn : radians(0)
  const slip = pull === null ? null : afterTurn(afterTurn(newtons(pull), fibre.onPot.value, turn), fibre.onItself.value, radians(Math.PI / 2))
  const wraps = answers['gathering.wraps']
  const grip = wrapGrip(fibre.onItself.value, wraps, newtons(WRAP_TENSION.value))
  const reserveOf = strengthReserve(answers, load.case)
  return assessLink({
    link: 'gatheringGrip', part: 'gripModel', side: 'hanger', case: code,
    demand: slip === null ? null : { value: slip, unit: 'N' },
    capacity: { value: grip, unit: 'N', basis: 'computed', source: 'grip of wraps, 2 pi mu n t; no published test' },
    factors: [factor('relaxation', WRAP_RELAXATION), reserve(reserveOf)],
    grade: 'model',
    overallFactor: null,
    atLeast: 'holds',
    findings,
    terms: [
      ...(pull === null || slip === null ? [] : [
        entering('knotPull', 'N_T', pull, 'N', 'computed', 'sum of the legs’ tensions as drawn'),
        fromCatalogue('frictionOnPot', 'mu_pot', fibre.onPot),
        entering('turnAngle', 'alpha', turn, 'rad', 'computed', 'turn over rim and base edge'),
        worked('slipPull', 'E', slip, 'N', 'N_T * exp(-mu_pot * alpha - mu * pi / 2)', 'capstan equation (Euler and Eytelwein), over the pot and a quarter turn over cord'),
      ]),
      fromCatalogue('frictionOnItself', 'mu', fibre.onItself),
      entering('wraps', 'n_w', wraps, '1', 'your own', 'wraps of the gathering knot'),
      fromCatalogue('wrapTension', 't_w', WRAP_TENSION),
      worked('capacity', 'R', grip, 'N', '2 * pi * mu * n_w * t_w', 'normal force 2 pi n t of wraps round a bundle times friction'),
      ...reserveTerms(reserveOf),
    ],
  })
}
