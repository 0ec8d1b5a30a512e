import type { LinkCode } from '../check/linkResult'
import type { FieldPath } from '../hanger/fields'
import type { AnswerProblem } from '../hanger/problem'

/**
 * Why no figure is given. The first three are faults of what was asked; the others are no fault: what matters most is not known,
 * and a figure without it would be false. Sentences: words/chanceProblems.ts.
 */
export type ChanceProblem =
  | { readonly code: 'BAD_SAMPLES'; readonly given: string; readonly most: number }
  | { readonly code: 'BAD_SEED'; readonly given: string; readonly greatest: number }
  | { readonly code: 'UNREADABLE'; readonly problems: readonly AnswerProblem[] }
  /** There is no pot yet, so that nothing hangs in it. */
  | { readonly code: 'NO_POT' }
  /** There is no hanger yet. */
  | { readonly code: 'NO_HANGER' }
  /** What hangs in it, or how it is made, is still open: the first questions named; none where a weighing does not fit the pot. */
  | { readonly code: 'LOAD_NOT_KNOWN'; readonly open: readonly FieldPath[] }
  /** The strength of the strands that carry the pot is not known well enough. */
  | { readonly code: 'LEGS_NOT_KNOWN' }
  /** The check refuses the strands that carry the pot, whatever their strength. */
  | { readonly code: 'LEGS_REFUSED' }
  /** The strands do not reach round the pot, or it does not come to rest in them. */
  | { readonly code: 'NO_BALANCE' }
  /** No part at all is known. */
  | { readonly code: 'NOTHING_KNOWN'; readonly links: readonly LinkCode[] }
