import type { BatchProblem, Separator, TableProblem } from '../batch/problem'
import type { BatchResult } from '../batch/result'
import { editDistance } from './editDistance'
import { CASE_NAMES } from './names'
import { orList } from './quantityProblems'
import { problemText } from './problems'
import { linkName } from './tiers'

const SEPARATOR_NAMES: Readonly<Record<Separator, string>> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' }

/** Names nearly spelt like one, nearest first. */
function nearest(name: string, known: readonly string[]): readonly string[] {
  const typed = name.toLowerCase()
  return known
    .map((one) => ({ one, distance: Math.min(editDistance(typed, one.toLowerCase()), editDistance(typed, one.toLowerCase().split('.').at(-1) ?? '')) }))
    .filter(({ distance }) => distance <= Math.max(1, Math.floor(typed.length / 3)))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 3)
    .map(({ one }) => `“${one}”`)
}

function unknownColumn(column: number, name: string, known: readonly string[]): string {
  const near = nearest(name, known)
  const allowed = near.length > 0 ? `Did you mean ${orList(near)}?` : 'Allowed: name, and the paths of fields, such as pot.rim or cord.diameter; “schema” prints them all.'
  return name === '' ? `Column ${column} has no name. ${allowed}` : `Column ${column}: given “${name.slice(0, 60)}”, which is no field. ${allowed}`
}

type TableWords = { readonly [C in TableProblem['code']]: (problem: Extract<TableProblem, { code: C }>, known: readonly string[]) => string }

const TABLE_WORDS: TableWords = {
  NO_HEADER: () => 'There is no header. The first line must name the columns: name, and the paths of fields, such as pot.rim.',
  UNKNOWN_COLUMN: ({ column, name }, known) => unknownColumn(column, name, known),
  DOUBLE_COLUMN: ({ column, name }) => `Column ${column}: “${name}” is there already. Each field may have one column.`,
  NO_ROWS: () => 'There is no row below the header.',
  CELL_COUNT: ({ cells, columns }) => `The row has ${cells} ${cells === 1 ? 'cell' : 'cells'}, and the header names ${columns}. A cell with the separator in it must stand in quotes.`,
  OTHER_SEPARATOR: ({ separator, found }) => `The row is parted by ${SEPARATOR_NAMES[found]}, and the header by ${SEPARATOR_NAMES[separator]}. Use one sign in the whole table.`,
  NOT_UTF8: () => 'The row holds bytes that are no UTF-8 text. Save the table as “CSV UTF-8”.',
  CONTROL_CHARACTER: ({ column }) => `${column}: the cell holds a control character, which no answer has.`,
  CELL_TOO_LONG: ({ column, length, most }) => `${column}: the cell has ${length} characters. Allowed: up to ${most}.`,
  ROW_TOO_LONG: ({ most }) => `The row has more than ${most} characters; perhaps a quote is not closed.`,
  UNREAD_FILE: ({ why }) => `${why.charAt(0).toUpperCase()}${why.slice(1)}`,
  BAD_QUOTE: () => 'A quote is not closed, or stands within a cell that is not quoted; within quotes it is written twice.',
}

const isOfTable = (problem: BatchProblem): problem is TableProblem => Object.hasOwn(TABLE_WORDS, problem.code)

/** The sentence for what is wrong with a table of hangers or one of its rows; `known`: the names a column may have. */
export function batchProblemText(problem: BatchProblem, known: readonly string[]): string {
  if (!isOfTable(problem)) return problemText(problem)
  return (TABLE_WORDS[problem.code] as (problem: TableProblem, known: readonly string[]) => string)(problem, known)
}

/** Columns of the answer to many hangers. Numbers in it are plain, with a point, for other programs. */
export const BATCH_COLUMNS = ['line', 'file', 'name', 'verdict', 'hanger', 'place', 'decides', 'situation', 'link', 'case', 'utilisation', 'dry_kg', 'watered_kg', 'flooded_kg', 'heaviest_kg', 'problems'] as const

const plain = (value: number | null | undefined, digits: number): string => (value === null || value === undefined ? '' : String(Number(value.toFixed(digits))))

/** Cells of one row of the answer, as BATCH_COLUMNS names them; empty where it is not known. */
export function batchCells({ line, file, name, facts, problems }: BatchResult, known: readonly string[]): readonly string[] {
  const governing = facts?.governing ?? null
  return [
    String(line), file ?? '', name, facts?.verdict ?? '', facts?.hanger ?? '', facts?.place ?? '',
    governing === null ? '' : linkName(governing.link, governing.tier), governing === null ? '' : CASE_NAMES[governing.case],
    governing?.link ?? '', governing?.case ?? '', plain(governing?.utilisation, 4),
    plain(facts?.potted.dry, 3), plain(facts?.potted.watered, 3), plain(facts?.potted.flooded, 3), plain(facts?.heaviest, 3),
    problems.map((problem) => batchProblemText(problem, known)).join(' '),
  ]
}
