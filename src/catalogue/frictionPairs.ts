import { range, value, type Range, type Value } from './basis'
import { FIBRE_PROPERTIES } from './cords'

const LECTURE = 'lecture notes on the friction of textile fibres (scribd 764285656)'
const STEEL = 'notes on the friction of cotton on steel (scribd 767800065)'
const MORTON = 'Morton and Hearle, Physical Properties of Textile Fibres, ch. 25, from memory'
const ENGINEERS = 'engineering handbooks, from memory'

const published = (x: number, source: string): Value => value(x, '1', 'published', source)
const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)
const between = (low: number, high: number, source: string): Range => range(low, (low + high) / 2, high, '1', 'published', `${source}; likely: the middle`)

/**
 * Coefficients of friction. Take a low one where the cord must hold by it and a high one where it
 * makes the tensions of two legs over one ring unequal.
 */
export const FRICTION_PAIRS = {
  cottonOnCotton: { atRest: published(0.51, LECTURE), sliding: published(0.26, LECTURE) },
  nylonOnNylon: { atRest: published(0.47, LECTURE), sliding: published(0.4, LECTURE) },
  polyesterOnPolyester: { atRest: published(0.15, LECTURE), sliding: published(0.12, LECTURE) },
  viscoseOnViscose: { atRest: published(0.35, LECTURE), sliding: published(0.26, LECTURE) },
  rawCottonOnSteel: { sliding: published(0.25, STEEL) },
  scouredCottonOnSteel: { sliding: published(0.7, STEEL) },
  oiledCottonOnSteel: { sliding: between(0.14, 0.35, STEEL) },
  nylonRopeOnPine: { sliding: between(0.28, 0.31, 'one maker’s measurement over a pine roller, formula shown (knot guild’s forum)') },
  cottonYarnOnSteel: { sliding: memory(0.29, MORTON) },
  cottonYarnOnPorcelain: { sliding: memory(0.32, MORTON) },
  cottonYarnOnCeramic: { sliding: FIBRE_PROPERTIES.cotton.onPot },
  hempOnRoughWood: { sliding: memory(0.5, ENGINEERS) },
  hempOnPolishedWood: { sliding: memory(0.33, ENGINEERS) },
  hempOnIron: { sliding: memory(0.25, ENGINEERS) },
} as const satisfies Readonly<Record<string, Readonly<Partial<Record<'atRest' | 'sliding', Value | Range>>>>>

export type FrictionPair = keyof typeof FRICTION_PAIRS
