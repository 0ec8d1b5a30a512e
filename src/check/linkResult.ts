import type { Basis, Grade, Value } from '../catalogue/basis'
import { HOLDS_LIMIT, LEAST_OVERALL_FACTOR } from '../catalogue/reserves'
import type { CaseCode } from '../load/loadCases'
import type { Finding } from './finding'
import type { FactorCode, TermCode } from './termCodes'
import { verdictFor, worse, type Verdict } from './verdict'

/** Links of the load path from the building down; the order is that of the ladder. */
export const LINKS = ['fixing', 'bracket', 'pin', 'hook', 'hookShank', 'connector', 'topCord', 'stick', 'ringCord', 'ring', 'leg', 'cradle', 'seat', 'gatheringTurn', 'wrapHoop', 'gatheringGrip', 'load'] as const
export type LinkCode = (typeof LINKS)[number]
/** Who answers for a link: the maker of the hanger, or the place it hangs in. */
export type Side = 'hanger' | 'place'

/** Parts within a link that are told apart: a section of the leg, a route of a calculation. */
export const PARTS = [
  'whole', 'larksHead', 'bend', 'plainStrands', 'fillers', 'alternatingKnots', 'spiralKnots', 'tiedStrands', 'splicedStrands', 'gluedStrands', 'potEdge', 'turn', 'ultimateRoute', 'allowableRoute', 'rated', 'wireHinge', 'ringCollapse',
  'testHang', 'gripModel', 'dropSlip', 'sliding', 'locked', 'friction', 'shankBending', 'weldedChain', 'openChain', 'tiedToStick', 'stickBending', 'stickBendingAllowed', 'stickShear', 'stickShearAllowed', 'judgedBending', 'lowTable', 'pulledInPlace', 'pinInWood', 'pinAtFace', 'armHinge',
  'frontStrands', 'backStrands', 'panelCords', 'frontNet', 'overKnots', 'onKnot', 'netOpens',
] as const
export type Part = (typeof PARTS)[number]

/** A force or, where a seat or a slip is judged, a length. */
export interface Quantity {
  readonly value: number
  readonly unit: 'N' | 'm'
}

/** A capacity reduced by nothing yet: what a new, dry, unknotted or unworn part carries. */
export interface Capacity extends Quantity {
  readonly basis: Basis
  readonly source: string
}

/** One factor on a capacity; a reserve enters as its reciprocal. */
export interface Factor {
  readonly code: FactorCode
  readonly value: number
  readonly basis: Basis
  readonly source: string
}

/** One line of a worked sum. `formula` uses the symbols of other lines; null where the value enters from outside. */
export interface Term {
  readonly code: TermCode
  readonly symbol: string
  readonly value: number
  readonly unit: string
  readonly basis: Basis
  readonly source: string
  readonly formula: string | null
}

/** What one link does in one load case. */
export interface LinkResult {
  readonly id: string
  /** Which of several pots one under another it belongs to, from the top; 1 for the first, for all else, and where there is one. */
  readonly tier: number
  readonly link: LinkCode
  readonly part: Part
  readonly side: Side
  readonly case: CaseCode
  readonly demand: Quantity | null
  readonly capacity: Capacity | null
  readonly factors: readonly Factor[]
  readonly allowable: Quantity | null
  readonly utilisation: number | null
  readonly overallFactor: number | null
  readonly grade: Grade | null
  readonly verdict: Verdict
  readonly findings: readonly Finding[]
  readonly terms: readonly Term[]
}

/** Whether a tier is that of a pot under another. */
export const isLower = (tier: number): boolean => tier > 1

/** Symbols of factors in worked sums. */
export const FACTOR_SYMBOL: Readonly<Record<FactorCode, string>> = {
  effectiveStrands: 'n_eff',
  strandsAtWraps: 'n_eff',
  wet: 'k_wet',
  ageing: 'k_age',
  drainHole: 'k_hole',
  duration: 'k_dur',
  reserve: 'k_res',
  relaxation: 'k_relax',
  atRest: 'k_rest',
  forAMoment: 'k_moment',
  scatter: 'k_5',
  wetService: 'k_damp',
}

/** A catalogue value as a factor on a capacity. */
export const factor = (code: FactorCode, v: Value): Factor => ({ code, value: v.value, basis: v.basis, source: v.source })
/** A reserve as the factor it enters with. */
export const reserve = (v: Value): Factor => ({ code: 'reserve', value: 1 / v.value, basis: v.basis, source: v.source })

/** What a link brings to be judged: `assessLink` makes the result of it. */
export interface Evidence {
  readonly link: LinkCode
  readonly part: Part
  readonly side: Side
  readonly case: CaseCode
  readonly demand: Quantity | null
  readonly capacity: Capacity | null
  readonly factors: readonly Factor[]
  readonly grade: Grade
  readonly overallFactor: number | null
  /** The verdict is at least this bad, whatever the numbers say. */
  readonly atLeast: Verdict
  readonly findings: readonly Finding[]
  /** Lines before the common ones (how demand and capacity came about). */
  readonly terms: readonly Term[]
}

const SUM = 'worked sum'

/**
 * Compares a demand with what a link may carry: allowable = capacity x product of factors,
 * utilisation = demand / allowable, verdict by the grade's limit. Without demand or capacity the
 * verdict is "not enough known" at best. An overall factor below the least adds LOW_OVERALL_FACTOR and
 * leaves "just holds" at best.
 */
export function assessLink(evidence: Evidence): LinkResult {
  const { link, part, case: loadCase, demand, capacity, factors, grade, overallFactor } = evidence
  const allowableValue = capacity === null ? null : factors.reduce((product, f) => product * f.value, capacity.value)
  const allowable = capacity === null || allowableValue === null ? null : { value: allowableValue, unit: capacity.unit }
  const ratio = demand === null || allowable === null ? null : demand.value / allowable.value
  const utilisation = ratio !== null && Number.isFinite(ratio) ? ratio : null
  let verdict: Verdict = ratio === null ? 'not enough known' : verdictFor(ratio, grade)
  const findings = [...evidence.findings]
  if (overallFactor !== null && overallFactor < LEAST_OVERALL_FACTOR.value) {
    verdict = worse(verdict, 'just holds')
    findings.push({ code: 'LOW_OVERALL_FACTOR', factor: overallFactor, least: LEAST_OVERALL_FACTOR.value })
  }
  return {
    id: `${link}.${part}.${loadCase}`,
    tier: 1,
    link, part, side: evidence.side, case: loadCase,
    demand, capacity, factors, allowable, utilisation, overallFactor,
    grade: capacity === null ? null : grade,
    verdict: worse(verdict, evidence.atLeast),
    findings,
    terms: commonTerms(evidence, allowable, utilisation),
  }
}

function commonTerms(evidence: Evidence, allowable: Quantity | null, utilisation: number | null): readonly Term[] {
  const { capacity, factors, demand, grade } = evidence
  const terms: Term[] = [...evidence.terms]
  const has = (symbol: string): boolean => terms.some((t) => t.symbol === symbol)
  const add = (term: Term): void => { if (!has(term.symbol)) terms.push(term) }
  if (demand) add({ code: 'demand', symbol: 'E', value: demand.value, unit: demand.unit, basis: 'computed', source: SUM, formula: null })
  if (capacity) add({ code: 'capacity', symbol: 'R', value: capacity.value, unit: capacity.unit, basis: capacity.basis, source: capacity.source, formula: null })
  for (const f of factors) add({ code: f.code, symbol: FACTOR_SYMBOL[f.code], value: f.value, unit: '1', basis: f.basis, source: f.source, formula: null })
  if (allowable) {
    add({ code: 'allowable', symbol: 'A', value: allowable.value, unit: allowable.unit, basis: 'computed', source: SUM, formula: ['R', ...factors.map((f) => FACTOR_SYMBOL[f.code])].join(' * ') })
  }
  if (utilisation !== null) {
    add({ code: 'utilisation', symbol: 'u', value: utilisation, unit: '1', basis: 'computed', source: SUM, formula: 'E / A' })
    const limit = HOLDS_LIMIT[grade]
    add({ code: 'holdsLimit', symbol: 'u_holds', value: limit.value, unit: '1', basis: limit.basis, source: limit.source, formula: null })
  }
  return terms
}
