import { editField, type FieldPath, type HangerDocument } from '#core'
import type { Changes } from '../stores/document'

/** A document with texts put in or, where null, taken back. */
export const editedBy = (document: HangerDocument, changes: Changes): HangerDocument =>
  (Object.entries(changes) as [FieldPath, string | null][]).reduce((edited, [path, text]) => editField(edited, path, text), document)
