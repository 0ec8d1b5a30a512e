import { checkHanger, type CheckResult } from '../check/checkHanger'
import { patchDocument, type HangerDocument } from '../hanger/document'
import type { AnswerProblem } from '../hanger/problem'
import { resolveDocument } from '../hanger/resolve'
import { heaviestPot } from './heaviestPot'
import { findRemedies, type Remedy } from './remedies'

/** Everything a document can be told: its check, the heaviest pot its hanger may carry, remedies. */
export interface Answer {
  readonly check: CheckResult
  /** Heaviest watered potted plant the hanger may carry, kg; null if none, or if there is no hanger yet. */
  readonly heaviest: number | null
  readonly remedies: readonly Remedy[]
}

export type AnswerOutcome = { readonly ok: true; readonly answer: Answer } | { readonly ok: false; readonly problems: readonly AnswerProblem[] }

/** The check that is shown of a document, the document it is of, and the heaviest pot. */
export interface Shown {
  readonly check: CheckResult
  readonly loaded: HangerDocument
  readonly heaviest: number | null
}
export type ShownOutcome = { readonly ok: true; readonly shown: Shown } | { readonly ok: false; readonly problems: readonly AnswerProblem[] }

/**
 * The check of a document; with no pot yet that of the hanger with the heaviest pot it may carry, so that the link that
 * sets the limit can be seen. A document that cannot be read gives its problems, as `resolveDocument` does.
 */
export function shownOf(document: HangerDocument): ShownOutcome {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return resolved
  const { answers } = resolved.hanger
  const heaviest = answers['make.have'] === 'no' ? null : heaviestPot(document)
  const loaded = answers['pot.have'] === 'no' && heaviest ? patchDocument(document, heaviest.patch) : document
  const check = loaded === document ? checkHanger(resolved.hanger) : heaviest?.check ?? checkHanger(resolved.hanger)
  return { ok: true, shown: { check, loaded, heaviest: heaviest?.watered ?? null } }
}

/** Checks a document and advises on it: the check that is shown, with remedies. */
export function answerDocument(document: HangerDocument): AnswerOutcome {
  const outcome = shownOf(document)
  if (!outcome.ok) return outcome
  const { check, loaded, heaviest } = outcome.shown
  return { ok: true, answer: { check, heaviest, remedies: findRemedies(loaded, check) } }
}
