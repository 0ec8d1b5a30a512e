import { value, type Value } from '../../../catalogue/basis'
import { END_GRAIN_ACROSS, WET_ACROSS } from '../../../catalogue/places'
import { RESERVE_ON_ALLOWABLE, RESERVE_ON_UNPROVED_SCREW } from '../../../catalogue/reserves'
import { ALLOWABLE_DURATION, LAG_IN_END_GRAIN, PERMANENT_IN_TIMBER, TIMBER_DURATION, TIMBER_GRAVITY, WET_SERVICE } from '../../../catalogue/timber'
import { LEAD_HOLE, WITHDRAWAL_ALLOWABLE, WITHDRAWAL_POWERS, WITHDRAWAL_SCATTER, WITHDRAWAL_ULTIMATE, type WithdrawnByAllowable } from '../../../catalogue/withdrawal'
import type { Answers } from '../../../hanger/fields'
import type { CaseCode, LoadCase } from '../../../load/loadCases'
import type { Finding } from '../../finding'
import { factor, reserve, type Factor, type LinkResult, type Term } from '../../linkResult'
import type { PlaceDemand } from '../../placeLoad'
import type { Solved } from '../../solved'
import { entering, fromCatalogue, worked } from '../../term'
import { reserveTerms, safeValueReserve, strengthReserve } from '../../timeFactors'
import { allowableWithdrawal, impliedSafety, ultimateWithdrawal } from '../../withdrawal'
import { madisonShare } from '../../woodStrength'
import { temperAssumed } from '../assumedPart'
import { acrossAllowable, acrossUltimate, woodKindOf } from './acrossTimber'
import { assessPlace } from './assessPlace'
import { atOnce, fixingBase } from './fixingEvidence'
import { pullInPlaceMass } from './pullInPlace'
import { IN_TIMBER, threadsOf, type Threads } from './threads'

/**
 * Screws, lags and nails in a joist, stud or beam by both published routes, pull and shear at once (the straight line is the
 * cautious one beside the rule for screws at an angle, National Design Specification 12.4): from the ultimate pull-out (USDA Wood
 * Handbook; its 5 % value, lasting load, reserve on strengths) and from the allowable one (load duration, reserve on safe
 * values; PULL_IN_PLACE for one screw overhead). Timber that is damp counts less in both. The lead hole is told (LEAD_HOLE). An
 * accident is judged by the first only.
 */
export function fixingTimber(solved: Solved, code: CaseCode, asked: PlaceDemand): readonly LinkResult[] {
  const kind = IN_TIMBER[solved.hanger.answers['fixing.kind']] ?? 'woodScrew'
  const threads = threadsOf(solved, kind)
  const routes = [ultimateRoute(solved, code, asked, threads), ...(solved.loads[code].case.accidental ? [] : [allowableRoute(solved, code, asked, threads)])]
  return temperAssumed(solved, threads.deciding, routes)
}

const ACROSS_SOURCE = 'the same books’ loads across the fastening'

const POWER: Readonly<Record<WithdrawnByAllowable, string>> = { woodScrew: 'G^2 * D * L', lagScrew: 'G^1.5 * D^0.75 * L', smoothNail: 'G^2.5 * D * L' }

/** Timber that is damp in service: the same for pull-out and loads across, but for a nail, which is only loaded across. */
const wetService = (answers: Answers, kind: WithdrawnByAllowable): readonly Factor[] =>
  (answers['place.exposure'] === 'indoors' ? [] : [factor('wetService', kind === 'smoothNail' ? WET_ACROSS : WET_SERVICE[kind])])

/** Lag screws in end grain, the only ones that come here. */
const inEndGrain = (answers: Answers): boolean => answers['fixing.grain'] === 'end'

function pullTerms(answers: Answers, constant: Value, pull: number): readonly Term[] {
  const kind = IN_TIMBER[answers['fixing.kind']] ?? 'woodScrew'
  return [
    fromCatalogue('withdrawalConstant', 'c_w', constant),
    ...(inEndGrain(answers) ? [fromCatalogue('endGrain', 'k_end', LAG_IN_END_GRAIN)] : []),
    worked('capacity', 'R', pull, 'N', `c_w * ${POWER[kind]}${inEndGrain(answers) ? ' * k_end' : ''}`, `${constant.source}; ${WITHDRAWAL_POWERS[kind].source}`),
  ]
}

function acrossTerms(answers: Answers, across: { readonly load: number; readonly terms: readonly Term[] }): { readonly shear: number; readonly shearTerms: readonly Term[] } {
  if (!inEndGrain(answers)) return { shear: across.load, shearTerms: across.terms }
  return { shear: across.load * END_GRAIN_ACROSS.value, shearTerms: [...across.terms.map((t): Term => (t.symbol === 'R_V' ? { ...t, value: t.value * END_GRAIN_ACROSS.value, formula: `(${t.formula ?? ''}) * k_endV` } : t)), fromCatalogue('endGrainAcross', 'k_endV', END_GRAIN_ACROSS)] }
}

function ultimateRoute(solved: Solved, code: CaseCode, asked: PlaceDemand, threads: Threads): LinkResult {
  const { answers } = solved.hanger
  const { kind, diameter, penetration } = threads
  const gravity = TIMBER_GRAVITY[answers['place.timber']].handbook
  const loadCase = solved.loads[code].case
  const constant = WITHDRAWAL_ULTIMATE[kind]
  const pull = ultimateWithdrawal(kind, gravity.value, diameter, penetration) * (inEndGrain(answers) ? LAG_IN_END_GRAIN.value : 1)
  const duration: Value = value(madisonShare(loadCase.time), '1', TIMBER_DURATION.basis, TIMBER_DURATION.source)
  const reserveOf = strengthReserve(answers, loadCase)
  const scale = atOnce(asked, { pull, pullTerms: pullTerms(answers, constant, pull), ...acrossTerms(answers, acrossUltimate(answers, threads, gravity.value)) })
  return assessPlace(solved, {
    ...fixingBase(code), part: 'ultimateRoute', demand: scale.demand,
    capacity: { value: scale.capacity, unit: 'N', basis: constant.basis, source: asked.pull > 0 ? constant.source : ACROSS_SOURCE },
    factors: [factor('scatter', WITHDRAWAL_SCATTER), factor('duration', duration), ...wetService(answers, kind), reserve(reserveOf)],
    grade: 'table', atLeast: 'holds', findings: threads.findings,
    terms: [
      ...asked.terms, ...threads.terms, fromCatalogue('gravityIndex', 'G', gravity), ...scale.terms,
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

function allowableRoute(solved: Solved, code: CaseCode, asked: PlaceDemand, threads: Threads): LinkResult {
  const { answers } = solved.hanger
  const { kind, diameter, penetration, root } = threads
  const gravity = TIMBER_GRAVITY[answers['place.timber']].specification
  const loadCase = solved.loads[code].case
  const constant = WITHDRAWAL_ALLOWABLE[kind]
  const pull = allowableWithdrawal(kind, gravity.value, diameter, penetration) * (inEndGrain(answers) ? LAG_IN_END_GRAIN.value : 1)
  const toPull = pullInPlaceMass(solved)
  const single = answers['place.support'] === 'ceilingHook' && answers['fixing.count'] === 1
  const proved = !single || (answers['fixing.proof'] ?? 0) >= toPull
  const reserveOf = safeValueReserve(answers, loadCase, proved ? RESERVE_ON_ALLOWABLE : RESERVE_ON_UNPROVED_SCREW)
  const scale = atOnce(asked, { pull, pullTerms: pullTerms(answers, constant, pull), ...acrossTerms(answers, acrossAllowable(answers, threads, gravity.value)) })
  const lead: readonly Finding[] = kind === 'smoothNail' ? [] : [{ code: 'LEAD_HOLE', diameter: LEAD_HOLE[woodKindOf(answers)].value * root }]
  return assessPlace(solved, {
    ...fixingBase(code), part: 'allowableRoute', demand: scale.demand,
    capacity: { value: scale.capacity, unit: 'N', basis: constant.basis, source: asked.pull > 0 ? constant.source : ACROSS_SOURCE },
    factors: [factor('duration', allowableDuration(loadCase)), ...wetService(answers, kind), reserve(reserveOf)],
    grade: 'table', atLeast: 'holds',
    findings: [...threads.findings, ...(proved ? [] : [{ code: 'PULL_IN_PLACE', mass: toPull } as const]), ...lead],
    terms: [
      ...asked.terms, ...threads.terms, fromCatalogue('gravityIndex', 'G', gravity), ...scale.terms,
      ...(asked.pull > 0 ? [
        fromCatalogue('ultimateConstant', 'c_u', WITHDRAWAL_ULTIMATE[kind]),
        worked('impliedSafety', 'q_w', impliedSafety(kind), '1', 'c_u / c_w', 'what pulls out over what is allowed, by the two books at one gravity: the safety that the allowable hides'),
      ] : []),
      ...reserveTerms(reserveOf),
    ],
  })
}
