import { value, type Value } from './basis'

export const EXPOSURES = ['indoors', 'steamy', 'outdoors'] as const
export type Exposure = (typeof EXPOSURES)[number]

const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)

/** Strength left at the end of the service life. */
export const AGEING: Readonly<Record<Exposure, { readonly natural: Value; readonly synthetic: Value }>> = {
  indoors: { natural: memory(0.8, 'indoors and dry; no published loss rate was found'), synthetic: memory(0.8, 'indoors and dry; no published loss rate was found') },
  steamy: { natural: memory(0.7, 'bathrooms and kitchens; no published loss rate was found'), synthetic: memory(0.7, 'bathrooms and kitchens; no published loss rate was found') },
  outdoors: {
    natural: value(0.3, '1', 'published', 'undyed cotton and other fabrics outdoors for 120 days lost 29 to 87 % (Int. J. Polym. Mater. 9:45, 1981); one season only'),
    synthetic: value(0.7, '1', 'published', 'polyester webbing in the sun about -30 %, mostly in the first 12 months (web sling association 1981, 1997 to 2004); per year'),
  },
}

/** Further loss at a gathering knot under a drain hole, kept damp by every watering. */
export const UNDER_DRAIN_HOLE: Value = memory(0.7, 'knot kept damp under the hole; jute in damp soil loses all strength within 2.5 months (jute geotextile study)')
