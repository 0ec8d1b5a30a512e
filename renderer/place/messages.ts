import type { BeneathChoice, HangerDocument, PlaceNeed, PlaceNeeds } from '#core'

/** What a hanger needs of its place, and what the answers to "what is beneath" change. */
export interface PlaceAnswer {
  readonly needs: PlaceNeeds
  readonly beneath: readonly BeneathChoice[]
}

/** To the worker. A later question makes the earlier one void. */
export interface PlaceQuestion {
  readonly kind: 'place'
  readonly revision: number
  readonly document: HangerDocument
}

/** From the worker. The answer is null where the document cannot be read, "noWeight" where nothing is known of what hangs. */
export type PlaceReply =
  | { readonly kind: 'placeProgress', readonly revision: number, readonly found: readonly PlaceNeed[] }
  | { readonly kind: 'placeAnswer', readonly revision: number, readonly answer: PlaceAnswer | 'noWeight' | null }
  | { readonly kind: 'placeFailed', readonly revision: number, readonly detail: string }
