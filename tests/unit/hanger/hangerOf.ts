import { checkHanger, patchDocument, resolveDocument, EMPTY_DOCUMENT, type CheckResult, type Hanger, type HangerDocument, type Patch } from '#core'

export { ORDINARY } from './ordinaryPatch'

export const documentOf = (patch: Patch): HangerDocument => patchDocument(EMPTY_DOCUMENT, patch)

export function hangerOf(patch: Patch): Hanger {
  const outcome = resolveDocument(documentOf(patch))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.hanger
}

export const checkOf = (patch: Patch): CheckResult => checkHanger(hangerOf(patch))
