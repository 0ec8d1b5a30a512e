/** What is done to the dialog of sheets from outside it. */
export interface SheetsHandle {
  readonly open: () => Promise<void>
  readonly isOpen: () => boolean
  /** Prints what the dialog shows; nothing where there is nothing yet. */
  readonly print: () => Promise<void>
  /** Writes what the dialog shows as a PDF; nothing where there is nothing yet. */
  readonly savePdf: () => Promise<void>
}
