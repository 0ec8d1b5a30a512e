import type { Field } from './field'

const LATER = { first: false, essential: false, tacit: false } as const

/** What was found or done when a hanger was looked at. */
export const INSPECTION_KINDS = ['looked', 'frayed', 'thinned', 'slipped', 'strandGone', 'repaired', 'note'] as const
export type InspectionKind = (typeof INSPECTION_KINDS)[number]

/** The columns of the inspection log, in the order they are asked. */
export const INSPECTION_FIELDS = {
  date: { type: 'date', ...LATER },
  what: { type: 'choice', choices: INSPECTION_KINDS, default: { choice: 'note', basis: 'common practice', source: 'a remark decides nothing' }, ...LATER },
  leg: { type: 'open', kind: 'count', min: 1, max: 12, ...LATER },
  strands: { type: 'open', kind: 'count', min: 1, max: 48, ...LATER },
  note: { type: 'text', max: 200, ...LATER },
} as const satisfies Readonly<Record<string, Field>>

export type InspectionColumn = keyof typeof INSPECTION_FIELDS
export const INSPECTION_COLUMNS = Object.keys(INSPECTION_FIELDS) as readonly InspectionColumn[]
