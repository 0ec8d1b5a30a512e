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
  ['plasterboard', 'drywall', 'gypsum board'],
  ['plugs', 'plug', 'wall plug', 'dowel plug', 'anchor'],
  ['aerated block', 'aircrete', 'aerated concrete', 'aac'],
  ['lag screw', 'coach screw', 'lag bolt'],
  ['pulled out', 'pull-out', 'withdrawal', 'pulled straight out'],
  ['joist', 'timber', 'beam', 'stud'],
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

type Holds = (text: string, words: string) => boolean

/** Whether the words stand in the text where no letter is before them, and none after if `whole`. */
function holdsAtWord(text: string, words: string, whole: boolean): boolean {
  for (let at = text.indexOf(words); at >= 0; at = text.indexOf(words, at + 1)) {
    if (!isLetter(text, at - 1) && !(whole && isLetter(text, at + words.length))) return true
  }
  return false
}

const holdsAnywhere: Holds = (text, words) => text.includes(words)
const holdsStart: Holds = (text, words) => holdsAtWord(text, words, false)
const holdsWhole: Holds = (text, words) => holdsAtWord(text, words, true)

/** All names that the trade uses for things of the catalogue. */
export const TRADE_NAMES: readonly string[] = SYNONYMS.flat()

/** The trade's other names for what is asked, which are searched too; none for most words. */
export function otherNames(word: string): readonly string[] {
  const wanted = plain(word)
  return SYNONYMS.filter((_, i) => GROUPS[i]?.includes(wanted)).flat().filter((name) => plain(name) !== wanted)
}

/** Whether a text holds the words in the given way, or one of the trade's other names for them as whole words. */
function finder(wanted: string, holds: Holds): (text: string) => boolean {
  const others = otherNames(wanted).map(plain)
  // One or two letters would be found in any text.
  const found = wanted.length > 2 || wanted === '' ? holds : holdsWhole
  return (text) => found(text, wanted) || others.some((other) => holdsWhole(text, other))
}

/**
 * The entries in whose name, subject, basis or source a word (or phrase) is found, whatever its
 * case, or one of the trade's other names for it as whole words. Where the phrase as it stands is
 * nowhere found, those in which each of its words begins a word. An empty word finds all.
 */
export function searchCatalogue<Entry extends NamedEntry>(entries: readonly Entry[], word: string): readonly Entry[] {
  const wanted = plain(word)
  const holding = (finders: readonly ((text: string) => boolean)[]): readonly Entry[] => entries.filter(({ name, subjectName, basis, source }) => {
    const texts = [name, subjectName, basis, source].map(plain)
    return finders.every((isIn) => texts.some(isIn))
  })
  const asPhrase = holding([finder(wanted, holdsAnywhere)])
  return asPhrase.length > 0 ? asPhrase : holding(wanted.split(' ').map((word) => finder(word, holdsStart)))
}
