import type { Answers } from '../../hanger/fields'
import { hasCover } from '../../load/drainage'
import type { Finding } from '../finding'
import type { LinkResult } from '../linkResult'
import type { Solved } from '../solved'

/** That strands lie on corners, which is not reckoned: square pots and troughs are taken as round, as wide as their diagonal. Null of a round pot, or where a round cover pot lies in the cradle. */
export function cornersUnreckoned(answers: Answers): Finding | null {
  const shape = answers['pot.shape']
  return (shape === 'square' || shape === 'trough') && !hasCover(answers) ? { code: 'SHAPE_NOT_RECKONED', shape } : null
}

/**
 * Results that rest on where the strands lie on the pot. On corners that is not known, whatever the
 * numbers say; of a cover pot only width and depth are asked, so that with its upright outline nothing
 * fails for certain and nothing better than just holds.
 */
export function temperByShape(solved: Solved, results: readonly LinkResult[]): readonly LinkResult[] {
  const { answers } = solved.hanger
  const corners = cornersUnreckoned(answers)
  if (corners !== null) return results.map((result): LinkResult => ({ ...result, verdict: 'not enough known', findings: [...result.findings, corners] }))
  if (!hasCover(answers)) return results
  return results.map((result): LinkResult => ({
    ...result,
    verdict: result.verdict === 'holds' ? 'just holds' : result.verdict === 'fails' ? 'not enough known' : result.verdict,
    findings: [...result.findings, { code: 'COVER_SHAPE_ASSUMED' }],
  }))
}
