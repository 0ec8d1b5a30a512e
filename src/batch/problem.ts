import type { FieldPath } from '../hanger/fields'
import type { InputProblem } from '../hanger/problem'

/** What is wrong with a table of hangers or with one of its rows. Sentences: words/batch.ts. */
export type TableProblem =
  | { readonly code: 'NO_HEADER' }
  | { readonly code: 'UNKNOWN_COLUMN'; readonly column: number; readonly name: string }
  | { readonly code: 'DOUBLE_COLUMN'; readonly column: number; readonly name: string }
  /** The table holds no row below its header. */
  | { readonly code: 'NO_ROWS' }
  | { readonly code: 'CELL_COUNT'; readonly cells: number; readonly columns: number }
  /** A row with too many cells, parted by another sign than the header's. */
  | { readonly code: 'OTHER_SEPARATOR'; readonly separator: Separator; readonly found: Separator }
  | { readonly code: 'NOT_UTF8' }
  | { readonly code: 'CONTROL_CHARACTER'; readonly column: FieldPath | 'name' }
  | { readonly code: 'CELL_TOO_LONG'; readonly column: FieldPath | 'name'; readonly length: number; readonly most: number }
  | { readonly code: 'ROW_TOO_LONG'; readonly most: number }
  /** A quote that nothing closes, or that stands within a cell. */
  | { readonly code: 'BAD_QUOTE' }
  /** A file of the folder that the system did not give; `why` is a sentence. */
  | { readonly code: 'UNREAD_FILE'; readonly why: string }

/** The same, or what is wrong with a hanger itself. */
export type BatchProblem = TableProblem | InputProblem

/** What may part the cells of a row. */
export const SEPARATORS = [',', ';', '\t'] as const
export type Separator = (typeof SEPARATORS)[number]
