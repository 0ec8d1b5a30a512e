import type { LinkCode } from '../check/linkResult'
import { partOf, type PartKey } from '../check/parts'
import { distributionOf, type Distribution } from './distribution'
import type { InputCode } from './inputs'
import { chanceInterval, type ChanceInterval } from './interval'
import { indicesOf } from './sensitivity'
import { CHANCE_CASES, type CaseTally, type ChanceCase, type ChanceFrame, type ChanceTally, type ChunkTally, type PickFreezeSums } from './tally'

/** A part and how many of the hangers it concerns; `share` of those counted in the list. */
export interface PartCount {
  readonly key: PartKey
  readonly link: LinkCode
  readonly tier: number
  readonly count: number
  readonly share: number
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
  /** Parts that came nearest to failing, each measured by its own scatter, most often first. */
  readonly nearest: readonly PartCount[]
  /** Largest demand over real strength of any part, hanger by hanger: above 1 is overloaded. */
  readonly use: Distribution
}

/** How much one input decides: shares of the variance of how near the hanger comes to failing at rest: the logarithm of demand over strength by its scatter, of the part nearest to failing (Sobol indices, estimators of Jansen 1999). */
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

/** Pairs from which the order of the inputs is worth telling. */
const LEAST_PAIRS = 50

/** The report of a tally, whole or partial; null of an empty one. */
export function chanceReport({ frame, chunks }: ChanceTally): ChanceReport | null {
  const hangers = total(chunks.map((chunk) => chunk.hangers))
  const watered = distributionOf(chunks.flatMap((chunk) => chunk.watered), 'kg', false)
  if (watered === null) return null
  return {
    frame, hangers, watered,
    complete: hangers === frame.samples,
    atRest: stateChance('atRest', hangers, total(chunks.map((chunk) => chunk.atRest))),
    cases: CHANCE_CASES.flatMap((code) => caseChance(code, frame, chunks, hangers)),
    inputs: ranked(frame, chunks.map((chunk) => chunk.rank)),
    outside: OUTSIDE_CHANCE,
  }
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, x) => sum + x, 0)
/** Sums place by place, in the order of the chunks, so that rounding is the same however they came. */
const totals = (rows: readonly (readonly number[])[], length: number): readonly number[] => Array.from({ length }, (_, i) => total(rows.map((row) => row[i] ?? 0)))

const stateChance = <Case extends StateChance['case']>(code: Case, hangers: number, overloaded: number): StateChance & { readonly case: Case } =>
  ({ case: code, hangers, overloaded, chance: overloaded / hangers, interval: chanceInterval(overloaded, hangers) })

function caseChance(code: ChanceCase, { parts }: ChanceFrame, chunks: readonly ChunkTally[], hangers: number): readonly CaseChance[] {
  const tallies = chunks.map((chunk): CaseTally => chunk.cases[code])
  const use = distributionOf(tallies.flatMap((tally) => tally.use), '1', true)
  if (use === null) return []
  const overloaded = totals(tallies.map((tally) => tally.overloaded), parts.length)
  return [{ ...stateChance(code, hangers, total(overloaded)), use, fails: counted(parts, overloaded), nearest: counted(parts, totals(tallies.map((tally) => tally.nearest), parts.length)) }]
}

/** Parts that count any, most first. */
function counted(parts: readonly PartKey[], counts: readonly number[]): readonly PartCount[] {
  const all = total(counts)
  return parts.flatMap((key, i): readonly PartCount[] => {
    const count = counts[i] ?? 0
    return count === 0 ? [] : [{ key, ...partOf(key), count, share: count / all }]
  }).sort((a, b) => b.count - a.count)
}

function ranked({ inputs }: ChanceFrame, sums: readonly PickFreezeSums[]): readonly InputRank[] {
  const pairs = total(sums.map((s) => s.pairs))
  if (pairs < LEAST_PAIRS) return []
  const indices = indicesOf({
    pairs, sum: total(sums.map((s) => s.sum)), squares: total(sums.map((s) => s.squares)),
    own: totals(sums.map((s) => s.own), inputs.length), others: totals(sums.map((s) => s.others), inputs.length),
  })
  return inputs.map((input, i): InputRank => ({ input, ...(indices[i] ?? { total: 0, alone: 0 }) })).sort((a, b) => b.total - a.total)
}
