import { checkHanger, type CheckResult } from '../check/checkHanger'
import { patchDocument, type HangerDocument, type Patch } from '../hanger/document'
import { resolveDocument } from '../hanger/resolve'

/** The whole check of a document with a patch laid over it; null if the patched document cannot be read. */
export function checkPatched(document: HangerDocument, patch: Patch): CheckResult | null {
  const resolved = resolveDocument(patchDocument(document, patch))
  return resolved.ok ? checkHanger(resolved.hanger) : null
}
