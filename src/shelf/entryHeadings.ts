import type { Field } from '../hanger/field'

const LATER = { first: false, essential: false } as const

/** What every entry may say besides its values. */
export const ENTRY_HEADINGS = {
  name: { type: 'text', max: 80, ...LATER },
  date: { type: 'date', ...LATER },
  note: { type: 'text', max: 200, ...LATER },
} as const satisfies Readonly<Record<string, Field>>

export type EntryHeading = keyof typeof ENTRY_HEADINGS
export const ENTRY_HEADING_NAMES = Object.keys(ENTRY_HEADINGS) as readonly EntryHeading[]
