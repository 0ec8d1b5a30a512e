import type { FieldPath } from '../../hanger/fields'
import type { LinkResult } from '../linkResult'
import type { Solved } from '../solved'

/**
 * A part whose deciding measures were only assumed cannot be said to fail: with the assumed measure
 * it would, so not enough is known, and the finding names what to measure.
 */
export function softenAssumed(solved: Solved, deciding: readonly FieldPath[], results: readonly LinkResult[]): readonly LinkResult[] {
  const guess = solved.hanger.assumed.find((a) => deciding.includes(a.path))
  if (guess === undefined) return results
  return results.map((result): LinkResult => (result.verdict === 'fails'
    ? { ...result, verdict: 'not enough known', findings: [...result.findings, { code: 'ASSUMED_PART_FAILS', path: guess.path, assumed: guess.text }] }
    : result))
}
