import { describe, expect, test } from 'vitest'
import { REFUSAL_LIFTED_BY, REFUSED_FIXINGS, REFUSED_SUPPORTS } from '../../../src/catalogue/refusals'
import { SETTLING_QUESTIONS } from '../../../src/catalogue/substrates'
import { REFUSAL_TEXTS, SETTLING_QUESTION_TEXTS } from '../../../src/words/refusals'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

const REFUSALS = [...REFUSED_SUPPORTS, ...REFUSED_FIXINGS]

describe('refusals', () => {
  test('each is in one list and has its words once', () => {
    expect(new Set(REFUSALS).size).toBe(REFUSALS.length)
    expect(Object.keys(REFUSAL_TEXTS).sort()).toEqual([...REFUSALS].sort())
    expect(new Set(Object.values(REFUSAL_TEXTS)).size).toBe(REFUSALS.length)
  })

  test.each(REFUSALS)('%s: a reason and what to do instead, in clean sentences', (code) => {
    const sentences = REFUSAL_TEXTS[code].split(/(?<=\.) /)
    expect(sentences.length).toBeGreaterThanOrEqual(2)
    for (const sentence of sentences) expect(sentenceFaultsOf(sentence)).toEqual([])
  })

  test.each(REFUSALS.filter((code) => REFUSAL_LIFTED_BY[code] === 'ratedForIt' || REFUSAL_LIFTED_BY[code] === 'bracketRated'))('%s says that a rating lifts it', (code) => {
    expect(REFUSAL_TEXTS[code]).toMatch(/unless (they are rated|its packet rates)/)
  })

  test('nothing else promises so', () => {
    for (const code of REFUSALS) if (REFUSAL_LIFTED_BY[code] === null) expect(REFUSAL_TEXTS[code]).not.toMatch(/unless/)
  })
})

test.each(SETTLING_QUESTIONS)('%s is asked as a question', (code) => {
  expect(SETTLING_QUESTION_TEXTS[code]).toMatch(/\?/)
  expect(faultsOf(SETTLING_QUESTION_TEXTS[code]).filter((fault) => !fault.startsWith('marks side by side'))).toEqual([])
})
