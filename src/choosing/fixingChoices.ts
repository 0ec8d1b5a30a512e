import { findFixing, UNFIT, type FixingOutcome } from '../advice/findFixing'
import { loadedFor, type Loaded } from '../advice/loadedHanger'
import { asPrinted, packetRating } from '../advice/packetRating'
import { formsAt, placeCandidates, type PlaceCandidate } from '../advice/placeCandidates'
import { placeResults, withPlace } from '../advice/placeResults'
import { PLACE_KINDS, USUAL_PLACES, type PlaceForm, type UsualPlace } from '../advice/usualPlaces'
import { checkHanger, type CheckResult } from '../check/checkHanger'
import type { HangerDocument } from '../hanger/document'
import type { Answers } from '../hanger/fields'
import { changeBetween } from './change'
import type { Choice, Limit } from './choice'
import { judge, type Judged } from './judge'
import { DECIDES } from './question'
import { noChoice, whyNone, type Asked } from './tell'

/** Where it hangs, among the usual places; null where it is none of them. */
export function placeOf(answers: Answers): UsualPlace | null {
  const support = answers['place.support']
  const at = support === 'ceilingHook' ? 'overhead' : support === 'overBeam' ? 'round' : 'wall'
  return USUAL_PLACES.find((place) => PLACE_KINDS[place].substrate === answers['place.substrate'] && PLACE_KINDS[place].at === at) ?? null
}

const isOfPlace = ({ link }: { readonly link: Parameters<typeof DECIDES.fixing.includes>[0] }): boolean => DECIDES.fixing.includes(link)

/** The candidate a size smaller than the one that was found, and why it will not do; null where there is none. */
function limitOf(loaded: Loaded, now: CheckResult, candidates: readonly PlaceCandidate[], outcome: Extract<FixingOutcome, { found: true }>): Limit | null {
  const smaller = candidates[candidates.findIndex(({ changes }) => changes === outcome.changes) - 1]
  if (smaller === undefined) return null
  const { stop } = judge(withPlace(loaded.document, smaller.changes), now, isOfPlace)
  if (stop !== null) return { value: null, stop }
  const finding = placeResults(loaded.document, loaded.solved, smaller.changes)?.flatMap(({ findings }) => findings).find(({ code }) => UNFIT.has(code))
  return finding === undefined ? null : { value: null, stop: { kind: 'unfit', finding } }
}

/** What one form came to: its smallest is searched as for every usual place, then the whole is checked with it. */
function* ofForm(document: HangerDocument, loaded: Loaded, now: CheckResult, place: UsualPlace, form: PlaceForm): Generator<Judged, Choice, void> {
  const rating = packetRating(loaded, place)
  const candidates = placeCandidates(place, form, loaded.solved.hanger, { fixing: asPrinted(rating?.fixing ?? 0), holder: asPrinted(rating?.holder ?? 0) })
  const asked: Asked = { choice: 'fixing', of: { kind: 'fixing', place, form }, unit: 'count', field: null, now: null, isForNext: false, document, close: 0, isUntested: false }
  const outcome = findFixing(loaded, form, candidates)
  if (!outcome.found) {
    const { verdict, utilisation, link, findings } = outcome
    return noChoice(asked, link === null ? { code: 'noFixings' } : whyNone(null, { kind: 'link', link, verdict, utilisation, findings, now: null, byUse: utilisation !== null && utilisation > 1 }), candidates.length)
  }
  const judged = judge(withPlace(loaded.document, outcome.changes), now, isOfPlace)
  yield judged
  const tried = candidates.findIndex(({ changes }) => changes === outcome.changes) + 2
  if (judged.stand === null || judged.stop !== null) return noChoice(asked, judged.stop === null ? { code: 'noFixings' } : whyNone(null, judged.stop), tried)
  return {
    found: true, choice: 'fixing', of: asked.of, unit: 'count', field: null, now: null, isForNext: false, value: null, fixing: outcome,
    change: changeBetween(document, withPlace(document, outcome.changes)), stand: judged.stand, limit: limitOf(loaded, now, candidates, outcome),
    until: null, again: [], close: 0, isUntested: false, checks: tried,
  }
}

/** The smallest fixing of each form for the place where it hangs. Yields each as it is found. */
export function* fixingChoices(document: HangerDocument, answers: Answers): Generator<Judged | Choice, readonly Choice[], void> {
  const asked: Asked = { choice: 'fixing', of: null, unit: 'count', field: null, now: null, isForNext: false, document, close: 0, isUntested: false }
  const place = placeOf(answers)
  if (answers['place.substrate'] === 'unknown') return [noChoice(asked, { code: 'answersNeeded', paths: ['place.substrate'] }, 0)]
  if (answers['place.support'] === 'overBeam') return [noChoice(asked, { code: 'notConcerned' }, 0)]
  if (place === null || PLACE_KINDS[place].refused !== null) return [noChoice(asked, { code: 'noFixings' }, 0)]
  const outcome = loadedFor(document)
  if (!outcome.ok) return [noChoice(asked, { code: 'answersNeeded', paths: ['make.legs', 'make.strands', 'cord.fibre', 'cord.diameter'] }, 0)]
  const now = checkHanger(outcome.loaded.solved.hanger)
  const told: Choice[] = []
  for (const form of formsAt(place, outcome.loaded.solved.hanger)) {
    const choice = yield* ofForm(document, outcome.loaded, now, place, form)
    told.push(choice)
    yield choice
  }
  return told
}
