import { customerSheet } from './customer/customerSheet'
import type { SheetFacts } from './facts'
import type { SheetOptions } from './options'
import type { Sheet } from './sheet'
import { tagSheet } from './tagSheet'
import { recordSheet } from './workshop/recordSheet'
import { workshopSheet } from './workshop/workshopSheet'

/** Sheets of one hanger, by the name they are asked for. */
export const SHEET_KINDS = {
  customer: customerSheet,
  tag: tagSheet,
  workshop: workshopSheet,
  record: recordSheet,
} as const satisfies Readonly<Record<string, (facts: SheetFacts, options: SheetOptions) => Sheet>>
export type SheetKind = keyof typeof SHEET_KINDS
export const isSheetKind = (word: string): word is SheetKind => Object.hasOwn(SHEET_KINDS, word)
