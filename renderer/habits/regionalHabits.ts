import type { WritingHabits } from '#core'

/** Countries that weigh in pounds and measure in inches. */
const IMPERIAL: ReadonlySet<string> = new Set(['US', 'LR', 'MM'])
/** Countries that are metric by law, where cord, pots and scales still come in inches and pounds beside. */
const BOTH: ReadonlySet<string> = new Set(['GB', 'IE', 'CA', 'AU', 'NZ'])

const DAY = new Date(Date.UTC(2029, 2, 9))

function regionOf(locale: string): string | undefined {
  try {
    return new Intl.Locale(locale).maximize().region
  } catch {
    return undefined // no tag of a language
  }
}

function markOf(locale: string): WritingHabits['decimalMark'] {
  const mark = new Intl.NumberFormat(locale).formatToParts(1.5).find(({ type }) => type === 'decimal')?.value
  return mark === ',' ? ',' : '.'
}

function dayOrderOf(locale: string): WritingHabits['dayOrder'] {
  const parts = new Intl.DateTimeFormat(locale, { calendar: 'gregory', year: 'numeric', month: 'numeric', day: 'numeric', timeZone: 'UTC' }).formatToParts(DAY)
  const [first] = parts.filter(({ type }) => type === 'year' || type === 'month' || type === 'day')
  if (first?.type === 'year') return 'yearFirst'
  return first?.type === 'month' ? 'monthFirst' : 'dayFirst'
}

/** How numbers and days are usually written where a locale is spoken; where it says no country, in both units. */
export function regionalHabits(locale: string): WritingHabits {
  const region = regionOf(locale)
  if (region === undefined) return { units: 'both', decimalMark: '.', dayOrder: 'dayFirst' }
  const units = IMPERIAL.has(region) ? 'imperial' : BOTH.has(region) ? 'both' : 'metric'
  return { units, decimalMark: markOf(locale), dayOrder: dayOrderOf(locale) }
}
