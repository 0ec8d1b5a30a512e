import { shownOf } from '../advice/answer'
import type { CheckResult } from '../check/checkHanger'
import { cordPlan, type CordPlanOutcome } from '../cordPlan/cordPlan'
import type { HangerDocument } from '../hanger/document'
import type { Hanger } from '../hanger/hanger'
import type { AnswerProblem } from '../hanger/problem'
import { resolveDocument } from '../hanger/resolve'

/** A hanger with all that it is compared by. */
export interface Variant {
  readonly document: HangerDocument
  /** The document as it was read. */
  readonly hanger: Hanger
  /** The check that is shown of it: with no pot yet that of the hanger with the heaviest pot it may carry. */
  readonly check: CheckResult
  /** Heaviest watered potted plant its hanger may carry, kg; null where none can be told. */
  readonly heaviest: number | null
  /** What hangs in it in the check. */
  readonly pot: 'own' | 'heaviest' | 'none'
  readonly cord: CordPlanOutcome
}

export type VariantOutcome = { readonly ok: true; readonly variant: Variant } | { readonly ok: false; readonly problems: readonly AnswerProblem[] }

/** Checks one hanger to be compared; a document that cannot be read gives its problems. */
export function variantOf(document: HangerDocument): VariantOutcome {
  const outcome = shownOf(document)
  if (!outcome.ok) return outcome
  const resolved = resolveDocument(document)
  if (!resolved.ok) return resolved
  const { check, loaded, heaviest } = outcome.shown
  const { hanger } = resolved
  const pot = hanger.answers['pot.have'] === 'yes' ? 'own' : loaded === document ? 'none' : 'heaviest'
  return { ok: true, variant: { document, hanger, check, heaviest, pot, cord: cordPlan(hanger) } }
}

/** Checks hangers to be compared, one step for each, in their order. */
export function* checkVariants(documents: readonly HangerDocument[]): Generator<VariantOutcome, void, void> {
  for (const document of documents) yield variantOf(document)
}
