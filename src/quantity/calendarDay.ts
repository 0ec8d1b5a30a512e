// Days of the calendar as YYYY-MM-DD, without a clock and without hours.

const DAY_LENGTH = 86_400_000

/** Written with four figures for the year; null beyond the year 9999 or before 0. */
const written = (time: number): string | null => {
  const text = new Date(time).toISOString()
  return /^\d{4}-/.test(text) ? text.slice(0, 10) : null
}

const timeOf = (day: string): number => Date.parse(`${day}T00:00:00Z`)

/**
 * The day so many days later; null beyond the year 9999.
 * @example daysAfter('2028-02-28', 2) // '2028-03-01'
 */
export const daysAfter = (day: string, days: number): string | null => written(timeOf(day) + days * DAY_LENGTH)

/**
 * The same day so many months later; where that month is too short, its last day. Null beyond the year 9999.
 * @example monthsAfter('2028-02-29', 12) // '2029-02-28'
 */
export function monthsAfter(day: string, months: number): string | null {
  const [year = 0, month = 1, dayOfMonth = 1] = day.split('-').map(Number)
  const firstOf = (monthsOn: number): number => {
    const count = year * 12 + month - 1 + monthsOn
    const firstYear = Math.floor(count / 12)
    // Beyond four figures the standard asks for six and a sign (ISO 8601, expanded).
    const yearText = firstYear > 9999 ? `+${String(firstYear).padStart(6, '0')}` : String(firstYear).padStart(4, '0')
    return timeOf(`${yearText}-${String((count % 12) + 1).padStart(2, '0')}-01`)
  }
  return written(Math.min(firstOf(months) + (dayOfMonth - 1) * DAY_LENGTH, firstOf(months + 1) - DAY_LENGTH))
}
