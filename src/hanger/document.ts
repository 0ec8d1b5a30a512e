import type { FieldPath } from './fields'

/** Keys of the file that this version does not know; they are kept and written back. */
export type Extra = Readonly<Record<string, unknown>>

/**
 * A hanger file as typed: texts by field path, nothing read yet. Immutable; `editField` and
 * `renameDocument` share what did not change.
 */
export interface HangerDocument {
  readonly name: string
  readonly typed: Readonly<Partial<Record<FieldPath, string>>>
  readonly extra: Extra
}

export const EMPTY_DOCUMENT: HangerDocument = { name: '', typed: {}, extra: {} }

/**
 * The document with one field's text changed; null or blank text takes the answer back.
 * @example editField({ name: '', typed: { 'pot.rim': '9 in' }, extra: {} }, 'pot.rim', ' ').typed // {}
 */
export function editField(document: HangerDocument, path: FieldPath, text: string | null): HangerDocument {
  const { [path]: before, ...others } = document.typed
  const next = text === null || text.trim() === '' ? undefined : text
  if (next === before) return document
  return { ...document, typed: next === undefined ? others : { ...document.typed, [path]: next } }
}

/** The document under another name. */
export const renameDocument = (document: HangerDocument, name: string): HangerDocument => ({ ...document, name })

/** A change of several fields at once: a remedy. */
export type Patch = Readonly<Partial<Record<FieldPath, string>>>

/** The document with a patch laid over it. */
export const patchDocument = (document: HangerDocument, patch: Patch): HangerDocument =>
  ({ ...document, typed: { ...document.typed, ...patch } })
