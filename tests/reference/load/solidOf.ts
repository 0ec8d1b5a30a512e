import { potOutline, type OutlineAnswers } from '../../../src/load/potOutline'
import { solidBetween, type Solid } from '../../../src/load/solid'

/** Outside measures as plain metres. */
export type Outside = { readonly [P in keyof OutlineAnswers]: OutlineAnswers[P] extends number ? number : OutlineAnswers[P] }

/** The solid within a pot's outside; measures that its shape does not ask for do not matter. */
export function solidOf(measures: Partial<Outside>): Solid {
  const answers = { 'pot.shape': 'taperedRound', 'pot.rim': NaN, 'pot.base': NaN, 'pot.height': NaN, 'pot.length': NaN, 'pot.belly': NaN, 'pot.bellyHeight': NaN, ...measures } as OutlineAnswers
  return solidBetween(potOutline(answers, 0), 0, answers['pot.height'])
}
