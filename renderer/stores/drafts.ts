import { parseDocument, writeDocument, type HangerDocument } from '#core'

/** A hanger that was not saved: its text, and the name of the file it came from, if any. */
interface Draft {
  readonly file: string | null
  readonly document: HangerDocument
}

/** A hanger as it is kept while it is not saved. */
export const draftText = ({ file, document }: Draft): string => JSON.stringify({ file, text: writeDocument(document) })

/** What was kept, read like any file from outside; null where it is none. */
export function readDraft(kept: string): Draft | null {
  let found: unknown
  try {
    found = JSON.parse(kept)
  } catch {
    return null
  }
  if (typeof found !== 'object' || found === null || !('text' in found) || typeof found.text !== 'string') return null
  const parsed = parseDocument(found.text)
  const file = 'file' in found && typeof found.file === 'string' ? found.file : null
  return parsed.ok ? { file, document: parsed.document } : null
}
