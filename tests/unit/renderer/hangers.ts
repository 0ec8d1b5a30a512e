import { DEMOS, parseDocument, type HangerDocument } from '#core'

/** A demo hanger as a document. */
export function demoDocument(file: 'fern-over-the-sideboard' | 'glazed-pot-by-the-reading-chair' | 'order-for-a-rented-flat'): HangerDocument {
  const parsed = parseDocument(DEMOS.find((demo) => demo.file.startsWith(file))?.text ?? '')
  if (!parsed.ok) throw new Error(`The demo ${file} cannot be read.`)
  return parsed.document
}
