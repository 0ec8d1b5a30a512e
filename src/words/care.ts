import type { Care, CareReason } from '../check/care'
import type { LookReason } from '../catalogue/reinspection'
import { timeText } from './amounts'
import { writingHabits } from './writing'

type Words = { readonly [C in CareReason['code']]: (reason: Extract<CareReason, { code: C }>) => string }

const leftText = (share: number): string => `${Math.floor(share * 100 + 1e-9)} %`

const REASON_WORDS: Words = {
  SERVICE_LIFE: ({ life, chosen }) => (chosen
    ? `Its strength was reckoned for ${timeText(life)}, the time you chose.`
    : `Its strength was reckoned for ${timeText(life)}, the usual time; you may choose another.`),
  LIFE_TOO_LONG: ({ life, most }) => `It was to hang for ${timeText(life)}; weather and water allow ${timeText(most)}.`,
  NATURAL_OUTDOORS: ({ most, left }) => `Natural cord outdoors keeps about ${leftText(left)} of its strength after one season: ${timeText(most)} at most.`,
  SYNTHETIC_OUTDOORS: ({ most, left }) => `Sun takes strength from this cord every year: about ${leftText(left)} is counted on by then. No test ran longer than ${timeText(most)}.`,
  OUTDOOR_LOSS_UNKNOWN: () => 'How fast this fibre loses strength outdoors is not known, and some cords turn brittle in weeks: no date can be promised.',
  STEAMY: ({ left }) => `In a steamy room ${leftText(left)} of its strength is counted on by then.`,
  ALWAYS_WET: () => 'The pot is always wet, so the hanger never rests from its full load.',
  KNOT_DAMP: ({ left }) => `Water drips on the gathering knot under the drain hole: ${leftText(left)} of what the rest keeps is counted on there.`,
  KNOT_NEVER_DRY: ({ most }) => `The gathering knot does not dry between waterings, and natural cord that is often wet is replaced after ${timeText(most)}.`,
  JUTE_DAMP: ({ most }) => `Jute rots where it gets wet, as under the drain hole: ${timeText(most)} at most.`,
  JUTE_NEVER_DRY: ({ lost }) => `Jute that stays damp loses all its strength within ${timeText(lost)}: no date can be promised.`,
}

const LOOK_WORDS: Readonly<Record<LookReason, string>> = {
  indoors: 'it hangs dry under a roof',
  steamy: 'it hangs in damp air',
  alwaysWet: 'the pot is always wet',
  peopleBeneath: 'people are beneath',
  outdoors: 'it hangs outdoors',
  juteDamp: 'jute rots where it stays damp',
}

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']
/**
 * Name of a month, from 1; months after the twelfth begin again.
 * @example monthName(14) // 'February'
 */
export const monthName = (month: number): string => MONTHS[(((month - 1) % 12) + 12) % 12] as string

/**
 * A day of the calendar, year-month-day, as the reader says it; what is no such day stays as it is.
 * @example dayText('2029-03-09') // '9 March 2029'
 */
export function dayText(day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day)?.map(Number) ?? []
  const name = month === undefined ? undefined : MONTHS[month - 1]
  const { dayOrder } = writingHabits()
  if (name === undefined || year === undefined || date === undefined || dayOrder === 'yearFirst') return day
  return dayOrder === 'monthFirst' ? `${name} ${date}, ${year}` : `${date} ${name} ${year}`
}

const monthsText = (months: number): string => (months === 1 ? 'month' : `${months} months`)

/** What to tell of the care of a hanger, in sentences: when to replace it, why then, and when to look at it. */
export interface CareSentences {
  readonly replace: string
  readonly reasons: readonly string[]
  readonly inspect: string
}

/** The sentence for one reason. */
export const careReasonText = (reason: CareReason): string => (REASON_WORDS[reason.code] as (r: CareReason) => string)(reason)
/** Why it is to be looked at, within a sentence. */
export const lookReasonText = (reason: LookReason): string => LOOK_WORDS[reason]

function replaceText({ replaceAfter, replaceBy }: Care): string {
  if (replaceAfter === null) return 'When to replace it cannot be said.'
  return replaceBy === null
    ? `Replace it ${timeText(replaceAfter)} after it was made; enter the date it was made to see the day.`
    : `Replace it by ${dayText(replaceBy)}, ${timeText(replaceAfter)} after it was made.`
}

/** The sentences of a hanger's care: what, by when, why. */
export function careSentences(care: Care): CareSentences {
  const { first, every, reasons } = care.inspect
  const why = reasons.map(lookReasonText).join(', and ')
  return {
    replace: replaceText(care),
    reasons: care.reasons.map(careReasonText),
    inspect: `Look at every knot, the hook and the fixing after the first ${monthsText(first)}, when the knots have settled, then every ${monthsText(every)}, for ${why}; and at once after any knock.`,
  }
}
