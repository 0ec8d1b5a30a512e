import { parse, type CsvError } from 'csv-parse'
import { SEPARATORS, type Separator, type TableProblem } from '../../batch/problem'
import { evenBreaks } from './evenBreaks'

/** A row of a table as it stands there, or what is wrong with it. `line` is where it begins, from 1. */
export type CsvRow =
  | { readonly line: number; readonly cells: readonly string[] }
  | { readonly line: number; readonly problem: TableProblem }

/** Rows that came together, and what parts their cells. */
export interface CsvRows {
  readonly separator: Separator
  readonly rows: readonly CsvRow[]
}

/** Longest row, characters: more is a quote that was not closed, or no table. */
const MOST_IN_ROW = 100_000

/** The sign that parts most cells of the header. */
export function separatorOf(header: string): Separator {
  const outside = header.replace(/"[^"]*"/g, '')
  const count = (sign: Separator): number => outside.split(sign).length
  return SEPARATORS.reduce((best, sign) => (count(sign) > count(best) ? sign : best), ',')
}

const problemOf = (error: CsvError): TableProblem => (error.code === 'CSV_MAX_RECORD_SIZE' ? { code: 'ROW_TOO_LONG', most: MOST_IN_ROW } : { code: 'BAD_QUOTE' })

const breaksIn = (cells: readonly string[]): number => cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0)

/** The rows of a text that comes in pieces, its header the first of them, as many at a time as a piece held. */
export async function* csvRows(pieces: AsyncIterable<string>): AsyncGenerator<CsvRows, void, void> {
  let rows: CsvRow[] = []
  let separator: Separator = ','
  let waiting = ''
  let parser: ReturnType<typeof parse> | null = null
  let told = 0
  const broken: CsvError[] = []
  const take = (): readonly CsvRow[] => {
    const taken = rows
    rows = []
    return taken
  }
  const start = (header: string): ReturnType<typeof parse> => {
    separator = separatorOf(header)
    const one = parse({
      delimiter: separator,
      record_delimiter: '\n',
      relax_column_count: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      max_record_size: MOST_IN_ROW,
      // Both are called in the order of the rows, while a piece is written.
      on_record: (cells: string[], { lines }) => {
        rows.push({ line: lines - breaksIn(cells), cells })
        return null
      },
      on_skip: (error) => {
        if (!error) return undefined
        const line = Number(error['lines'] ?? 0)
        // A row with two quotes too many is told once.
        if (line !== told) rows.push({ line, problem: problemOf(error) })
        told = line
        return undefined
      },
    })
    one.on('error', (error: CsvError) => { broken.push(error) })
    one.resume()
    return one
  }
  const write = (to: ReturnType<typeof parse>, text: string): Promise<void> => new Promise((done) => { to.write(text, () => done()) })

  for await (const piece of evenBreaks(pieces)) {
    if (parser === null) {
      waiting += piece
      const end = waiting.indexOf('\n')
      if (end < 0 && waiting.length < MOST_IN_ROW) continue
      parser = start(end < 0 ? waiting : waiting.slice(0, end))
      await write(parser, waiting)
      waiting = ''
    } else await write(parser, piece)
    yield { separator, rows: take() }
    if (broken.length > 0) break
  }
  parser ??= start(waiting)
  const last = parser
  if (waiting !== '') await write(last, waiting)
  await new Promise<void>((done) => { last.once('error', () => done()).end(() => done()) })
  const [error] = broken
  if (error !== undefined) rows.push({ line: Number(error['lines'] ?? 0), problem: problemOf(error) })
  yield { separator, rows: take() }
}
