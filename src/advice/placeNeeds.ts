import type { Refusal } from '../catalogue/refusals'
import type { HangerDocument } from '../hanger/document'
import { findFixing, type FixingFound, type FixingOutcome } from './findFixing'
import { loadedFor, type Loaded, type NotLoaded } from './loadedHanger'
import { asPrinted, packetRating, type PacketRating } from './packetRating'
import { formsAt, placeCandidates, type PacketTexts } from './placeCandidates'
import { withPlace } from './placeResults'
import { PLACE_KINDS, USUAL_PLACES, type UsualPlace } from './usualPlaces'

/** What one usual wall or ceiling needs. */
export interface PlaceNeed {
  readonly place: UsualPlace
  readonly refused: Refusal | null
  readonly fixings: readonly FixingOutcome[]
  readonly rating: PacketRating | null
}

/** What a hanger needs of the place it will hang in. */
export interface PlaceNeeds {
  /** All that hangs there just watered, and at its heaviest at rest, kg, high values; what else hangs there left out. */
  readonly watered: number
  readonly heaviest: number
  /** Whether the hanger's own pot was reckoned with, or the heaviest it may carry. */
  readonly pot: 'own' | 'heaviest'
  readonly needs: readonly PlaceNeed[]
}

export type PlaceNeedsOutcome = { readonly ok: true; readonly needs: PlaceNeeds } | NotLoaded

/** What one usual place needs of a fixing. */
export function needOf(loaded: Loaded, place: UsualPlace): PlaceNeed {
  const { refused } = PLACE_KINDS[place]
  const { hanger } = loaded.solved
  const rating = packetRating(loaded, place)
  const packet: PacketTexts = { fixing: asPrinted(rating?.fixing ?? 0), holder: asPrinted(rating?.holder ?? 0) }
  return { place, refused, rating, fixings: formsAt(place, hanger).map((form) => findFixing(loaded, form, placeCandidates(place, form, hanger, packet))) }
}

/**
 * The inverse question: for each usual wall and ceiling, the fixings that would do, place by place, so that a
 * long search can be stopped in between. Every one is found by putting it into the document and checking it.
 */
export function* searchPlaceNeeds(loaded: Loaded): Generator<PlaceNeed, void, void> {
  for (const place of USUAL_PLACES) yield needOf(loaded, place)
}

/** The needs of all usual places beside what hangs there. */
export function placeNeedsOf({ solved, pot }: Omit<Loaded, 'document'>, needs: readonly PlaceNeed[]): PlaceNeeds {
  const all = (state: 'watered' | 'flooded'): number => solved.loads[state].potted + solved.loads[state].hanger
  return { watered: all('watered'), heaviest: Math.max(all('watered'), all('flooded')), pot, needs }
}

/** What the hanger of a document needs of its place, all at once. Pure. */
export function answerPlaceNeeds(document: HangerDocument): PlaceNeedsOutcome {
  const outcome = loadedFor(document)
  return outcome.ok ? { ok: true, needs: placeNeedsOf(outcome.loaded, [...searchPlaceNeeds(outcome.loaded)]) } : outcome
}

/** The document with a fixing that was found put in. */
export const withFixing = (document: HangerDocument, { changes }: FixingFound): HangerDocument => withPlace(document, changes)
