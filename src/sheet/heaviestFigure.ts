import type { CheckResult } from '../check/checkHanger'
import { testHangFaults, testHangMass } from '../check/testHang'
import { massFigure } from '../words/sheetAmounts'
import { CALCULATED_TEXT, HEAVIEST_LABEL, rowNoteText, testedLessText, testHungText, tiersNoteText } from '../words/sheetCustomer'
import type { Block, FigureMark } from './block'
import type { Limit } from './facts'

/** Whether the weight was hung: a test hang that counts, at least as heavy; else how it is known all the same. */
export function markOf({ watered, check: { solved } }: Limit): { readonly mark: FigureMark; readonly marked: string } {
  const { answers } = solved.hanger
  const mass = testHangMass(answers)
  if (mass === null || testHangFaults(solved, true)?.length !== 0) return { mark: 'calculated', marked: CALCULATED_TEXT }
  if (mass < watered) return { mark: 'calculated', marked: testedLessText(mass) }
  return { mark: 'testHung', marked: testHungText({ mass, time: answers['testHang.time'], date: answers['testHang.date'] }) }
}

/** Where several pots hang, which of them is meant. */
function noteOf({ solved: { tiers, hanger: { answers } } }: CheckResult): string | null {
  if (tiers.length > 0) return tiersNoteText(tiers.slice(1).map(({ alone }) => alone.potted.watered.mass.high))
  return answers['make.arrangement'] === 'row' ? rowNoteText(answers['row.count'], answers['row.others']) : null
}

/** The one number: the heaviest watered pot, rounded down, and how it is known. */
export const heaviestFigure = (limit: Limit): Block => ({ kind: 'figure', label: HEAVIEST_LABEL, value: massFigure(limit.watered), ...markOf(limit), note: noteOf(limit.check) })
