import { isWorse } from '../check/verdict'
import type { HangerDocument } from '../hanger/document'
import { parseDocument, writeDocument, type ParseOutcome } from '../hanger/parse'
import { MOST_SOLD, type SoldCopy } from '../hanger/soldCopy'
import { shownOf } from './answer'
import { ownVerdict } from './ownVerdict'

export type FreezeOutcome =
  | { readonly ok: true; readonly document: HangerDocument }
  /** A frozen copy is never changed; nothing is sold on a file that cannot be read, or that is too long to keep in itself. */
  | { readonly ok: false; readonly reason: 'alreadySold' | 'unread' | 'tooLong' }

/**
 * The document with a frozen copy of itself as it is sold on a day (YYYY-MM-DD): its whole text, what the check says
 * of it, and the heaviest watered pot promised. What is typed later does not touch the copy.
 */
export function freezeAsSold(document: HangerDocument, date: string): FreezeOutcome {
  if (document.sold !== null || Object.hasOwn(document.extra, 'sold')) return { ok: false, reason: 'alreadySold' }
  const outcome = shownOf(document)
  if (!outcome.ok) return { ok: false, reason: 'unread' }
  const { check } = outcome.shown
  // What fails, or is not known well enough, is promised no weight.
  const heaviest = isWorse(ownVerdict(check), 'just holds') ? null : outcome.shown.heaviest
  const file = writeDocument(document)
  if (file.length > MOST_SOLD) return { ok: false, reason: 'tooLong' }
  const sold: SoldCopy = { date, verdict: check.verdict, hanger: check.verdicts.hanger, place: check.verdicts.place, heaviest, file }
  return { ok: true, document: { ...document, sold } }
}

/** The hanger as it was sold, read like any file; null where it was not sold. */
export const asSold = ({ sold }: HangerDocument): ParseOutcome | null => (sold === null ? null : parseDocument(sold.file))

/** Whether anything typed differs from the hanger as it was sold; null where it was not sold. */
export function changedSinceSold(document: HangerDocument): boolean | null {
  return document.sold === null ? null : writeDocument({ ...document, sold: null, inspections: [] }) !== withoutInspections(document.sold.file)
}

/** The copy without its inspections: those made since say nothing of how it was sold. */
function withoutInspections(file: string): string {
  const parsed = parseDocument(file)
  return parsed.ok ? writeDocument({ ...parsed.document, inspections: [] }) : file
}
