import type { InspectionColumn, InspectionKind } from '../hanger/inspectionFields'
import type { FieldWords } from './fields'

/** What may be found or done, as a word in the log. */
export const INSPECTION_NAMES: Readonly<Record<InspectionKind, string>> = {
  looked: 'looked at, all well', frayed: 'frayed', thinned: 'thinned', slipped: 'slipped', strandGone: 'strand counted as gone', repaired: 'repaired', note: 'note',
}

/** What the columns of the inspection log are called. */
export const INSPECTION_WORDS: Readonly<Record<InspectionColumn, FieldWords>> = {
  date: { label: 'Date', help: 'Year-month-day, such as 2026-03-21.', choices: {} },
  what: { label: 'What was found or done', help: 'A strand that is frayed or thinned through is better counted as gone: the check then reckons without it.', choices: INSPECTION_NAMES },
  leg: { label: 'Leg', help: 'Its number in the drawing; leave open if it concerns the whole.', choices: {} },
  strands: { label: 'Strands', help: 'How many it concerns; one if you say nothing.', choices: {} },
  note: { label: 'Note', help: 'What you saw, and what you did.', choices: {} },
}
