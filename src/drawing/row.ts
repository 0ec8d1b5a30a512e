import type { Answers } from '../hanger/fields'
import type { CaseCode } from '../load/loadCases'
import type { Shape } from './shape'
import { shiftedShape } from './shifted'

type RowAnswers = Pick<Answers, 'make.arrangement' | 'row.count' | 'row.spacing'>

/** How far the middle of the row is from this hanger, m: it is drawn as the one furthest to the right, where nothing hides its numbers. */
export const rowMiddle = (answers: RowAnswers): number => (answers['make.arrangement'] === 'row' ? ((1 - answers['row.count']) * answers['row.spacing']) / 2 : 0)

/** Places of the others, from this hanger, m; the far end's hangs no more where one is taken down. */
export function neighbours(answers: RowAnswers, code: CaseCode): readonly number[] {
  if (answers['make.arrangement'] !== 'row') return []
  const hung = answers['row.count'] - (code === 'neighbourDown' ? 2 : 1)
  return Array.from({ length: hung }, (_, i) => (0 - (i + 1)) * answers['row.spacing'])
}

/** The others, drawn like this hanger, without what tells one leg from another. */
export const neighbourShapes = (places: readonly number[], hanger: readonly Shape[]): readonly Shape[] =>
  places.flatMap((by) => hanger.filter((shape) => shape.kind !== 'label' && shape.link !== 'stick').map((shape): Shape => ({ ...shiftedShape(shape, by), leg: null })))
