import { describe, expect, test } from 'vitest'
import { CASE_NAMES, CASES, CAUTION_TEXTS, FIELD_PATHS, FIELD_WORDS, LINK_NAMES, LINK_ROLES, LINKS, PART_NAMES, REMEDY_TEXTS, SIDE_NAMES, TERM_NAMES, verdictSentence, type Verdict } from '#core'
import { REMEDY_CODES } from '../../../src/advice/remedyKinds'
import { CAUTIONS } from '../../../src/check/cautions'
import { PARTS } from '../../../src/check/linkResult'
import { TERM_CODES } from '../../../src/check/termCodes'
import { checkOf, ORDINARY } from '../hanger/hangerOf'
import { randomPatch } from '../check/randomPatch'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

describe.each<[string, readonly string[], Readonly<Record<string, string>>]>([
  ['links', LINKS, LINK_NAMES], ['roles of links', LINKS, LINK_ROLES], ['parts', PARTS, PART_NAMES], ['situations', CASES, CASE_NAMES],
  ['lines of a sum', TERM_CODES, TERM_NAMES], ['remedies', REMEDY_CODES, REMEDY_TEXTS], ['sides', ['hanger', 'place'], SIDE_NAMES],
])('%s', (_, codes, names) => {
  test('are all named, none twice over, and nothing else is', () => {
    expect(Object.keys(names).sort()).toEqual([...codes].sort())
    expect(Object.values(names).filter((name) => name.trim().length < 3)).toEqual([])
  })

  test('in clean words', () => {
    for (const name of Object.values(names)) expect(faultsOf(name), name).toEqual([])
  })
})

test('names that stand beside each other differ', () => {
  for (const names of [LINK_NAMES, PART_NAMES, CASE_NAMES, REMEDY_TEXTS]) expect(new Set(Object.values(names)).size).toBe(Object.keys(names).length)
})

test('cautions are whole sentences, one for each', () => {
  expect(Object.keys(CAUTION_TEXTS).sort()).toEqual([...CAUTIONS].sort())
  for (const text of Object.values(CAUTION_TEXTS)) expect(sentenceFaultsOf(text), text).toEqual([])
})

describe.each(FIELD_PATHS)('%s', (path) => {
  const { label, help, choices } = FIELD_WORDS[path]

  test('has a label like a label, a help line like a sentence, choices in plain words', () => {
    expect(faultsOf(label), label).toEqual([])
    expect(label).toMatch(/^[A-Z]/)
    expect(sentenceFaultsOf(help), help).toEqual([])
    for (const choice of Object.values(choices)) expect(faultsOf(choice), choice).toEqual([])
    expect(new Set(Object.values(choices)).size).toBe(Object.keys(choices).length)
  })
})

test('labels are told apart', () => {
  const labels = FIELD_PATHS.map((path) => FIELD_WORDS[path].label)
  expect(labels.filter((label, i) => labels.indexOf(label) !== i)).toEqual([])
})

describe('the verdict', () => {
  test.each<[Verdict, Verdict]>([['holds', 'fails'], ['just holds', 'not enough known'], ['not enough known', 'holds'], ['fails', 'just holds']])('hanger %s, place %s: each by its own word', (hanger, place) => {
    const text = verdictSentence({ verdicts: { hanger, place }, links: [] })
    const sentences = text.match(/[^.]+\./g) ?? []
    expect(sentences).toHaveLength(2)
    const word = { holds: 'holds', 'just holds': 'just holds', 'not enough known': 'ot enough is known', fails: 'fails' } as const
    expect(sentences[0]).toContain(word[hanger])
    expect(sentences[1]).toContain(word[place])
  })

  test('of any hanger is said in clean sentences', () => {
    for (const patch of [{}, ORDINARY, { 'pot.have': 'no' }, { 'make.have': 'no' }, ...[11, 12, 13].map(randomPatch)]) {
      for (const sentence of verdictSentence(checkOf(patch)).match(/[^.]+\./g) ?? ['none']) expect(sentenceFaultsOf(sentence.trim()), sentence).toEqual([])
    }
  })
})
