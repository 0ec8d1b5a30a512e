import type { NamedEntry } from './catalogueNames'
import { editDistance } from './editDistance'
import { searchCatalogue, TRADE_NAMES } from './searchCatalogue'

const MOST = 5
/** Words of fewer letters are near to too many others. */
const LEAST_LETTERS = 4

const wordsOf = (text: string): readonly string[] => text.toLowerCase().split(/[^\p{L}’-]+/u).filter((word) => word.length >= LEAST_LETTERS)

/**
 * Words that find something where `word` found nothing: names spelt nearly like the whole of it,
 * then those of its own words that do, then those spelt nearly like one of them, nearest first;
 * five at most, perhaps none.
 */
export function suggestWords(entries: readonly NamedEntry[], word: string): readonly string[] {
  const known = [...new Set(entries.flatMap(({ name, subjectName }) => wordsOf(`${name} ${subjectName}`)).concat(TRADE_NAMES))]
  const near = (typed: string): readonly string[] => known
    .map((name) => ({ name, distance: editDistance(typed, name) }))
    .filter(({ distance }) => distance <= Math.floor(typed.length / 3))
    .sort((a, b) => a.distance - b.distance || a.name.localeCompare(b.name, 'en'))
    .map(({ name }) => name)
  const asked = wordsOf(word)
  const suggested = new Set([...near(word.trim().toLowerCase()), ...asked, ...asked.flatMap(near)])
  return [...suggested].filter((name) => searchCatalogue(entries, name).length > 0).slice(0, MOST)
}
