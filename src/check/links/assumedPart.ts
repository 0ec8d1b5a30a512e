import type { FieldPath } from '../../hanger/fields'
import type { LinkResult } from '../linkResult'
import type { Solved } from '../solved'

/**
 * Results of a part some of whose deciding measures were only assumed. That it would fail with the
 * assumed measure does not say that it fails, nor does "holds" with it say more than "just holds";
 * the finding names what to measure.
 */
export function temperAssumed(solved: Solved, deciding: readonly FieldPath[], results: readonly LinkResult[]): readonly LinkResult[] {
  const guess = solved.hanger.assumed.find((a) => deciding.includes(a.path))
  if (guess === undefined) return results
  const { path, text: assumed } = guess
  return results.map((result): LinkResult => {
    if (result.verdict === 'fails') return { ...result, verdict: 'not enough known', findings: [...result.findings, { code: 'ASSUMED_PART_FAILS', path, assumed }] }
    if (result.verdict === 'holds') return { ...result, verdict: 'just holds', findings: [...result.findings, { code: 'ASSUMED_PART_HOLDS', path, assumed }] }
    return result
  })
}
