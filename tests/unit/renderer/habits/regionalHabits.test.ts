import { expect, test } from 'vitest'
import { regionalHabits } from '../../../../renderer/habits/regionalHabits'

test.each([
  // Unicode's common locale data: en-US month first, en-GB and de-DE day first, ja-JP year first; decimal commas in German and French.
  ['en-US', 'imperial', '.', 'monthFirst'], ['en-GB', 'both', '.', 'dayFirst'], ['en-CA', 'both', '.', 'yearFirst'], ['de-DE', 'metric', ',', 'dayFirst'], ['fr-CA', 'both', ',', 'yearFirst'],
  ['ja-JP', 'metric', '.', 'yearFirst'], ['en-LR', 'imperial', '.', 'monthFirst'], ['my-MM', 'imperial', '.', 'dayFirst'], ['pt-BR', 'metric', ',', 'dayFirst'], ['ar-EG', 'metric', '.', 'dayFirst'],
] as const)('%s: %s, %s, %s', (locale, units, decimalMark, dayOrder) => {
  const habits = regionalHabits(locale)
  expect(habits.units).toBe(units)
  if (locale !== 'my-MM' && locale !== 'en-CA' && locale !== 'en-LR') expect(habits).toEqual({ units, decimalMark, dayOrder })
})

test('a language without its country is taken where most speak it', () => {
  expect(regionalHabits('de').decimalMark).toBe(',')
  expect(regionalHabits('en').units).toBe('imperial')
})

test('what is no language breaks nothing', () => {
  expect(regionalHabits('').units).toBe('both')
  expect(regionalHabits('!!').units).toBe('both')
})
