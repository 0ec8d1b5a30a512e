import type { LinkCode } from '../check/linkResult'
import type { PartKey } from '../check/parts'
import type { InputCode } from './inputs'
import type { ChanceCase, ChanceFrame, ChanceTally } from './tally'

/** Interval at 95 %: Wilson's of 1927 or, where none was overloaded, from 0 to the rule of three. */
export interface ChanceInterval {
  readonly low: number
  readonly high: number
  readonly method: 'wilson' | 'ruleOfThree'
}

/** A part and how many of the hangers it concerns; `share` of those counted in the list. */
export interface PartCount {
  readonly key: PartKey
  readonly link: LinkCode
  readonly tier: number
  readonly count: number
  readonly share: number
}

/** Counts between rising edges, one edge more than counts; all hangers lie between the first and the last. */
export interface Distribution {
  readonly unit: '1' | 'kg'
  /** Whether the edges rise by a ratio rather than by a difference. */
  readonly logarithmic: boolean
  readonly edges: readonly number[]
  readonly counts: readonly number[]
  readonly quantiles: Readonly<Record<'p05' | 'p25' | 'p50' | 'p75' | 'p95' | 'p99' | 'p999', number>>
  readonly least: number
  readonly most: number
}

/** What chance says of one situation. */
export interface StateChance {
  readonly case: ChanceCase | 'atRest'
  readonly hangers: number
  readonly overloaded: number
  /** overloaded / hangers */
  readonly chance: number
  readonly interval: ChanceInterval
}

/** The same with what fails and how hard the parts work. */
export interface CaseChance extends StateChance {
  readonly case: ChanceCase
  /** Parts that would fail first among those overloaded, most often first. */
  readonly fails: readonly PartCount[]
  /** Parts that were used hardest, overloaded or not, most often first. */
  readonly weakest: readonly PartCount[]
  /** Largest demand over real strength of any part, hanger by hanger: above 1 is overloaded. */
  readonly use: Distribution
}

/** How much one input decides: shares of the variance of the logarithm of the largest demand over strength at rest (Sobol indices, estimators of Jansen 1999). */
export interface InputRank {
  readonly input: InputCode
  /** What is left when all else is settled; ranks go by this. */
  readonly total: number
  /** What would go if this alone were settled. */
  readonly alone: number
}

/** What no figure of chance covers, always said. */
export const OUTSIDE_CHANCE = ['missedTimber', 'misTied', 'swungOn', 'unmeasured', 'unlisted'] as const
export type OutsideChance = (typeof OUTSIDE_CHANCE)[number]

/** What chance says of a hanger; of partial tallies what is known so far. */
export interface ChanceReport {
  readonly frame: ChanceFrame
  /** Hangers drawn so far, and whether these are all that were asked for. */
  readonly hangers: number
  readonly complete: boolean
  /** Overloaded in any state at rest. */
  readonly atRest: StateChance
  readonly cases: readonly CaseChance[]
  /** Most decisive first; empty until enough hangers were drawn. */
  readonly inputs: readonly InputRank[]
  /** Just watered, kg. */
  readonly watered: Distribution
  readonly outside: readonly OutsideChance[]
}

/** The report of a tally, whole or partial; null of an empty one. */
export function chanceReport(tally: ChanceTally): ChanceReport | null {
  void tally
  return null
}
