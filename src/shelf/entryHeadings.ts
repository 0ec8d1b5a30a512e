import type { Field } from '../hanger/field'
import { PULL_TEST_FIELDS } from '../hanger/pullTestFields'

/** What every entry may say besides its values; its day and note are read as those of a pull test. */
export const ENTRY_HEADINGS = {
  name: { ...PULL_TEST_FIELDS.note, max: 80 },
  date: PULL_TEST_FIELDS.date,
  note: PULL_TEST_FIELDS.note,
} as const satisfies Readonly<Record<string, Field>>

export type EntryHeading = keyof typeof ENTRY_HEADINGS
export const ENTRY_HEADING_NAMES = Object.keys(ENTRY_HEADINGS) as readonly EntryHeading[]
