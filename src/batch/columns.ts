import { FIELD_PATHS, isFieldPath, type FieldPath } from '../hanger/fields'
import type { BatchProblem } from './problem'

/** What a column of a table of hangers holds: a field by its path, or the hanger's name. */
export type BatchColumn = FieldPath | 'name'

export type ColumnsOutcome =
  | { readonly ok: true; readonly columns: readonly BatchColumn[] }
  | { readonly ok: false; readonly problems: readonly BatchProblem[] }

/** Names a column may have. */
export const COLUMN_NAMES: readonly BatchColumn[] = ['name', ...FIELD_PATHS]

/** Most names that are told as wrong: what follows is rarely of another kind. */
const MOST_PROBLEMS = 5

const isColumn = (name: string): name is BatchColumn => name === 'name' || isFieldPath(name)

/**
 * Reads the header of a table of hangers: every name is a field's path or `name`, none twice. Problems: NOT_UTF8, NO_HEADER,
 * UNKNOWN_COLUMN, DOUBLE_COLUMN.
 * @example readColumns(['name', ' pot.rim ']) // { ok: true, columns: ['name', 'pot.rim'] }
 */
export function readColumns(header: readonly string[]): ColumnsOutcome {
  const names = header.map((name) => name.trim())
  // Text of two bytes a letter without its mark reads as letters with nothing between them.
  if (names.some((name) => /[\0\uFFFD]/.test(name))) return { ok: false, problems: [{ code: 'NOT_UTF8' }] }
  if (names.every((name) => name === '')) return { ok: false, problems: [{ code: 'NO_HEADER' }] }
  const problems = names.flatMap((name, i): readonly BatchProblem[] => {
    if (!isColumn(name)) return [{ code: 'UNKNOWN_COLUMN', column: i + 1, name }]
    return names.indexOf(name) < i ? [{ code: 'DOUBLE_COLUMN', column: i + 1, name }] : []
  })
  return problems.length > 0 ? { ok: false, problems: problems.slice(0, MOST_PROBLEMS) } : { ok: true, columns: names.filter(isColumn) }
}
