import type { Extra } from '../hanger/extra'
import type { FieldPath } from '../hanger/fields'
import type { PullTestRow } from '../hanger/pullTest'
import type { ShelfKind } from './shelfKinds'

/** One thing that the maker weighed, measured or tested: texts as typed, nothing read yet. */
export interface ShelfEntry {
  readonly kind: ShelfKind
  /** Different from the names of all others of its kind. */
  readonly name: string
  /** YYYY-MM-DD, or empty. */
  readonly date: string
  readonly note: string
  /** Texts by the paths of its kind. */
  readonly typed: Readonly<Partial<Record<FieldPath, string>>>
  /** Of cords only. */
  readonly pullTests: readonly PullTestRow[]
  /** Keys of the entry that this version does not know; kept and written back. */
  readonly extra: Extra
}

/** The maker's own things, kept apart from published values and used in many hangers. */
export interface Shelf {
  readonly entries: readonly ShelfEntry[]
  readonly extra: Extra
}

export const EMPTY_SHELF: Shelf = { entries: [], extra: {} }
