import type { WritingHabits } from '#core'
import type { HangerCard } from './hangerCard'

/** To the worker: the text of one hanger file. The heaviest pot is asked apart, for it takes many checks. */
export interface HangerQuestion {
  readonly kind: 'hangerCard' | 'hangerHeaviest'
  readonly revision: number
  readonly text: string
  /** How numbers are written: the worker has a core of its own. */
  readonly habits: WritingHabits
}

/** From the worker, one to each question. */
export type HangerReply =
  | { readonly kind: 'hangerCard', readonly revision: number, readonly card: HangerCard }
  | { readonly kind: 'hangerHeaviest', readonly revision: number, readonly heaviest: number | null }
  | { readonly kind: 'hangerFailed', readonly revision: number, readonly detail: string }
