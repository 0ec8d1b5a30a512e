import type { Extra } from './extra'
import type { FieldPath } from './fields'
import { EMPTY_INSPECTION, type InspectionRow } from './inspection'
import type { InspectionColumn } from './inspectionFields'
import { editLogRow } from './logRows'
import { EMPTY_PULL_TEST, editPullTest, type PullTestRow } from './pullTest'
import type { PullTestColumn } from './pullTestFields'
import type { SoldCopy } from './soldCopy'

/**
 * A hanger file as typed: texts by field path, nothing read yet. Immutable; `editField` and
 * `renameDocument` share what did not change.
 */
export interface HangerDocument {
  readonly name: string
  readonly typed: Readonly<Partial<Record<FieldPath, string>>>
  /** The maker's own pull tests of the cord. */
  readonly pullTests: readonly PullTestRow[]
  /** What was found and done when it was looked at. */
  readonly inspections: readonly InspectionRow[]
  /** The hanger as it was sold; null before. */
  readonly sold: SoldCopy | null
  readonly extra: Extra
}

export const EMPTY_DOCUMENT: HangerDocument = { name: '', typed: {}, pullTests: [], inspections: [], sold: null, extra: {} }

/**
 * The document with one field's text changed; null or blank text takes the answer back.
 * @example editField({ name: '', typed: { 'pot.rim': '9 in' }, pullTests: [], inspections: [], sold: null, extra: {} }, 'pot.rim', ' ').typed // {}
 */
export const editField = (document: HangerDocument, path: FieldPath, text: string | null): HangerDocument => editFields(document, { [path]: text })

/** The document with the texts of several fields changed, each as `editField` does; the same one where none changes. */
export function editFields(document: HangerDocument, changes: Readonly<Partial<Record<FieldPath, string | null>>>): HangerDocument {
  const typed = { ...document.typed }
  let changed = false
  for (const [path, text] of Object.entries(changes) as [FieldPath, string | null][]) {
    const next = text === null || text.trim() === '' ? undefined : text
    if (next === typed[path]) continue
    changed = true
    if (next === undefined) delete typed[path]
    else typed[path] = next
  }
  return changed ? { ...document, typed } : document
}

/** The document under another name. */
export const renameDocument = (document: HangerDocument, name: string): HangerDocument => ({ ...document, name })

/** A change of several fields at once: a remedy. */
export type Patch = Readonly<Partial<Record<FieldPath, string>>>

/** The document with a patch laid over it. */
export const patchDocument = (document: HangerDocument, patch: Patch): HangerDocument =>
  ({ ...document, typed: { ...document.typed, ...patch } })

/** The document with other pull tests. */
export const withPullTests = (document: HangerDocument, pullTests: readonly PullTestRow[]): HangerDocument => ({ ...document, pullTests })

/** The document with one text of its pull-test log changed; the row after the last is a new one. */
export function editPullTestAt(document: HangerDocument, row: number, column: PullTestColumn, text: string | null): HangerDocument {
  const before = document.pullTests[row] ?? EMPTY_PULL_TEST
  const after = editPullTest(before, column, text)
  if (after === before) return document
  return withPullTests(document, row < document.pullTests.length ? document.pullTests.map((r, i) => (i === row ? after : r)) : [...document.pullTests, after])
}

/** The document with one text of its inspection log changed; the row after the last is a new one. */
export function editInspectionAt(document: HangerDocument, row: number, column: InspectionColumn, text: string | null): HangerDocument {
  const before = document.inspections[row] ?? EMPTY_INSPECTION
  const after = editLogRow<InspectionColumn, InspectionRow>(before, column, text)
  if (after === before) return document
  return { ...document, inspections: row < document.inspections.length ? document.inspections.map((r, i) => (i === row ? after : r)) : [...document.inspections, after] }
}

/** The document with other entries in its inspection log. */
export const withInspections = (document: HangerDocument, inspections: readonly InspectionRow[]): HangerDocument => ({ ...document, inspections })
