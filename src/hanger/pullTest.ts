import { newtons, seconds, type Newtons, type Seconds } from '../quantity/si'
import type { Extra } from './extra'
import type { RecordProblem } from './problem'
import { PULL_TEST_COLUMNS, PULL_TEST_FIELDS, type PullTestColumn } from './pullTestFields'
import { readValue } from './readValue'

/** A row of the log as typed. */
export interface PullTestRow {
  readonly typed: Readonly<Partial<Record<PullTestColumn, string>>>
  /** Keys of the row that this version does not know; kept and written back. */
  readonly extra: Extra
}

export const EMPTY_PULL_TEST: PullTestRow = { typed: {}, extra: {} }

/** One pull test read into SI. */
export interface PullTest {
  /** Where it stands in the log, from 0. */
  readonly row: number
  readonly force: Newtons
  /** Whether the load was given as a mass and taken as the pull of that mass. */
  readonly asMass: boolean
  readonly how: 'straight' | 'tied'
  readonly state: 'dry' | 'soaked'
  readonly broke: boolean
  readonly time: Seconds | null
  readonly date: string | null
  readonly note: string | null
}

/** The row with one column's text changed; null or blank text takes it back. */
export function editPullTest(row: PullTestRow, column: PullTestColumn, text: string | null): PullTestRow {
  const { [column]: before, ...others } = row.typed
  const next = text === null || text.trim() === '' ? undefined : text
  if (next === before) return row
  return { ...row, typed: next === undefined ? others : { ...row.typed, [column]: next } }
}

/**
 * Reads one row of the log: a test, null where no load is written yet, and every column that cannot be
 * read as a problem.
 * @example readPullTest({ typed: { load: '118 N', how: 'tied' }, extra: {} }, 0).test.force // 118
 */
export function readPullTest(row: PullTestRow, index: number): { readonly test: PullTest | null; readonly problems: readonly RecordProblem[] } {
  const values: Partial<Record<PullTestColumn, number | string>> = {}
  const problems: RecordProblem[] = []
  let asMass = false
  for (const column of PULL_TEST_COLUMNS) {
    const text = row.typed[column]
    if (text === undefined) continue
    const read = readValue(column, PULL_TEST_FIELDS[column], text)
    if (!read.ok) problems.push({ code: 'IN_PULL_TEST', row: index, why: read.problem })
    else {
      values[column] = read.value
      asMass ||= read.asMass
    }
  }
  if (problems.length > 0 || typeof values.load !== 'number') return { test: null, problems }
  const test: PullTest = {
    row: index,
    force: newtons(values.load),
    asMass,
    how: values.how === 'tied' ? 'tied' : 'straight',
    state: values.state === 'soaked' ? 'soaked' : 'dry',
    broke: values.broke !== 'no',
    time: typeof values.time === 'number' ? seconds(values.time) : null,
    date: typeof values.date === 'string' ? values.date : null,
    note: typeof values.note === 'string' ? values.note : null,
  }
  return { test, problems: [] }
}
