import type { CheckResult } from '../check/checkHanger'
import type { Finding } from '../check/finding'
import { worstOf, type Verdict } from '../check/verdict'

/** What is open of the pot alone, which the limit of the hanger does not hang on. */
const ofPotAlone = (finding: Finding): boolean =>
  finding.code === 'NO_POT_YET' || (finding.code === 'ANSWER_NEEDED' && finding.path.startsWith('pot.'))

/** The verdict on the hanger itself, from ring to seat: the worst of its own parts, whatever is still open of its pot. */
export function ownVerdict(check: Pick<CheckResult, 'links'>): Verdict {
  const own = check.links.filter((l) => l.side === 'hanger' && !(l.link === 'load' && l.findings.every(ofPotAlone)))
  return worstOf(own.map((l) => l.verdict))
}
