import type { Basis, Grade } from '../catalogue/basis'
import { governingOf } from '../check/checkHanger'
import type { Finding, FindingCode } from '../check/finding'
import type { LinkCode, LinkResult } from '../check/linkResult'
import { isWorse, type Verdict } from '../check/verdict'
import { readField } from '../hanger/resolve'
import type { Loaded } from './loadedHanger'
import type { PlaceCandidate, PlaceChanges } from './placeCandidates'
import { placeResults } from './placeResults'
import type { PlaceForm } from './usualPlaces'

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

/** Thread in the timber, m: as deep as it is driven where that was chosen, else as the check counts it. */
function depthOf(changes: PlaceChanges, results: readonly LinkResult[]): number | null {
  const typed = changes['fixing.penetration']
  const read = typed === undefined || typed === null ? null : readField('fixing.penetration', typed)
  if (read?.ok === true && typeof read.value === 'number') return read.value
  return results.filter((l) => l.link === 'fixing').flatMap((l) => l.terms).find((t) => t.code === 'penetration')?.value ?? null
}

/** A fixing that a book would not count at its full thickness is not proposed. */
export const UNFIT: ReadonlySet<FindingCode> = new Set<FindingCode>(['PENETRATION_TOO_SHORT'])

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
export function findFixing(loaded: Loaded, form: PlaceForm, candidates: readonly PlaceCandidate[]): FixingOutcome {
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
