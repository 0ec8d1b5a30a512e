import { describe, expect, test } from 'vitest'
import { careSentences, type Care } from '#core'
import type { CareReason } from '../../../src/check/care'
import { CARE_REASONS } from '../../../src/check/care'
import { LOOK_REASONS } from '../../../src/catalogue/reinspection'
import { MONTH, YEAR } from '../../../src/catalogue/duration'
import { careReasonText, dayText, lookReasonText } from '../../../src/words/care'
import { checkOf } from '../hanger/hangerOf'
import { randomPatch } from '../check/randomPatch'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

type Numbers<C extends CareReason['code']> = Omit<Extract<CareReason, { code: C }>, 'code'>
const SAMPLES: { readonly [C in CareReason['code']]: readonly (readonly [Numbers<C>, ...string[]])[] } = {
  SERVICE_LIFE: [[{ life: 3 * YEAR, chosen: false }, '3 years', 'usual'], [{ life: 30 * 86400, chosen: true }, '30 days', 'you chose']],
  LIFE_TOO_LONG: [[{ life: 4 * YEAR, most: YEAR }, '4 years', 'allow 1 year']],
  NATURAL_OUTDOORS: [[{ most: YEAR, left: 0.3 }, '30 %', '1 year at most']],
  SYNTHETIC_OUTDOORS: [[{ most: 3 * YEAR, left: 0.48999999 }, '48 %', '3 years']],
  OUTDOOR_LOSS_UNKNOWN: [[{}, 'not known']],
  STEAMY: [[{ left: 0.7 }, '70 %']],
  ALWAYS_WET: [[{}]],
  KNOT_DAMP: [[{ left: 0.7 }, '70 %']],
  KNOT_NEVER_DRY: [[{ most: YEAR }, '1 year']],
  JUTE_DAMP: [[{ most: YEAR }, '1 year']],
  JUTE_NEVER_DRY: [[{ lost: 2.5 * MONTH }, '2.5 months']],
}
const samples = Object.entries(SAMPLES).flatMap(([code, list]) => list.map(([numbers, ...says]) => ({ reason: { code, ...numbers } as CareReason, says })))

test.each(samples)('$reason', ({ reason, says }) => {
  const text = careReasonText(reason)
  expect(sentenceFaultsOf(text), text).toEqual([])
  for (const part of says) expect(text).toContain(part)
})

test('the samples are of every reason', () => {
  expect(Object.keys(SAMPLES).sort()).toEqual([...CARE_REASONS].sort())
})

test.each(LOOK_REASONS)('why to look, %s, is told within a sentence', (reason) => {
  expect(faultsOf(lookReasonText(reason))).toEqual([])
})

test.each([['2029-03-21', '21 March 2029'], ['2028-02-29', '29 February 2028'], ['2030-12-01', '1 December 2030']])('%s is %s', (day, text) => {
  expect(dayText(day)).toBe(text)
})

describe('the whole', () => {
  const care: Care = { life: 3 * YEAR, replaceAfter: 3 * YEAR, replaceBy: null, reasons: [{ code: 'SERVICE_LIFE', life: 3 * YEAR, chosen: false }], inspect: { first: 1, every: 6, reasons: ['indoors'] } }

  test('says by when, and asks for the day it was made where that is missing', () => {
    expect(careSentences(care).replace).toMatch(/3 years after it was made; enter the date/)
    expect(careSentences({ ...care, replaceBy: '2029-03-21' }).replace).toBe('Replace it by 21 March 2029, 3 years after it was made.')
    expect(careSentences({ ...care, replaceAfter: null }).replace).toBe('When to replace it cannot be said.')
  })

  test('says when to look, and for what reasons', () => {
    expect(careSentences(care).inspect).toContain('after the first month, when the knots have settled, then every 6 months, for it hangs dry under a roof')
    expect(careSentences({ ...care, inspect: { first: 1, every: 1, reasons: ['outdoors', 'juteDamp'] } }).inspect).toContain('then every month, for it hangs outdoors, and jute rots where it stays damp;')
  })

  test('is clean for hangers of all kinds', () => {
    const texts = Array.from({ length: 60 }, (_, i) => careSentences(checkOf({ ...randomPatch(i + 60), 'make.date': '2027-10-31' }).care)).flatMap(({ replace, reasons, inspect }) => [replace, ...reasons, inspect])
    expect([...new Set(texts)].filter((text) => sentenceFaultsOf(text).length > 0)).toEqual([])
  })
})
