import { value, type Value } from './basis'
import type { Fibre } from './cords'
import { YEAR } from './duration'

export const EXPOSURES = ['indoors', 'steamy', 'outdoors'] as const
export type Exposure = (typeof EXPOSURES)[number]

const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)

/** Strength left at the end of the service life under a roof. */
export const INDOORS: Readonly<Record<Exclude<Exposure, 'outdoors'>, Value>> = {
  indoors: memory(0.8, 'indoors and dry; no published loss rate was found'),
  steamy: memory(0.7, 'bathrooms and kitchens; no published loss rate was found'),
}

/** Natural cord outdoors: strength left after one season, and how long that is, s. */
export const NATURAL_OUTDOORS: Value = value(0.3, '1', 'published', 'undyed cotton and other fabrics outdoors for 120 days lost 29 to 87 % (Int. J. Polym. Mater. 9:45, 1981); one season only')
export const SEASON = YEAR

/** Polyester outdoors: strength left of each year's start. */
export const POLYESTER_YEAR_OUTDOORS: Value = value(0.7, '1', 'published', 'polyester webbing in the sun about -30 %, mostly in the first 12 months (web sling association 1981, 1997 to 2004); per year')

/** Strength left of a cord after a service life, s, in an exposure. Of synthetics only polyester's loss outdoors is known; the others are shown with its loss and never counted as known. */
export function strengthAfter(natural: boolean, exposure: Exposure, life: number): Value {
  if (exposure !== 'outdoors') return INDOORS[exposure]
  if (natural) return NATURAL_OUTDOORS
  return { ...POLYESTER_YEAR_OUTDOORS, value: POLYESTER_YEAR_OUTDOORS.value ** Math.max(1, life / YEAR) }
}

/** Whether the loss outdoors is known at all. */
export const outdoorLossKnown = (fibre: Fibre, natural: boolean): boolean => natural || fibre === 'polyester'

/** Further loss at a gathering knot under a drain hole, kept damp by every watering. */
export const UNDER_DRAIN_HOLE: Value = memory(0.7, 'knot kept damp under the hole; jute in damp soil loses all strength within 2.5 months (jute geotextile study)')
