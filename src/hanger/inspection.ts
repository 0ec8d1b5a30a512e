import { INSPECTION_COLUMNS, INSPECTION_FIELDS, type InspectionColumn, type InspectionKind } from './inspectionFields'
import type { LogRow } from './logRows'
import type { RecordProblem } from './problem'
import { readValue } from './readValue'

/** A row of the inspection log as typed. */
export type InspectionRow = LogRow<InspectionColumn>

export const EMPTY_INSPECTION: InspectionRow = { typed: {}, extra: {} }

/** One entry of the inspection log. */
export interface Inspection {
  /** Where it stands in the log, from 0. */
  readonly row: number
  readonly date: string | null
  readonly what: InspectionKind
  /** Which leg, from 1; null where it was not said, or it concerns the whole. */
  readonly leg: number | null
  /** Strands it concerns; null where it was not said. */
  readonly strands: number | null
  readonly note: string | null
}

/**
 * Reads one row of the log: an entry, null where nothing is written yet, and every column that cannot be read as a problem.
 * @example readInspection({ typed: { what: 'strandGone', leg: '2' }, extra: {} }, 0).inspection.leg // 2
 */
export function readInspection(row: InspectionRow, index: number): { readonly inspection: Inspection | null; readonly problems: readonly RecordProblem[] } {
  const values: Partial<Record<InspectionColumn, number | string>> = {}
  const problems: RecordProblem[] = []
  for (const column of INSPECTION_COLUMNS) {
    const text = row.typed[column]
    if (text === undefined) continue
    const read = readValue(column, INSPECTION_FIELDS[column], text)
    if (read.ok) values[column] = read.value
    else problems.push({ code: 'IN_INSPECTION', row: index, why: read.problem })
  }
  if (problems.length > 0 || Object.keys(values).length === 0) return { inspection: null, problems }
  const number = (column: 'leg' | 'strands'): number | null => (typeof values[column] === 'number' ? values[column] : null)
  const word = (column: 'date' | 'note'): string | null => (typeof values[column] === 'string' ? values[column] : null)
  const inspection: Inspection = {
    row: index, date: word('date'), what: (values.what ?? INSPECTION_FIELDS.what.default.choice) as InspectionKind, leg: number('leg'), strands: number('strands'), note: word('note'),
  }
  return { inspection, problems: [] }
}
