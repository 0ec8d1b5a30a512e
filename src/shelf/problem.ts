import type { AnswerProblem, ValueProblem } from '../hanger/problem'
import type { EntryHeading } from './entryHeadings'
import type { ShelfKind } from './shelfKinds'

/** Why a text is no shelf at all. Sentences: words/shelf.ts. */
export type ShelfFileProblem =
  | { readonly code: 'NOT_JSON'; readonly detail: string }
  /** A hanger file was offered in place of a shelf. */
  | { readonly code: 'HANGER_FILE' }
  | { readonly code: 'NOT_A_SHELF'; readonly found: string }
  | { readonly code: 'BAD_VERSION'; readonly found: string }
  | { readonly code: 'NEWER_VERSION'; readonly version: number }
  /** `entries` is no list. */
  | { readonly code: 'NO_LIST'; readonly found: string }

/** Why one entry cannot stand on the shelf. */
export type EntryProblem =
  | { readonly code: 'NOT_AN_ENTRY'; readonly found: string }
  | { readonly code: 'UNKNOWN_KIND'; readonly found: string }
  | { readonly code: 'NO_NAME' }
  | { readonly code: 'NOTHING_IN_IT'; readonly kind: ShelfKind }
  /** A value that is neither text nor number. */
  | { readonly code: 'NOT_TEXT'; readonly path: string; readonly found: string }
  | { readonly code: 'NOT_A_GROUP'; readonly kind: ShelfKind; readonly found: string }
  | { readonly code: 'NOT_A_LOG'; readonly found: string }
  | { readonly code: 'BAD_HEADING'; readonly why: ValueProblem<EntryHeading> }
  | { readonly code: 'BAD_VALUE'; readonly why: AnswerProblem }
  /** Another entry of the kind goes by that name. */
  | { readonly code: 'NAME_TAKEN'; readonly kind: ShelfKind; readonly name: string }
  /** The very same entry is there already. */
  | { readonly code: 'SAME_THERE'; readonly kind: ShelfKind; readonly name: string }

/** An entry of a file that did not come in. */
export interface RefusedEntry {
  /** Where it stands in its file, from 1. */
  readonly position: number
  /** Null where it has none that can be read. */
  readonly kind: ShelfKind | null
  readonly name: string | null
  readonly why: readonly EntryProblem[]
}
