import { BENEATH, peopleBeneath, RESERVE, RESERVE_ON_ALLOWABLE, type Beneath } from '../catalogue/reserves'
import { cautionsFor, type Caution } from '../check/cautions'
import type { Answers } from '../hanger/fields'
import { wholeCases } from '../load/loadCases'
import type { Loaded } from './loadedHanger'
import { packetRating } from './packetRating'

/** What one answer to "what is beneath" asks of hanger and place. */
export interface BeneathChoice {
  readonly beneath: Beneath
  /** On strengths that hold no safety of their own, and on ratings and published allowables. */
  readonly reserve: number
  readonly reserveOnRated: number
  /** Whether an open hook will do. */
  readonly openHook: boolean
  /** Whether one strand that parts must not let the pot fall, and a second tie is asked for. */
  readonly redundant: boolean
  /** Cautions that are not shown where nothing that matters is beneath. */
  readonly cautions: readonly Caution[]
  /** What the packet of one fixing overhead would have to say, straight out, N; null where nothing can be said. */
  readonly rating: number | null
}

/** What each of the five answers changes for this hanger, mildest first. */
export const beneathChoices = (loaded: Loaded): readonly BeneathChoice[] => BENEATH.map((beneath) => {
  const { solved } = loaded
  const answersOver = (what: Beneath): Answers => ({ ...solved.hanger.answers, 'place.beneath': what })
  const always = cautionsFor(answersOver('nothing'))
  const there: Loaded = {
    ...loaded,
    document: { ...loaded.document, typed: { ...loaded.document.typed, 'place.beneath': beneath } },
    // Who can reach it may be taken from what is beneath, so whether it is tugged at.
    solved: { ...solved, hanger: { ...solved.hanger, answers: answersOver(beneath) }, wholeCases: wholeCases(answersOver(beneath)) },
  }
  return {
    beneath,
    reserve: RESERVE[beneath].value,
    reserveOnRated: RESERVE_ON_ALLOWABLE[beneath].value,
    openHook: !peopleBeneath(beneath),
    redundant: peopleBeneath(beneath),
    cautions: cautionsFor(answersOver(beneath)).filter((caution) => !always.includes(caution)),
    rating: packetRating(there, 'joistOverhead')?.fixing ?? null,
  }
})
