import { isDeepStrictEqual } from 'node:util'
import { stringify } from 'csv-stringify/sync'
import { COLUMN_NAMES, readColumns } from '../../src/batch/columns'
import { SEPARATORS, type Separator } from '../../src/batch/problem'
import { batchResult } from '../../src/batch/result'
import { rowDocument } from '../../src/batch/rowDocument'
import { csvRows, type CsvRow } from '../../src/cli/batch/csvRows'
import { decoded } from '../../src/cli/batch/decode'
import { DEMOS } from '../../src/hanger/demos'
import { EMPTY_DOCUMENT } from '../../src/hanger/document'
import { parseDocument } from '../../src/hanger/parse'
import { batchProblemText } from '../../src/words/batch'
import type { Chance } from './chance'
import { mutatedText, NASTY_TEXTS } from './mutate'
import { oddNumbers, prototypesAreClean } from './wholesome'

export interface TableTally {
  tried: number
  rows: number
  read: number
  checked: number
  slowest: number
}

/** The demos' answers by column, as somebody would put them into a table. */
const ANSWERS = DEMOS.map(({ text }) => {
  const parsed = parseDocument(text)
  if (!parsed.ok) throw new Error('A demo that cannot be read')
  return new Map<string, string>([['name', parsed.document.name], ...Object.entries(parsed.document.typed)])
})

const bytesOf = (text: string, chance: Chance): Uint8Array => {
  const kind = chance.whole(1, 20)
  if (kind === 1) return Buffer.from(`\uFEFF${text}`, 'utf16le')
  if (kind === 2) return Buffer.from(`\uFEFF${text}`, 'utf16le').swap16()
  if (kind === 3) return Buffer.from(text, 'latin1')
  return Buffer.from(`${kind === 4 ? '\uFEFF' : ''}${text}`)
}

function table(chance: Chance): Uint8Array {
  const rows = Array.from({ length: chance.whole(1, 5) }, () => chance.oneOf(ANSWERS))
  const columns = [...new Set(rows.flatMap((row) => [...row.keys()]))]
  if (chance.maybe(10)) columns.push(chance.oneOf([...NASTY_TEXTS, ...columns]))
  const cells = rows.map((row) => columns.map((column) => {
    const cell = row.get(column) ?? ''
    return chance.maybe(10) ? mutatedText(cell, chance, COLUMN_NAMES) : cell
  }))
  const delimiter: Separator = chance.oneOf(SEPARATORS)
  const clean = stringify([columns, ...cells], { delimiter, record_delimiter: chance.oneOf(['\n', '\r\n', '\r']), quoted: chance.maybe(20) })
  const text = chance.maybe(40) ? mutatedText(clean, chance, ['"', '""', '\r', delimiter, ...NASTY_TEXTS]) : clean
  return bytesOf(text, chance)
}

async function rowsOf(pieces: readonly Uint8Array[]): Promise<{ readonly separator: Separator; readonly rows: readonly CsvRow[] }> {
  const rows: CsvRow[] = []
  let separator: Separator = ','
  async function* stream(): AsyncGenerator<Uint8Array, void, void> { yield* pieces }
  for await (const group of csvRows(decoded(stream()))) {
    rows.push(...group.rows)
    separator = group.separator
  }
  return { separator, rows }
}

function cut(bytes: Uint8Array, chance: Chance): readonly Uint8Array[] {
  const pieces: Uint8Array[] = []
  for (let at = 0; at < bytes.length;) {
    const end = at + chance.whole(1, chance.maybe(50) ? 5 : 200)
    pieces.push(bytes.subarray(at, end))
    at = end
  }
  return pieces
}

async function harm(bytes: Uint8Array, chance: Chance, tally: TableTally, check: boolean): Promise<string | null> {
  const whole = await rowsOf([bytes])
  if (!isDeepStrictEqual(await rowsOf(cut(bytes, chance)), whole)) return 'reads otherwise when it comes in pieces'
  const { separator, rows: [header, ...rows] } = whole
  tally.rows += rows.length
  if (rows.some(({ line }, i) => line < (rows[i - 1]?.line ?? 1))) return 'rows are out of order'
  if (header === undefined || 'problem' in header) return null
  const columns = readColumns(header.cells)
  if (!columns.ok) return columns.problems.every((problem) => batchProblemText(problem, COLUMN_NAMES).length > 0) ? null : 'refused without a sentence'
  for (const row of rows) {
    if ('problem' in row) {
      if (batchProblemText(row.problem, COLUMN_NAMES) === '') return 'refused without a sentence'
      continue
    }
    const read = rowDocument(EMPTY_DOCUMENT, columns.columns, row.cells, separator)
    if (!read.ok) {
      if (read.problems.some((problem) => batchProblemText(problem, COLUMN_NAMES) === '')) return 'refused without a sentence'
      continue
    }
    tally.read += 1
    if (!check) continue
    tally.checked += 1
    const result = batchResult(row.line, null, read.document, false)
    if ((result.facts === null) !== (result.problems.length > 0)) return 'neither checked nor told why not'
    const [odd] = oddNumbers(result)
    if (odd !== undefined) return `checked as ${odd}`
  }
  return null
}

/** Reads one mutated table as `batch` would, in one piece and in many, and says what harm it did; null where none. */
export async function tableHarm(chance: Chance, tally: TableTally, check: boolean): Promise<{ readonly what: string; readonly input: string } | null> {
  const bytes = table(chance)
  tally.tried += 1
  const start = performance.now()
  const what = await harm(bytes, chance, tally, check).catch((error: unknown) => `crashed: ${error instanceof Error ? error.stack ?? error.message : String(error)}`)
  tally.slowest = Math.max(tally.slowest, performance.now() - start)
  const found = what ?? (prototypesAreClean() ? null : 'a prototype was changed')
  return found === null ? null : { what: found, input: Buffer.from(bytes).toString('latin1') }
}
