import { editField, type HangerDocument } from '../hanger/document'
import { FIELD_PATHS, type FieldPath } from '../hanger/fields'

/** The document with texts taken back. */
export const without = (document: HangerDocument, isTaken: (path: FieldPath) => boolean): HangerDocument =>
  FIELD_PATHS.filter(isTaken).reduce((left, path) => editField(left, path, null), document)

/** The document without its test hang: that was of the hanger as it is, not of another. */
export const untested = (document: HangerDocument): HangerDocument => without(document, (path) => path.startsWith('testHang.'))
