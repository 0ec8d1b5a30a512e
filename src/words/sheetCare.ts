import type { Care } from '../check/care'
import { timeText } from './amounts'
import { dayText, monthName } from './care'

export const LOOK_TITLE = 'Look again'

const MONTHS_OF_YEAR = 12
const joined = (names: readonly string[]): string => (names.length === 1 ? names[0] as string : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`)

/**
 * When to look at a hanger, by the months of the year, counted from a day: YYYY-MM-DD.
 * @example lookMonthsText({ first: 1, every: 6, reasons: ['indoors'] }, '2026-11-26') // 'After its first month, then every May and November, and after any knock.'
 */
export function lookMonthsText({ first, every }: Care['inspect'], today: string): string {
  const start = Number(today.slice(5, 7))
  const months = Array.from({ length: Math.max(1, Math.floor(MONTHS_OF_YEAR / every)) }, (_, i) => ((start - 1 + (i + 1) * every) % MONTHS_OF_YEAR) + 1).sort((a, b) => a - b)
  const when = every === 1 ? 'every month' : MONTHS_OF_YEAR % every === 0 ? `every ${joined(months.map(monthName))}` : `every ${every} months`
  return `After its first ${first === 1 ? 'month' : `${first} months`}, then ${when}, and after any knock.`
}

/** The same as short as a tag wants it. */
export const lookOftenText = ({ every }: Care['inspect']): string => (every === 6 ? 'Look at it twice a year' : every === 12 ? 'Look at it once a year' : every === 1 ? 'Look at it every month' : `Look at it every ${every} months`)

/** When to replace it: by a day where it is known when it was made. */
export function replaceByText({ replaceAfter, replaceBy }: Care): string {
  if (replaceAfter === null) return 'How long its cord lasts there cannot be promised.'
  return replaceBy === null ? `Replace it ${timeText(replaceAfter)} after it was made.` : `Replace it by ${dayText(replaceBy)}.`
}

export const SIGN_TEXTS: Readonly<Record<'frayed' | 'thinned' | 'slipped' | 'opened', string>> = {
  frayed: 'Frayed', thinned: 'Rubbed thin', slipped: 'Wraps slipped', opened: 'Hook opened',
}
export const SIGNS_TEXT = 'At any of these signs take it down:'
