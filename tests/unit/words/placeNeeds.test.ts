import { describe, expect, test } from 'vitest'
import { beneathChoices } from '../../../src/advice/beneathChoices'
import { loadedFor } from '../../../src/advice/loadedHanger'
import { answerPlaceNeeds, type PlaceNeeds } from '../../../src/advice/placeNeeds'
import { DEMOS } from '../../../src/hanger/demos'
import { parseDocument } from '../../../src/hanger/parse'
import type { HangerDocument } from '../../../src/hanger/document'
import { POUND, STANDARD_GRAVITY } from '../../../src/quantity/si'
import { askCustomerText, CUSTOMER_QUESTIONS, TOLD_TEXT } from '../../../src/words/askCustomer'
import { beneathTexts } from '../../../src/words/beneath'
import { fixingText, hangsText, howKnownText, noFixingText, NO_WEIGHT_TEXT, numberAndDepthText, packetTexts, ratingText, refusedText, usedText } from '../../../src/words/placeNeeds'
import { documentOf, ORDINARY } from '../hanger/hangerOf'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

const DOCUMENTS: readonly HangerDocument[] = [
  documentOf(ORDINARY), documentOf({ ...ORDINARY, 'pot.have': 'no' }), documentOf({ ...ORDINARY, 'weighed.mass': '60 kg' }), documentOf({ ...ORDINARY, 'place.support': 'wallHook', 'weighed.mass': '14 kg' }),
  documentOf({ ...ORDINARY, 'place.known': 'told', 'place.beneath': 'people', 'place.support': 'swingArm' }),
  ...DEMOS.flatMap(({ text }) => { const parsed = parseDocument(text); return parsed.ok ? [parsed.document] : [] }),
]
const ALL: readonly PlaceNeeds[] = DOCUMENTS.map((document) => {
  const outcome = answerPlaceNeeds(document)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome))
  return outcome.needs
})
const fixings = ALL.flatMap(({ needs }) => needs.flatMap((n) => n.fixings))

describe('words for what the place needs', () => {
  test('read cleanly for every fixing found', () => {
    const found = fixings.flatMap((f) => (f.found ? [f] : []))
    expect(found.length).toBeGreaterThan(50)
    expect(found.flatMap((f) => [fixingText(f), numberAndDepthText(f), howKnownText(f), usedText(f) ?? '']).flatMap(faultsOf)).toEqual([])
  })
  test('read as sentences where none will do, where it is refused, and of what hangs', () => {
    const none = fixings.flatMap((f) => (f.found ? [] : [noFixingText(f)]))
    expect(none.length).toBeGreaterThan(5)
    const refused = ALL.flatMap(({ needs }) => needs.flatMap((n) => refusedText(n) ?? []))
    expect([...none, ...refused, ...ALL.map(hangsText), NO_WEIGHT_TEXT, TOLD_TEXT].flatMap(sentenceFaultsOf)).toEqual([])
  })
  test('say what a rating must reach in kg, lb and N, none of them too little', () => {
    for (const force of [9.80665, 9.9, 71.2, 333.3, 974]) {
      const [, kg, lb, n] = /^(\d+) kg \((\d+) lb, (\d+) N\)$/.exec(ratingText(force)) ?? []
      expect(Number(kg) * STANDARD_GRAVITY).toBeGreaterThanOrEqual(force - 1e-6)
      expect(Number(lb) * POUND * STANDARD_GRAVITY).toBeGreaterThanOrEqual(force - 1e-6)
      expect(Number(n)).toBeGreaterThanOrEqual(force - 1e-6)
    }
  })
  test('tell the way along the wall only of a wall', () => {
    for (const { needs } of ALL) {
      for (const { place, rating } of needs) {
        if (rating !== null) expect(packetTexts(rating).some((line) => line.startsWith('Along the wall')), place).toBe(place.endsWith('Wall') || place === 'studInWall')
      }
    }
  })
  test('five answers to what is beneath, each in whole sentences', () => {
    const loaded = loadedFor(documentOf(ORDINARY))
    if (!loaded.ok) throw new Error('not loaded')
    expect(beneathChoices(loaded.loaded).flatMap(beneathTexts).flatMap(sentenceFaultsOf)).toEqual([])
  })
})

describe('the text to the customer', () => {
  test.each(ALL.map((needs, i) => [i, needs] as const))('%i: names the hanger, its weight, five questions and what it would need', (_, needs) => {
    const text = askCustomerText('Fern “two”', needs)
    expect(text).toContain('Fern “two”')
    expect(text.match(/^\d\. /gm)).toEqual(['1. ', '2. ', '3. ', '4. ', '5. '])
    expect(text).toContain(' kg (')
    expect(text.split('\n').map((line) => line.trim()).flatMap(faultsOf)).toEqual([])
  })
  test('tells what it needs in a joist as the table does', () => {
    const [needs] = ALL
    const eye = needs?.needs[0]?.fixings[0]
    if (needs === undefined || eye === undefined || !eye.found) throw new Error('no eye')
    expect(askCustomerText('', needs)).toContain(fixingText(eye))
  })
  test('each question says where its answer is entered, and how it counts as told', () => {
    expect(CUSTOMER_QUESTIONS.flatMap(({ asks, enter }) => [...(/^[A-Z].*[?]$/.test(asks) ? [] : [asks]), ...sentenceFaultsOf(enter)])).toEqual([])
    expect(TOLD_TEXT).toContain('told by the customer')
  })
})
