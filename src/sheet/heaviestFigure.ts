import type { CheckResult } from '../check/checkHanger'
import { massFigure } from '../words/sheetAmounts'
import { HEAVIEST_LABEL, rowNoteText, tiersNoteText } from '../words/sheetCustomer'
import type { Block } from './block'
import type { Limit } from './facts'
import { knownWeight, type KnownWeight } from './testedWeight'

/** How the weight that is told is known; `own`: the check of the hanger as it is. */
export const markOf = ({ watered, check }: Limit, own: CheckResult): KnownWeight => knownWeight(watered, check, own)

/** Where several pots hang, which of them is meant. */
function noteOf({ solved: { tiers, hanger: { answers } } }: CheckResult): string | null {
  if (tiers.length > 0) return tiersNoteText(tiers.slice(1).map(({ alone }) => alone.potted.watered.mass.high))
  return answers['make.arrangement'] === 'row' ? rowNoteText(answers['row.count'], answers['row.others']) : null
}

/** The one number: the heaviest watered pot, rounded down, and how it is known. */
export const heaviestFigure = (limit: Limit, own: CheckResult): Block =>
  ({ kind: 'figure', label: HEAVIEST_LABEL, value: massFigure(limit.watered), ...markOf(limit, own), note: noteOf(limit.check) })
