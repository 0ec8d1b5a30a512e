import type { LinkCode } from '../check/linkResult'
import type { PartKey } from '../check/parts'
import type { InputCode } from './inputs'

/** The situations told, in order: the three at rest, and let go after being pushed aside. */
export const CHANCE_CASES = ['dry', 'watered', 'flooded', 'bump'] as const
export type ChanceCase = (typeof CHANCE_CASES)[number]

/** Why a part has no share in the figures: its strength is not known, the check refuses it whatever it bears, it is one length against another, of which nothing scatters, or it bears far more than any pot. */
export type LeftOutReason = 'notKnown' | 'refused' | 'fit' | 'farStronger'
/** A part that was left out. */
export interface LeftOut {
  readonly key: PartKey
  readonly link: LinkCode
  readonly tier: number
  readonly reason: LeftOutReason
}

/** What is the same for every chunk of one question. */
export interface ChanceFrame {
  readonly samples: number
  readonly seed: number
  /** Parts judged, from the building down; counts of a chunk stand in this order. */
  readonly parts: readonly PartKey[]
  /** Those of them whose strength rests on a model that nobody has tested. */
  readonly byModel: readonly PartKey[]
  readonly leftOut: readonly LeftOut[]
  /** Inputs drawn; sums of a chunk stand in this order. */
  readonly inputs: readonly InputCode[]
  /** Whether the forces in the strands were solved anew for each hanger, or taken from the check at their worst and scaled by weight (wall planters, tiers). */
  readonly slings: 'solved' | 'scaled'
  /** Watered weight as the check counts it, kg: high. */
  readonly checkedWeight: number
  /** Service life that the hangers are judged at the end of, s. */
  readonly life: number
}

/** What one situation did in a chunk. */
export interface CaseTally {
  /** Largest demand over real strength of any part, one for each hanger. */
  readonly use: readonly number[]
  /** Of each part, in how many hangers it came nearest to failing, measured by its own scatter; and in how many it was overloaded, and more so than any other. */
  readonly nearest: readonly number[]
  readonly overloaded: readonly number[]
}

/** Sums of the pick-freeze pairs of a chunk, from which the inputs are ranked (sensitivity.ts). */
export interface PickFreezeSums {
  readonly pairs: number
  readonly sum: number
  readonly squares: number
  /** Of each input: squares of what changes when it alone is drawn anew, and when all else is. */
  readonly own: readonly number[]
  readonly others: readonly number[]
}

/** What came of one chunk of hangers. */
export interface ChunkTally {
  /** From 0; chunks of one question never share an index. */
  readonly index: number
  readonly hangers: number
  readonly cases: Readonly<Record<ChanceCase, CaseTally>>
  /** Whether it was overloaded in any of the three states at rest: how many hangers. */
  readonly atRest: number
  /** Weight just watered of each hanger, kg. */
  readonly watered: readonly number[]
  readonly rank: PickFreezeSums
}

/** Plain data, so that it goes from worker to window as it is. */
export interface ChanceTally {
  readonly frame: ChanceFrame
  /** In order of their index. */
  readonly chunks: readonly ChunkTally[]
}

/** Two tallies of one question as one, whichever was ready first. */
export const mergeTallies = (a: ChanceTally, b: ChanceTally): ChanceTally =>
  ({ frame: a.frame, chunks: [...a.chunks, ...b.chunks].sort((x, y) => x.index - y.index) })
