import type { Answers } from '../../hanger/fields'
import { hasCover } from '../../load/drainage'
import { sectionReach } from '../../load/section'
import type { Finding } from '../finding'
import type { LinkResult } from '../linkResult'
import type { Solved } from '../solved'

/** That strands lie on corners where this is not reckoned, against a wall or under another pot. Null of a round pot, or where a round cover pot lies in the cradle. */
export function cornersUnreckoned(answers: Answers): Finding | null {
  const shape = answers['pot.shape']
  const reckoned = answers['make.arrangement'] === 'legs' || answers['make.arrangement'] === 'row'
  return (shape === 'square' || shape === 'trough') && !hasCover(answers) && !reckoned ? { code: 'SHAPE_NOT_RECKONED', shape } : null
}

/** What the strands lie round instead of the pot itself: a cover pot, or a saucer wider than the pot's base. */
function vesselAround({ geometry: { outline: { pot, saucer, cover } } }: Solved): 'cover' | 'saucer' | null {
  if (cover !== null) return 'cover'
  const [edge, base] = [saucer?.[0], pot[0]]
  return edge && base && sectionReach(edge) > sectionReach(base) ? 'saucer' : null
}

/**
 * Results that rest on where the strands lie on the pot. On corners that is not known, whatever the
 * numbers say; of a cover pot or saucer only width and depth are asked, and the pot stands loose in it,
 * so that nothing fails for certain and nothing better than just holds.
 */
export function temperByShape(solved: Solved, results: readonly LinkResult[]): readonly LinkResult[] {
  const corners = cornersUnreckoned(solved.hanger.answers)
  if (corners !== null) return results.map((result): LinkResult => ({ ...result, verdict: 'not enough known', findings: [...result.findings, corners] }))
  const vessel = vesselAround(solved)
  if (vessel === null) return results
  return results.map((result): LinkResult => ({
    ...result,
    verdict: result.verdict === 'holds' ? 'just holds' : result.verdict === 'fails' ? 'not enough known' : result.verdict,
    findings: [...result.findings, { code: 'VESSEL_ASSUMED', vessel }],
  }))
}
