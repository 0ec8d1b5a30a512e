import { range, value, type Range, type Value } from './basis'

const HANDBOOK = 'Plymouth Cordage 1946 and others, by way of Day 1970 and Dent (USDA and Minnesota Extension 1964): natural rope of 10 to 20 mm, no scatter given'
const INSTITUTE = 'Cordage Institute, as quoted by a sailing magazine (Practical Sailor)'
const SYNTHETIC = 'rope maker’s tests in synthetic line (Knots in Use, 4th ed., p. 9)'

const published = (x: number, source: string): Value => value(x, '1', 'published', source)
const handbook = (x: number): Value => published(x, HANDBOOK)
const synthetic = (x: number): Value => published(x, SYNTHETIC)
const institute = (low: number, high: number): Range => range(low, (low + high) / 2, high, '1', 'published', `${INSTITUTE}; likely: the middle`)

/**
 * Strength of knotted rope over that of the same rope unknotted, by who tested it. An efficiency
 * belongs to one knot in one kind and size of rope (Turner and van de Griend, History and Science of
 * Knots, p. 187), so the columns are kept apart. Hitches are rated per leg.
 */
export const KNOT_EFFICIENCIES = {
  overhand: { handbook: handbook(0.45), slick: published(0.35, 'polyester and nylon, down to (siranah.de, sail014c)') },
  square: { handbook: handbook(0.45), institute: institute(0.43, 0.47), synthetic: synthetic(0.5) },
  figureEight: { handbook: handbook(0.48) },
  figureEightLoop: { synthetic: synthetic(0.72), vendor: published(0.65, 'rope vendor: about 35 % lost (ravenox.com)') },
  bowline: { handbook: handbook(0.6), institute: institute(0.67, 0.75), synthetic: synthetic(0.7) },
  twoHalfHitches: { handbook: handbook(0.75), onRing16: institute(0.6, 0.7), onPost102: institute(0.65, 0.75) },
  anchorBend: { handbook: handbook(0.7), onRing16: institute(0.55, 0.65), onPost102: institute(0.8, 0.9) },
  cloveHitch: { handbook: handbook(0.75) },
  sheetBend: { institute: institute(0.48, 0.58) },
  fishermansKnot: { institute: institute(0.5, 0.58) },
  carrickBend: { institute: institute(0.55, 0.6) },
  timberHitch: { handbook: handbook(0.7) },
  sheepshank: { handbook: handbook(0.45) },
  eyeSplice: { handbook: handbook(0.95) },
  shortSplice: { handbook: handbook(0.9) },
  larksHead: {
    onThinBar: published(0.77, '3 mm spliced sling of slippery high-strength fibre on a tight carabiner, not natural fibre (hwstock.org)'),
    onThickBar: published(1.04, '3 mm spliced sling of slippery high-strength fibre on a bar of 44 mm and more, mean of 3: no loss (hwstock.org)'),
    slingToSling: published(0.4, 'sewn climbing slings, worst case, 22 kN down to 8.8 kN (climbing magazine’s newswire)'),
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Value | Range>>>>

export type KnotCode = keyof typeof KNOT_EFFICIENCIES
