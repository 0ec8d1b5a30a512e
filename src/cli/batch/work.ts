import type { BatchColumn } from '../../batch/columns'
import type { Separator } from '../../batch/problem'
import { batchResult, type BatchResult } from '../../batch/result'
import { rowDocument } from '../../batch/rowDocument'
import type { HangerDocument } from '../../hanger/document'
import { parseDocument } from '../../hanger/parse'
import type { CsvRow } from './csvRows'

/** What all rows have in common. */
export interface BatchSetting {
  readonly columns: readonly BatchColumn[]
  readonly separator: Separator
  readonly base: HangerDocument
  readonly heaviest: boolean
}

/** One hanger to be checked: a row of a table, or a file with its text; in place of it what is wrong. */
export type BatchTask =
  | CsvRow
  | { readonly line: number; readonly file: string; readonly text: string }
  | { readonly line: number; readonly file: string; readonly unread: string }

/** Checks one hanger of many. */
export function workOn(task: BatchTask, { columns, separator, base, heaviest }: BatchSetting): BatchResult {
  const { line } = task
  const bad = (problems: BatchResult['problems'], file: string | null = null): BatchResult => ({ line, file, name: '', facts: null, problems })
  if ('problem' in task) return bad([task.problem])
  if ('cells' in task) {
    const row = rowDocument(base, columns, task.cells, separator)
    return row.ok ? batchResult(line, null, row.document, heaviest) : bad(row.problems)
  }
  if ('unread' in task) return bad([{ code: 'UNREAD_FILE', why: task.unread }], task.file)
  const parsed = parseDocument(task.text)
  return parsed.ok ? batchResult(line, task.file, parsed.document, heaviest) : bad(parsed.problems, task.file)
}
