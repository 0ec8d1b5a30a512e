import { describe, expect, test } from 'vitest'
import { daysAfter, monthsAfter } from '../../../src/quantity/calendarDay'
import { seededRandom, wholeBetween } from './seededRandom'

describe('months on', () => {
  test.each([
    ['2026-03-21', 36, '2029-03-21'],
    ['2026-11-25', 1, '2026-12-25'],
    ['2026-12-31', 2, '2027-02-28'],
    ['2027-12-31', 2, '2028-02-29'],
    ['2026-08-31', 1, '2026-09-30'],
    ['2028-02-29', 12, '2029-02-28'],
    ['2028-02-29', 48, '2032-02-29'],
    // Of the centuries only every fourth has a leap year.
    ['2096-02-29', 48, '2100-02-28'],
    ['1996-02-29', 48, '2000-02-29'],
    ['2026-05-30', 0, '2026-05-30'],
    ['0050-01-31', 1, '0050-02-28'],
    ['9999-11-30', 1, '9999-12-30'],
    ['9999-12-31', 0, '9999-12-31'],
    ['9999-11-30', 2, null],
  ])('%s and %d months: %s', (from, months, to) => {
    expect(monthsAfter(from, months)).toBe(to)
  })
})

describe('days on', () => {
  test.each([
    ['2028-02-28', 1, '2028-02-29'], ['2027-02-28', 1, '2027-03-01'], ['2026-12-31', 1, '2027-01-01'], ['2100-02-28', 1, '2100-03-01'],
    ['2026-06-15', 100, '2026-09-23'], ['2026-03-28', 2, '2026-03-30'], ['9999-12-31', 1, null],
  ])('%s and %d days: %s', (from, days, to) => {
    expect(daysAfter(from, days)).toBe(to)
  })

  test('a day at a time, every date is the next one on the calendar, for 900 years', () => {
    const lengths = (year: number) => [31, year % 400 === 0 || (year % 4 === 0 && year % 100 !== 0) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
    let day = '1595-01-01'
    for (let year = 1595; year < 2495; year += 1) {
      for (const [month, length] of lengths(year).entries()) {
        for (let date = 1; date <= length; date += 1) {
          if (day !== `${year}-${String(month + 1).padStart(2, '0')}-${String(date).padStart(2, '0')}`) throw new Error(`${day} in ${year}, month ${month + 1}`)
          day = daysAfter(day, 1) ?? ''
        }
      }
    }
    expect(day).toBe('2495-01-01')
  })
})

test('a month more is 28 to 31 days more, and never ends on an earlier day of a longer month', () => {
  const random = seededRandom(41)
  for (let i = 0; i < 500; i += 1) {
    const from = daysAfter('1990-01-01', wholeBetween(random, 0, 40_000)) ?? ''
    const to = monthsAfter(from, 1) ?? ''
    const [start, end] = [Number(from.slice(8)), Number(to.slice(8))]
    const apart = Array.from({ length: 4 }, (_, n) => daysAfter(from, 28 + n))
    expect(apart).toContain(to)
    expect(end === start || (end < start && daysAfter(to, 1)?.endsWith('-01') === true), `${from} to ${to}`).toBe(true)
  }
})
