import type { HangerDocument } from '../hanger/document'

/** What is asked of chance: so many hangers made like this one, drawn from a seed. */
export interface ChanceAsked {
  readonly document: HangerDocument
  /** A whole number from 1 to MOST_SAMPLES. */
  readonly samples: number
  /** A whole number from 0 to GREATEST_SEED; the same seed gives the same hangers. */
  readonly seed: number
}

/** One worker's share of them: chunks `worker`, `worker + workers`, … of the whole. All shares merged are the same answer as one worker's. */
export interface ChanceShare extends ChanceAsked {
  /** From 0. */
  readonly worker: number
  readonly workers: number
}

/** Hangers drawn where nobody says how many: enough that none of them is fewer than 3 in 10,000. */
export const USUAL_SAMPLES = 10_000
/** The most at once: chances of some in 100,000 are already finer than the scatters they rest on. */
export const MOST_SAMPLES = 200_000
export const USUAL_SEED = 1
/** The generator takes 32 bits of seed; a greater one would repeat another. */
export const GREATEST_SEED = 2 ** 31 - 1
