import type { Basis, Grade } from '../catalogue/basis'
import type { Refusal } from '../catalogue/refusals'
import { HOLDS_LIMIT } from '../catalogue/reserves'
import { governingOf } from '../check/checkHanger'
import type { Finding, FindingCode } from '../check/finding'
import type { LinkCode, LinkResult } from '../check/linkResult'
import { solve } from '../check/solve'
import type { Solved } from '../check/solved'
import { isWorse, type Verdict } from '../check/verdict'
import { editField, patchDocument, type HangerDocument } from '../hanger/document'
import type { AnswerProblem } from '../hanger/problem'
import { readField, resolveDocument } from '../hanger/resolve'
import { STANDARD_GRAVITY } from '../quantity/si'
import { heaviestPot } from './heaviestPot'
import { formsAt, placeCandidates, ratedThroughout, type PacketTexts, type PlaceCandidate, type PlaceChanges } from './placeCandidates'
import { placeResults, withPlace } from './placeResults'
import { PLACE_KINDS, USUAL_PLACES, type PlaceForm, type UsualPlace } from './usualPlaces'

/** The smallest fixing of one form that holds or just holds at a place, found by checking it there. */
export interface FixingFound {
  readonly found: true
  readonly form: PlaceForm
  /** As sold; '' where it is bought by its rating alone. */
  readonly size: string
  readonly length: string | null
  readonly count: number
  /** Thread in the timber, m; null where there is no timber. */
  readonly depth: number | null
  readonly changes: PlaceChanges
  readonly verdict: Verdict
  readonly utilisation: number | null
  /** The link that decides, and how its capacity is known; null where nothing is fixed. */
  readonly link: LinkCode | null
  readonly grade: Grade | null
  readonly basis: Basis | null
}

/** None of that form will do: the largest that was tried, what decides it, and why. */
export interface NoFixing {
  readonly found: false
  readonly form: PlaceForm
  readonly largest: string
  readonly count: number
  readonly verdict: Verdict
  readonly utilisation: number | null
  readonly link: LinkCode | null
  readonly findings: readonly Finding[]
}
export type FixingOutcome = FixingFound | NoFixing

/** What packets would have to say at least, N: `fixing` straight out and, on a wall, the same along it; `holder` the hook or bracket. */
export interface PacketRating {
  readonly fixing: number
  readonly alongToo: boolean
  readonly holder: number
  /** Fixings that share it. */
  readonly count: number
}

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

export type PlaceNeedsOutcome =
  | { readonly ok: true; readonly needs: PlaceNeeds }
  | { readonly ok: false; readonly reason: 'unread'; readonly problems: readonly AnswerProblem[] }
  /** No pot yet, and no heaviest that the hanger may carry: nothing is known of the weight. */
  | { readonly ok: false; readonly reason: 'noWeight' }

/** What is asked about: the document with a pot in it, solved. */
export interface Loaded {
  readonly document: HangerDocument
  readonly solved: Solved
  readonly pot: PlaceNeeds['pot']
}
export type LoadedOutcome = { readonly ok: true; readonly loaded: Loaded } | Extract<PlaceNeedsOutcome, { ok: false }>

/** The document as it will hang: with its own pot, or with the heaviest it may carry where there is none yet. */
export function loadedFor(document: HangerDocument): LoadedOutcome {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return { ok: false, reason: 'unread', problems: resolved.problems }
  if (resolved.hanger.answers['pot.have'] === 'yes') return { ok: true, loaded: { document, solved: solve(resolved.hanger), pot: 'own' } }
  const heaviest = heaviestPot(document)
  if (heaviest === null) return { ok: false, reason: 'noWeight' }
  return { ok: true, loaded: { document: patchDocument(editField(document, 'weighed.tare', null), heaviest.patch), solved: heaviest.check.solved, pot: 'heaviest' } }
}

/** A rating large enough that only its proportion counts. */
const PROBE = 1000
const kilograms = (force: number): string => `${force} kgf`
/** As packets print them: whole kilograms, rounded up. */
const asPrinted = (force: number): string => kilograms(Math.max(1, Math.ceil(force / STANDARD_GRAVITY - 1e-9)))

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

function depthOf(changes: PlaceChanges, results: readonly LinkResult[]): number | null {
  const term = results.flatMap((l) => l.terms).find((t) => t.code === 'penetration')
  if (term !== undefined) return term.value
  const typed = changes['fixing.penetration']
  const read = typed === undefined || typed === null ? null : readField('fixing.penetration', typed)
  return read?.ok === true && typeof read.value === 'number' ? read.value : null
}

/** A fixing that a book would not count at its full thickness is not proposed. */
const UNFIT: ReadonlySet<FindingCode> = new Set<FindingCode>(['PENETRATION_TOO_SHORT'])

function tryFixing({ document, solved }: Loaded, { form, size, length, count, changes }: PlaceCandidate): FixingOutcome | null {
  const results = placeResults(document, solved, changes)
  const decides = results === null ? null : governingOf(results)
  if (results === null || decides === null) return null
  const { verdict, utilisation, link, findings } = decides
  const fits = !isWorse(verdict, 'just holds') && !results.some((l) => l.findings.some(({ code }) => UNFIT.has(code)))
  return fits
    ? { found: true, form, size, length, count, depth: depthOf(changes, results), changes, verdict, utilisation, link, grade: decides.grade, basis: decides.capacity?.basis ?? null }
    : { found: false, form, largest: size, count, verdict, utilisation, link, findings }
}

/** What a support that must first be pulled in place is to be pulled with, kg; null where none is asked. */
const pullAsked = (outcome: FixingOutcome): number | null =>
  (outcome.found ? null : outcome.findings.flatMap((f) => (f.code === 'BRANCH_UNTESTED' ? [f.testMass] : []))[0] ?? null)

/**
 * The smallest of a form's candidates that holds or just holds; they come from the smallest up, and where the
 * largest does not hold, none does. What asks to be pulled in place first is proposed with that pull.
 */
function findFixing(loaded: Loaded, form: PlaceForm, candidates: readonly PlaceCandidate[]): FixingOutcome {
  const none: NoFixing = { found: false, form, largest: '', count: 1, verdict: 'not enough known', utilisation: null, link: null, findings: [] }
  const largest = candidates.at(-1)
  if (largest === undefined) return none
  const most = tryFixing(loaded, largest) ?? none
  const pull = pullAsked(most)
  if (pull !== null) return tryFixing(loaded, { ...largest, changes: { ...largest.changes, 'fixing.proof': `${Math.ceil(pull)} kg` } }) ?? most
  if (!most.found) return most
  for (const candidate of candidates.slice(0, -1)) {
    const outcome = tryFixing(loaded, candidate)
    if (outcome?.found) return outcome
  }
  return most
}

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
