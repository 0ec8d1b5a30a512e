import type { ChartRow, HangerDocument, PotTaken, Sheet, SheetKind, SheetOptions, WritingHabits } from '#core'

/** Of what a sheet is made: a hanger at hand, or the text of a file. */
export type SheetSource =
  /** `edition`: another for each change, so that what was checked is not checked again for another kind or size. */
  | { readonly document: HangerDocument, readonly edition: number }
  | { readonly text: string }

/** To the worker: one sheet. */
export interface SheetQuestion {
  readonly kind: 'sheet'
  readonly revision: number
  readonly source: SheetSource
  readonly sheet: SheetKind
  readonly options: SheetOptions
  /** How numbers are written: the worker has a core of its own. */
  readonly habits: WritingHabits
}

/** To the worker: how one hanger takes the usual pots. */
export interface ChartQuestion {
  readonly kind: 'chartRow'
  readonly revision: number
  readonly text: string
  /** Name of the file. */
  readonly file: string
  readonly habits: WritingHabits
}

/** To the worker: how one hanger takes the pot of another document. */
export interface PotQuestion {
  readonly kind: 'potTaken'
  readonly revision: number
  readonly text: string
  readonly file: string
  /** The hanger whose pot is asked about. */
  readonly pot: HangerDocument
  readonly habits: WritingHabits
}

export type PotOutcome = { readonly ok: true, readonly taken: PotTaken } | { readonly ok: false, readonly problem: string }

export type RowOutcome = { readonly ok: true, readonly row: ChartRow } | { readonly ok: false, readonly problem: string }

/** A sheet, or the sentence that says why there is none. */
export type SheetOutcome =
  /** `isOnlyDraft`: no weight may be told, so that nothing but a draft, or what must change, is printed for the customer. */
  | { readonly ok: true, readonly sheet: Sheet, readonly isOnlyDraft: boolean }
  | { readonly ok: false, readonly problem: string }

/** From the worker, one to each question. */
export type SheetReply =
  | { readonly kind: 'sheet', readonly revision: number, readonly outcome: SheetOutcome }
  | { readonly kind: 'chartRow', readonly revision: number, readonly outcome: RowOutcome }
  | { readonly kind: 'potTaken', readonly revision: number, readonly outcome: PotOutcome }
  | { readonly kind: 'sheetFailed', readonly revision: number, readonly detail: string }
