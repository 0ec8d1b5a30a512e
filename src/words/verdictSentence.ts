import type { CheckResult } from '../check/checkHanger'
import type { Verdict } from '../check/verdict'

const HANGER: Readonly<Record<Verdict, string>> = {
  holds: 'The hanger holds.',
  'just holds': 'The hanger just holds.',
  'not enough known': 'Not enough is known of the hanger.',
  fails: 'The hanger fails.',
}
const PLACE: Readonly<Record<Verdict, string>> = {
  holds: 'The place holds.',
  'just holds': 'The place just holds.',
  'not enough known': 'Not enough is known of the place.',
  fails: 'The place fails.',
}

/** The two verdicts as two short sentences: the maker's part first, then the place it hangs. */
export function verdictSentence(check: Pick<CheckResult, 'verdicts' | 'links'>): string {
  return `${hangerSentence(check)} ${PLACE[check.verdicts.place]}`
}

/** Without a pot or a hanger there is nothing to judge yet; a part that fails all the same comes first. */
function hangerSentence({ verdicts, links }: Pick<CheckResult, 'verdicts' | 'links'>): string {
  const codes = links.filter((l) => l.link === 'load').flatMap((l) => l.findings.map((f) => f.code))
  if (verdicts.hanger === 'not enough known' && codes.includes('NO_HANGER_YET')) return 'No hanger yet.'
  if (verdicts.hanger === 'not enough known' && codes.includes('NO_POT_YET')) return 'No pot yet: the hanger is shown at its limit.'
  return HANGER[verdicts.hanger]
}
