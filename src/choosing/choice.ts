import type { FixingFound } from '../advice/findFixing'
import type { PlaceForm, UsualPlace } from '../advice/usualPlaces'
import type { CordMake, Fibre } from '../catalogue/cords'
import type { Finding } from '../check/finding'
import type { LinkCode } from '../check/linkResult'
import type { FieldPath } from '../hanger/fields'
import type { Change } from './change'
import type { Stand, Stop } from './judge'
import type { ChoiceCode } from './question'

/** Which cord or fixing an answer is about; null where a question has but one answer. */
export type ChoiceOf =
  | { readonly kind: 'shelf'; readonly name: string }
  | { readonly kind: 'catalogue'; readonly fibre: Fibre; readonly make: CordMake }
  | { readonly kind: 'fixing'; readonly place: UsualPlace; readonly form: PlaceForm }

/** What an answer is measured in: counted, in metres, or in kilograms. */
export type ChoiceUnit = 'count' | 'm' | 'kg'

/** A value that will not do, and why. */
export interface Limit {
  /** Null for fixings, which have no one measure, and for a cord that is tried as it is. */
  readonly value: number | null
  readonly stop: Stop
}

interface Told {
  readonly choice: ChoiceCode
  readonly of: ChoiceOf | null
  readonly unit: ChoiceUnit
  /** The field that was varied, which names what is measured; null where it is more than one. */
  readonly field: FieldPath | null
  /** What it is now, in that unit; null where it is not known or does not compare. */
  readonly now: number | null
  /** Whether it can only be had in the next hanger, this one being made. */
  readonly isForNext: boolean
  /** How often the hanger was checked for it. */
  readonly checks: number
}

export interface ChoiceFound extends Told {
  readonly found: true
  /** Null for fixings, and for a cord from the shelf that has no diameter. */
  readonly value: number | null
  readonly fixing: FixingFound | null
  readonly change: Change
  readonly stand: Stand
  /** What stops it going further: the value just beyond; null where nothing that was tried does. */
  readonly limit: Limit | null
  /** The safe side holds no further than this value, beyond which it stops too; null where it holds all the way. */
  readonly until: { readonly value: number; readonly limit: Limit } | null
  /** Values that hold again beyond the limit: they are not trusted, and the answer is the safe end. */
  readonly again: readonly number[]
  /** How close the answer is to the true edge, in its unit; 0 where it is exact, by counting or as sold. */
  readonly close: number
  /** Whether a test hang of the present hanger was left out, for it is no test of another. */
  readonly isUntested: boolean
}

export type NoChoiceReason =
  /** There is nothing of the kind on this hanger. */
  | { readonly code: 'notConcerned' }
  | { readonly code: 'noPot' }
  | { readonly code: 'noHanger' }
  /** Answers that are missing before anything can be tried. */
  | { readonly code: 'answersNeeded'; readonly paths: readonly FieldPath[] }
  /** Of all tried, this came nearest, and does not hold. */
  | { readonly code: 'noneHolds'; readonly limit: Limit }
  /** What came nearest is not known to hold; the findings say what would settle it. */
  | { readonly code: 'notEnoughKnown'; readonly limit: Limit; readonly link: LinkCode; readonly findings: readonly Finding[] }
  /** The place is one that nothing may be fixed to, or of which no usual fixings are known. */
  | { readonly code: 'noFixings' }

export interface NoChoice extends Told {
  readonly found: false
  readonly reason: NoChoiceReason
}

export type Choice = ChoiceFound | NoChoice
