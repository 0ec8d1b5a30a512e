import type { PageFormat } from './sheet'

/** How a sheet is made. */
export interface SheetOptions {
  readonly format: PageFormat
  /** Day the sheet is made, YYYY-MM-DD: the core has no clock. */
  readonly today: string
  /** Marked on every page as a draft; so even one of a hanger that fails may be printed. */
  readonly draft: boolean
}
