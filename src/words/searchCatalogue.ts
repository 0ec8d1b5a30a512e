import type { NamedEntry } from './catalogueNames'

/** Names the trade uses for one thing; each is taken for the others. */
const SYNONYMS: readonly (readonly string[])[] = [
  ['cord', 'rope', 'string', 'twine', 'yarn'],
  ['lark’s head', 'larks head', 'girth hitch', 'cow hitch'],
  ['square knot', 'reef knot', 'reef', 'flat knot'],
  ['gathering knot', 'wrapped knot', 'wraps', 'wrap'],
  ['overhand', 'overhand knot', 'thumb knot'],
  ['figure-eight', 'figure eight', 'figure 8', 'figure of eight'],
  ['filler cord', 'filler', 'core cord', 'anchor cord', 'lazy cord'],
  ['sinnet', 'sennit'],
  ['potting mix', 'potting mixes', 'mix', 'growing medium', 'growing media', 'medium', 'substrate', 'soil', 'potting soil'],
  ['coir', 'coco', 'coconut'],
  ['expanded clay', 'clay pebbles', 'leca'],
  ['terracotta', 'clay', 'earthenware'],
  ['stoneware', 'ceramic', 'glazed'],
  ['manila', 'abaca'],
  ['linen', 'flax'],
  ['viscose', 'rayon', 'bamboo viscose'],
  ['polypropylene', 'pp'],
  ['polyester', 'pet'],
  ['nylon', 'polyamide', 'pa'],
  ['woods', 'wood', 'timber', 'stick', 'dowel', 'rod', 'branch'],
  ['basswood', 'lime', 'linden'],
  ['breaking force', 'breaking load', 'breaking strength', 'tensile strength', 'mbl'],
  ['tenacity', 'cn/tex'],
  ['strength kept', 'efficiency', 'knot strength'],
  ['friction', 'slip', 'mu'],
  ['reserve', 'reserves', 'safety factor', 'design factor', 'factor of safety'],
  ['modulus of rupture', 'bending strength', 'mor'],
  ['modulus of elasticity', 'moe', 'young’s modulus'],
  ['specific gravity', 'gravity', 'sg'],
  ['outdoors', 'weather', 'sun', 'uv'],
  ['soaked', 'wet'],
  ['standing in water', 'flooded', 'waterlogged'],
  ['stretch', 'elongation', 'strain'],
  ['grams per metre', 'mass per metre', 'linear density', 'tex'],
]

const plain = (text: string): string => text.normalize('NFKC').toLowerCase().replaceAll(/[’‘`´]/g, '\'').replaceAll(/\s+/g, ' ').trim()
const GROUPS = SYNONYMS.map((group) => group.map(plain))

const isLetter = (text: string, at: number): boolean => /[\p{L}\p{N}]/u.test(text.charAt(at))

/** Whether the words stand in the text, not inside a longer word. */
function holdsWhole(text: string, words: string): boolean {
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    if (!isLetter(text, at - 1) && !isLetter(text, at + words.length)) return true
  }
  return false
}

/**
 * The entries in whose name, subject, basis or source a word (or phrase) is found, whatever its
 * case, or one of the trade's other names for it as whole words. An empty word finds all.
 */
export function searchCatalogue<Entry extends NamedEntry>(entries: readonly Entry[], word: string): readonly Entry[] {
  const wanted = plain(word)
  const others = GROUPS.filter((group) => group.includes(wanted)).flat()
  // One or two letters would be found inside any word.
  const found = wanted.length > 2 || wanted === '' ? (text: string) => text.includes(wanted) : (text: string) => holdsWhole(text, wanted)
  return entries.filter(({ name, subjectName, basis, source }) =>
    [name, subjectName, basis, source].map(plain).some((text) => found(text) || others.some((other) => holdsWhole(text, other))))
}
