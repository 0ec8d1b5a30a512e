import { describe, expect, test } from 'vitest'
import { catalogueEntries } from '../../../src/catalogue/entries'
import { nameEntry } from '../../../src/words/catalogueNames'
import { editDistance } from '../../../src/words/editDistance'
import { otherNames, searchCatalogue } from '../../../src/words/searchCatalogue'
import { suggestWords } from '../../../src/words/suggestWords'

const named = catalogueEntries().map(nameEntry)

describe('how near two words are', () => {
  test.each([
    ['hemp', 'hemp', 0], ['hemp', 'hemps', 1], ['hemp', 'emp', 1], ['hemp', 'hump', 1], ['hemp', 'hmep', 1],
    ['jute', 'flute', 2], ['', 'flax', 4], ['kitten', 'sitting', 3],
  ])('%s and %s: %i', (from, to, distance) => {
    expect(editDistance(from, to)).toBe(distance)
    expect(editDistance(to, from)).toBe(distance)
  })
})

describe('words to try where nothing was found', () => {
  test.each([['coton', 'cotton'], ['perllite', 'perlite'], ['polyestre', 'polyester'], ['teracotta', 'terracotta'], ['girth hich', 'girth hitch'], ['zeppelin jute', 'jute']])('%s: %s', (word, near) => {
    expect(searchCatalogue(named, word)).toEqual([])
    expect(suggestWords(named, word)).toContain(near)
  })

  test('each of them finds something, and there are five at most', () => {
    for (const word of ['brich', 'kont', 'sand wich', 'roop']) {
      const suggested = suggestWords(named, word)
      expect(suggested.length).toBeLessThanOrEqual(5)
      for (const name of suggested) expect(searchCatalogue(named, name).length).toBeGreaterThan(0)
    }
  })

  test('nothing near is nothing suggested', () => {
    expect(suggestWords(named, 'zeppelin')).toEqual([])
    expect(suggestWords(named, '[.*')).toEqual([])
  })
})

describe('several words', () => {
  const find = (word: string) => searchCatalogue(named, word).map(({ id }) => id)

  test('where the phrase is nowhere, each word must be found', () => {
    expect(find('peat dry')).toContain('pottingMixes.POTTING_MIXES.peat.dry')
    expect(find('peat dry')).not.toContain('pottingMixes.POTTING_MIXES.pumice.dry')
    expect(find('flax wet')).toContain('cords.FIBRE_PROPERTIES.linen.wet')
    expect(find('flax zeppelin')).toEqual([])
    // Inside a longer word it would be chance.
    expect(find('eat dry')).toEqual([])
  })

  test('where the phrase is somewhere, only it is found', () => {
    for (const { name, source, subjectName, basis } of searchCatalogue(named, 'gathering knot')) {
      expect([name, source, subjectName, basis].join(' ').toLowerCase()).toMatch(/gathering knot|wrap/)
    }
  })
})

test('the trade’s other names, without the one that was asked for', () => {
  expect(otherNames('Girth Hitch')).toEqual(expect.arrayContaining(['lark’s head', 'cow hitch']))
  expect(otherNames('girth hitch')).not.toContain('girth hitch')
  expect(otherNames('zeppelin')).toEqual([])
})
