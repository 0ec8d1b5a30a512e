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
export const verdictSentence = (check: Pick<CheckResult, 'verdicts'>): string => `${HANGER[check.verdicts.hanger]} ${PLACE[check.verdicts.place]}`
