import { expect, test } from 'vitest'
import { forceText, lengthText, massText, numberText, percentText, timeText } from '#core'
import { massLeastText, massLimitText } from '../../../src/words/amounts'
import { faultsOf } from './cleanSentence'

test.each([
  [5.5, '5.5 kg (12.1 lb)'], [0.0123, '0.012 kg (0.027 lb)'], [12.345, '12.3 kg (27.2 lb)'], [149, '149 kg (328 lb)'], [0, '0 kg (0 lb)'], [10, '10 kg (22 lb)'],
])('%d kg: %s', (mass, text) => {
  expect(massText(mass)).toBe(text)
})

test.each([
  // The inch by the nearest sixteenth of a tape: 131.8 mm is 5.189 in, 83.02 sixteenths.
  [0.1318, '132 mm (5 3/16 in)'], [0.0254, '25.4 mm (1 in)'], [0.45, '45 cm (17 11/16 in)'], [1.52, '1.52 m (4 ft 11 13/16 in)'], [0.003, '3 mm (1/8 in)'],
])('%d m: %s', (length, text) => {
  expect(lengthText(length)).toBe(text)
})

test('a force is the mass that would pull as hard', () => {
  expect(forceText(6 * 9.80665)).toBe('6 kg (13.2 lb)')
})

test('a share is never told better than it is', () => {
  expect(percentText(0.62)).toBe('62 %')
  expect(percentText(0.6201)).toBe('63 %')
  expect(percentText(1.0001)).toBe('101 %')
})

test('a limit is rounded down, what must be reached is rounded up', () => {
  expect(massLimitText(13.58)).toBe('13.5 kg (29.9 lb)')
  expect(massLeastText(13.52)).toBe('13.6 kg (29.9 lb)')
  expect(massLeastText(12)).toBe('12 kg (26.5 lb)')
})

test.each([[10, '10 seconds'], [1, '1 second'], [3600, '1 hour'], [86400, '1 day'], [3 * 31557600, '3 years'], [90 * 60, '1.5 hours']])('%d s: %s', (seconds, text) => {
  expect(timeText(seconds)).toBe(text)
})

test('numbers of any size are short and clean', () => {
  for (let power = -3; power <= 6; power++) {
    for (const lead of [1, 1.2345678, 9.9999]) {
      const value = lead * 10 ** power
      for (const text of [massText(value), lengthText(value), numberText(value), timeText(value), forceText(value)]) expect(faultsOf(text), text).toEqual([])
      expect(numberText(value).replace(/[^\d]/g, '').length).toBeLessThanOrEqual(7)
    }
  }
})
