import { editField, withPullTests, type HangerDocument } from '../hanger/document'
import { FIELD_PATHS, type FieldPath } from '../hanger/fields'
import type { PullTestRow } from '../hanger/pullTest'

/** What a choice changes in the hanger file. */
export interface Change {
  /** Texts by path; null takes an answer back. */
  readonly typed: Readonly<Partial<Record<FieldPath, string | null>>>
  /** The log of pull tests that belongs to it; null where it stays. */
  readonly pullTests: readonly PullTestRow[] | null
}

/** What turns one document into another. */
export function changeBetween(before: HangerDocument, after: HangerDocument): Change {
  const paths = FIELD_PATHS.filter((path) => before.typed[path] !== after.typed[path])
  return {
    typed: Object.fromEntries(paths.map((path) => [path, after.typed[path] ?? null])),
    pullTests: before.pullTests === after.pullTests ? null : after.pullTests,
  }
}

/** The document with a change made. */
export function withChange(document: HangerDocument, { typed, pullTests }: Change): HangerDocument {
  const changed = (Object.entries(typed) as [FieldPath, string | null][]).reduce((next, [path, text]) => editField(next, path, text), document)
  return pullTests === null ? changed : withPullTests(changed, pullTests)
}
