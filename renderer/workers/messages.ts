import type { CheckResult, HangerDocument, Remedy } from '#core'

/** What a document can be told beyond its own check. */
export interface Advice {
  /** Heaviest watered potted plant the hanger may carry, kg; null if none, or if there is no hanger yet. */
  readonly heaviest: number | null
  readonly remedies: readonly Remedy[]
  /** With no pot yet: the check with the heaviest pot; else null, the page has the check itself. */
  readonly loaded: CheckResult | null
}

/** To the worker. A later question makes the earlier one void. */
export type AdviceQuestion =
  | { readonly kind: 'ask', readonly revision: number, readonly document: HangerDocument }
  | { readonly kind: 'cancel' }

/** From the worker. Advice is null where the document could not be read. */
export type AdviceReply =
  | { readonly kind: 'progress', readonly revision: number, readonly remedies: readonly Remedy[] }
  | { readonly kind: 'answer', readonly revision: number, readonly advice: Advice | null }
  | { readonly kind: 'failed', readonly revision: number, readonly detail: string }
