import { editField, renameDocument, type HangerDocument } from '../hanger/document'
import type { BatchColumn } from './columns'
import { SEPARATORS, type BatchProblem, type Separator } from './problem'

/** Longest cell that is read, characters: no answer has so many. */
const MOST_IN_CELL = 500
/** Longest name of a hanger, as in its file. */
const MOST_IN_NAME = 200

export type RowOutcome =
  | { readonly ok: true; readonly document: HangerDocument }
  | { readonly ok: false; readonly problems: readonly BatchProblem[] }

// What stands for bytes that are no UTF-8 text once they were decoded.
const UNDECODABLE = '�'
const CONTROL = /(?![\t\n\r])\p{Cc}/u

/** One cell's problem; null where it can be an answer. */
function cellProblem(column: BatchColumn, cell: string): BatchProblem | null {
  if (cell.includes(UNDECODABLE)) return { code: 'NOT_UTF8' }
  if (CONTROL.test(cell)) return { code: 'CONTROL_CHARACTER', column }
  const most = column === 'name' ? MOST_IN_NAME : MOST_IN_CELL
  const { length } = cell.trim()
  return length > most ? { code: 'CELL_TOO_LONG', column, length, most } : null
}

/** The sign by which a row was parted that has not as many cells as columns, where it is another than the header's. */
function otherSeparator(cells: readonly string[], columns: number, separator: Separator): Separator | null {
  const whole = cells.join(separator)
  return SEPARATORS.find((one) => one !== separator && whole.split(one).length === columns) ?? null
}

/**
 * A row of a table as a hanger: its cells laid over what all rows share; an empty cell is no answer of its own. What the texts
 * mean is for `resolveDocument`. Problems: CELL_COUNT, OTHER_SEPARATOR, NOT_UTF8, CONTROL_CHARACTER, CELL_TOO_LONG.
 */
export function rowDocument(base: HangerDocument, columns: readonly BatchColumn[], cells: readonly string[], separator: Separator): RowOutcome {
  if (cells.length !== columns.length) {
    if (cells.some((cell) => cell.includes(UNDECODABLE))) return { ok: false, problems: [{ code: 'NOT_UTF8' }] }
    const found = otherSeparator(cells, columns.length, separator)
    return { ok: false, problems: [found === null ? { code: 'CELL_COUNT', cells: cells.length, columns: columns.length } : { code: 'OTHER_SEPARATOR', separator, found }] }
  }
  const problems = columns.flatMap((column, i) => cellProblem(column, cells[i] ?? '') ?? [])
  if (problems.length > 0) return { ok: false, problems }
  const document = columns.reduce((now, column, i) => {
    const cell = cells[i]?.trim() ?? ''
    if (cell === '') return now
    return column === 'name' ? renameDocument(now, cell) : editField(now, column, cell)
  }, base)
  return { ok: true, document }
}
