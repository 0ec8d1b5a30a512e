import { HOLDS_LIMIT } from '../catalogue/reserves'
import type { LinkResult } from '../check/linkResult'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { Loaded } from './loadedHanger'
import { ratedThroughout } from './placeCandidates'
import { placeResults } from './placeResults'
import { PLACE_KINDS, type UsualPlace } from './usualPlaces'

/** What packets would have to say at least, N: `fixing` straight out and, on a wall, the same along it; `holder` the hook or bracket. */
export interface PacketRating {
  readonly fixing: number
  readonly alongToo: boolean
  readonly holder: number
  /** Fixings that share it. */
  readonly count: number
}

/** A rating large enough that only its proportion counts. */
const PROBE = 1000
const kilograms = (force: number): string => `${force} kgf`
/** As packets print them: whole kilograms, rounded up. */
export const asPrinted = (force: number): string => kilograms(Math.max(1, Math.ceil(force / STANDARD_GRAVITY - 1e-9)))

const worstUse = (results: readonly LinkResult[], isOf: (result: LinkResult) => boolean): number =>
  Math.max(0, ...results.filter(isOf).map((l) => l.utilisation ?? 0))

/**
 * The ratings with which everything at a place holds, used to the share that still counts as "holds": what a
 * rated part is asked goes with one over its rating, so one check with any rating tells it. Null where
 * nothing is bought by its rating, or the check has no answer.
 */
export function packetRating({ document, solved }: Loaded, place: UsualPlace): PacketRating | null {
  if (!PLACE_KINDS[place].rated) return null
  const probe = kilograms(PROBE)
  const changes = ratedThroughout(place, solved.hanger, { fixing: probe, holder: probe })
  const results = placeResults(document, solved, changes)
  if (results === null) return null
  // What a customer told of the place is graded lower, and leaves less to be used.
  const grade = results.find((l) => l.part === 'rated')?.grade ?? 'rated'
  const needed = (use: number): number => (PROBE * STANDARD_GRAVITY * use) / HOLDS_LIMIT[grade].value
  const fixing = worstUse(results, (l) => l.link === 'fixing')
  const holder = worstUse(results, (l) => l.part === 'rated' && l.link !== 'fixing')
  if (fixing === 0) return null
  const count = Number(changes['bracket.screws'] ?? changes['fixing.count'] ?? 1)
  return { fixing: needed(fixing), alongToo: PLACE_KINDS[place].at === 'wall', holder: needed(holder), count }
}
