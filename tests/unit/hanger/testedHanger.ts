import { resolveDocument, withPullTests, type Hanger, type Patch, type PullTestRow } from '#core'
import { documentOf } from './hangerOf'

/** A hanger with a log of pull tests as typed. */
export function testedHanger(patch: Patch, log: readonly PullTestRow['typed'][]): Hanger {
  const outcome = resolveDocument(withPullTests(documentOf(patch), log.map((typed) => ({ typed, extra: {} }))))
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.hanger
}
