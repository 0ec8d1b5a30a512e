import type { Basis } from '../catalogue/basis'
import { FILLER_TAKE_UP, OWN_TAKE_UP_DOUBT, ROWS_TAKE_UP, SINNET_TAKE_UP, SPIRAL_TAKE_UP } from '../catalogue/takeUp'
import type { Answers } from '../hanger/fields'
import { exactly, type LengthRange } from './lengthRange'

/** What a strand does in a knotted leg: it runs straight through, ties round the others, or does both by turns. */
export type StrandRole = 'filler' | 'working' | 'strand'

/** Cord over finished length, and how that is known. */
export interface TakeUp extends LengthRange {
  readonly basis: Basis
  readonly source: string
}

type TakeUpAnswers = Pick<Answers, 'make.arrangement' | 'make.build' | 'takeUp.cut' | 'takeUp.finished'>

/** Cord that lies straight. */
export const STRAIGHT: TakeUp = { ...exactly(1), basis: 'computed', source: 'it lies straight' }

/**
 * Cord over length by the maker's own sample, a little more or less; null where none was told.
 * @example learnedTakeUp({ 'takeUp.cut': 1.6, 'takeUp.finished': 0.4 }).likely // 4
 */
export function learnedTakeUp(answers: Pick<Answers, 'takeUp.cut' | 'takeUp.finished'>): TakeUp | null {
  const [cut, finished] = [answers['takeUp.cut'], answers['takeUp.finished']]
  if (cut === null || finished === null) return null
  const likely = cut / finished
  const doubt = OWN_TAKE_UP_DOUBT.value
  return { low: Math.max(1, likely * (1 - doubt)), likely, high: likely * (1 + doubt), basis: 'your own', source: 'your own sample' }
}

/** Cord over length where a strand is knotted: by the maker's own sample, else as is usual; a filler always as is usual. */
export function takeUpOf(answers: TakeUpAnswers, role: StrandRole): TakeUp {
  if (role === 'filler') return FILLER_TAKE_UP
  const inRows = answers['make.arrangement'] === 'panel' || answers['make.build'] === 'alternating'
  if (!inRows && answers['make.build'] === 'plain') return STRAIGHT
  return learnedTakeUp(answers) ?? (inRows ? ROWS_TAKE_UP : answers['make.build'] === 'spiral' ? SPIRAL_TAKE_UP : SINNET_TAKE_UP)
}
