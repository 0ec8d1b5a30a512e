import type { Extra } from './extra'

/** A row of a log as typed: texts by column, and keys that this version does not know. */
export interface LogRow<Column extends string> {
  readonly typed: Readonly<Partial<Record<Column, string>>>
  readonly extra: Extra
}

const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)

/** Rows of a log from parsed JSON; what is no row is none. */
export function logRows<Column extends string>(json: unknown, columns: readonly Column[]): readonly LogRow<Column>[] {
  if (!Array.isArray(json)) return []
  const isColumn = (key: string): key is Column => (columns as readonly string[]).includes(key)
  return json.filter(isRecord).map((row) => ({
    typed: Object.fromEntries(Object.entries(row).flatMap(([key, value]): [Column, string][] =>
      (isColumn(key) && (typeof value === 'string' || typeof value === 'number') ? [[key, String(value)]] : []))) as Partial<Record<Column, string>>,
    extra: Object.fromEntries(Object.entries(row).filter(([key]) => !isColumn(key))),
  }))
}

/** The log as it stands in a file: columns in their order, then every kept key. */
export const logJson = <Column extends string>(rows: readonly LogRow<Column>[], columns: readonly Column[]): readonly Extra[] =>
  rows.map(({ typed, extra }) => ({ ...Object.fromEntries(columns.flatMap((column) => (typed[column] === undefined ? [] : [[column, typed[column]]]))), ...extra }))

/** The row with one column's text changed; null or blank text takes it back. */
export function editLogRow<Column extends string, Row extends LogRow<Column>>(row: Row, column: Column, text: string | null): Row {
  const next = text === null || text.trim() === '' ? undefined : text
  if (next === row.typed[column]) return row
  const others = Object.fromEntries(Object.entries(row.typed).filter(([key]) => key !== column))
  return { ...row, typed: next === undefined ? others : { ...row.typed, [column]: next } }
}
