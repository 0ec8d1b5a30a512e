/** The catalogue of values. `values` below are figures with their basis. */
export const CATALOGUE = {
  title: 'Catalogue',
  subjects: 'Subjects',
  list: 'Values found',
  about: 'Every figure the check reckons with, how it is known, and where it was read.',
  marks: 'What the marks mean',
  source: 'Source: ',

  find: 'Find',
  findExample: 'cotton, lark’s head, soaked, oak…',
  showAll: 'Show all',
  searchedToo: (names: readonly string[]) => `Searched too: ${names.join(', ')}`,
  all: (count: number) => (count === 1 ? `${count} value` : `${count} values`),
  some: (found: number, all: number) => (all === 1 ? `${found} of ${all} value` : `${found} of ${all} values`),
  /** How the values counted are known, as “1 published”. */
  ofBasis: (count: number, basis: string) => `${count} ${basis}`,
  countByBasis: (count: string, byBasis: readonly string[]) => `${count}: ${byBasis.join(', ')}`,

  nothingButNear: (word: string) => `The catalogue has nothing under “${word}”. Did you mean one of these?`,
  nothing: (word: string) => `The catalogue has nothing under “${word}”. Words that find something:`,
  words: 'Words to try',
  examples: ['cotton', 'terracotta', 'peat', 'lark’s head', 'soaked', 'wood screw', 'from memory'],
  hint: 'Search for a material, a knot, a wood, a size of rope or a publication; the trade’s other names are known too.',
} as const
