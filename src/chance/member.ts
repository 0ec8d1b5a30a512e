import type { State } from '../load/states'
import type { ChanceCase } from './tally'

/** One way in which a part may give way, asked of one drawn hanger after the other. */
export interface Member {
  /** Takes over the numbers of the next hanger. */
  readonly draw: (z: Float64Array) => void
  /** Demand over real strength in a situation; 0 where it does not arise. */
  readonly use: (code: ChanceCase) => number
}

/** What hangs over what the check counts, by situation. */
export type RatioIn = (code: ChanceCase) => number

/** The state that a situation meets the pot in. */
export type StateIn = (code: ChanceCase) => State
