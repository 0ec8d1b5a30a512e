import { solve } from '../check/solve'
import type { Solved } from '../check/solved'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { AnswerProblem } from '../hanger/problem'
import { resolveDocument } from '../hanger/resolve'
import { heaviestPot } from './heaviestPot'

export type NotLoaded =
  | { readonly ok: false; readonly reason: 'unread'; readonly problems: readonly AnswerProblem[] }
  /** No pot yet, and no heaviest that the hanger may carry: nothing is known of the weight. */
  | { readonly ok: false; readonly reason: 'noWeight' }

/** What is asked about: the document with a pot in it, solved. */
export interface Loaded {
  readonly document: HangerDocument
  readonly solved: Solved
  readonly pot: 'own' | 'heaviest'
}
export type LoadedOutcome = { readonly ok: true; readonly loaded: Loaded } | NotLoaded

/** The document as it will hang: with its own pot, or with the heaviest it may carry where there is none yet. */
export function loadedFor(document: HangerDocument): LoadedOutcome {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return { ok: false, reason: 'unread', problems: resolved.problems }
  if (resolved.hanger.answers['pot.have'] === 'yes') return { ok: true, loaded: { document, solved: solve(resolved.hanger), pot: 'own' } }
  const heaviest = heaviestPot(document)
  if (heaviest === null) return { ok: false, reason: 'noWeight' }
  return { ok: true, loaded: { document: patchDocument(editField(document, 'weighed.tare', null), heaviest.patch), solved: heaviest.check.solved, pot: 'heaviest' } }
}
