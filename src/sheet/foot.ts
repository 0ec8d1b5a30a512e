import { RESERVE } from '../catalogue/reserves'
import { ownReserve } from '../check/ownReserve'
import type { CheckResult } from '../check/checkHanger'
import { AID_TEXT, footFacts, reserveLine } from '../words/sheetFoot'
import type { SheetNotice } from '../words/sheetNotices'
import type { Block } from './block'

/** The foot of a sheet: maker, dates, tag code, reserve with any reason, and what a sheet is not. */
export function footBlocks(check: CheckResult, today: string): readonly Block[] {
  const { answers } = check.solved.hanger
  const own = ownReserve(answers)
  return [
    { kind: 'facts', items: footFacts(answers, today) },
    { kind: 'paragraph', weight: 'small', text: `${reserveLine(own?.own ?? RESERVE[answers['place.beneath']].value, answers, check.findings)} ${AID_TEXT}` },
  ]
}

/** The foot of the pages after the first: enough to find its front again. */
export const shortFoot = (name: string, check: CheckResult, today: string): readonly Block[] => [
  { kind: 'paragraph', weight: 'small', text: name },
  { kind: 'facts', items: footFacts({ ...check.solved.hanger.answers, 'make.contact': null }, today) },
]

/** What the maker should add before a sheet goes out. */
export function noticesOf({ solved: { hanger: { answers } } }: CheckResult): readonly SheetNotice[] {
  const isBare = (text: string | null): boolean => text === null || text.trim() === ''
  return [
    ...(isBare(answers['make.maker']) ? [{ code: 'NO_MAKER' } as const] : []),
    ...(isBare(answers['make.contact']) ? [{ code: 'NO_CONTACT' } as const] : []),
    ...(isBare(answers['make.code']) ? [{ code: 'NO_TAG_CODE' } as const] : []),
    ...(answers['make.date'] === null ? [{ code: 'NO_MADE_DATE' } as const] : []),
  ]
}
