import { batchFacts, checkHanger, FIELD_WORDS, frontView, heaviestPot, parseDocument, problemText, resolveDocument, verdictSentence, type BatchFacts, type FieldPath, type HangerDocument } from '#core'
import { smallDrawing, type SmallDrawing } from './smallDrawing'

/** What is told of a hanger file in the list. */
export interface HangerCard {
  /** Name in the file; empty if it has none. */
  readonly name: string
  readonly code: string | null
  readonly lot: string | null
  readonly date: string | null
  /** Both verdicts in words; null where there are none. */
  readonly verdict: string | null
  /** Why there is no verdict; null where there is one. */
  readonly problem: string | null
  readonly drawing: SmallDrawing | null
  /** What the check said, in figures; null where there is no verdict. */
  readonly facts: BatchFacts | null
  /** The cord, as it was said. */
  readonly cord: string | null
}

const UNREAD = { name: '', code: null, lot: null, date: null, verdict: null, drawing: null, facts: null, cord: null }

/** The card of a file that could not be read. */
export const unreadCard = (problem: string): HangerCard => ({ ...UNREAD, problem })

/** Fibre and diameter as typed; null where neither was said. */
function cordText(typed: HangerDocument['typed']): string | null {
  const fibre = typed['cord.fibre']
  const said = [fibre === undefined ? '' : FIELD_WORDS['cord.fibre'].choices[fibre] ?? fibre, typed['cord.diameter']?.trim() ?? ''].filter((text) => text !== '')
  return said.length === 0 ? null : said.join(', ').slice(0, 100)
}

/** Reads and checks the text of a hanger file. */
export function hangerCard(text: string): HangerCard {
  const parsed = parseDocument(text)
  if (!parsed.ok) return unreadCard(parsed.problems.map(problemText).join(' '))
  const { name, typed } = parsed.document
  const said = (path: FieldPath): string | null => typed[path]?.trim().slice(0, 200) ?? null
  const facts = { name: name.trim(), code: said('make.code'), lot: said('cord.lot'), date: said('make.date'), cord: cordText(typed) }
  const resolved = resolveDocument(parsed.document)
  if (!resolved.ok) return { ...UNREAD, ...facts, problem: resolved.problems.slice(0, 2).map(problemText).join(' ') }
  const check = checkHanger(resolved.hanger)
  return { ...facts, verdict: verdictSentence(check), problem: null, facts: batchFacts(check, null), drawing: smallDrawing(frontView(check, 'watered')) }
}

/** Heaviest watered pot a hanger file's hanger may carry, kg; null where none can be told. */
export function heaviestOf(text: string): number | null {
  const parsed = parseDocument(text)
  if (!parsed.ok || parsed.document.typed['make.have'] === 'no') return null
  return heaviestPot(parsed.document)?.watered ?? null
}
