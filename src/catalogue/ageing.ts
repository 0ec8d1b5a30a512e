import { value, type Value } from './basis'
import type { Fibre } from './cords'
import { MONTH, YEAR } from './duration'

export const EXPOSURES = ['indoors', 'steamy', 'outdoors'] as const
export type Exposure = (typeof EXPOSURES)[number]

const memory = (x: number, source: string): Value => value(x, '1', 'from memory', source)
const WEBBING = 'webbing in the sun (web sling association, tests of 1981 and of 1997 to 2004)'

/** Strength left at the end of the service life under a roof. */
export const INDOORS: Readonly<Record<Exclude<Exposure, 'outdoors'>, Value>> = {
  indoors: memory(0.8, 'indoors and dry; no published loss rate was found'),
  steamy: memory(0.7, 'bathrooms and kitchens; no published loss rate was found'),
}

/** How cord of a fibre fares outdoors: `season` lasts one, `yearly` loses a known share each year, `unknown` is never counted on. */
export type Weathering = 'season' | 'yearly' | 'unknown'

/** Of polypropylene only that it turns brittle in weeks where it is not stabilised is published, and no maker can see whether it is; of viscose nothing was found. */
export const WEATHERING: Readonly<Record<Fibre, Weathering>> = {
  cotton: 'season', linen: 'season', hemp: 'season', jute: 'season', manila: 'season', sisal: 'season',
  polyester: 'yearly', nylon: 'yearly', polypropylene: 'unknown', viscose: 'unknown', unknown: 'unknown',
}

/** Natural cord outdoors: strength left after one season. */
export const NATURAL_OUTDOORS: Value = memory(0.3, 'a judgement: undyed cotton and other fabrics outdoors for 120 days lost 29 to 87 %, the coarsest cotton least (Int. J. Polym. Mater. 9:45, 1981); one season only')
/** How long natural cord may hang outdoors, s. */
export const SEASON: Value = value(YEAR, 's', 'common practice', 'put out new, taken down before the next year’s growth')

/** Synthetic cord outdoors: strength left after the first year, and of each further year's start. */
export const SYNTHETIC_OUTDOORS: Readonly<Record<'polyester' | 'nylon', { readonly firstYear: Value; readonly furtherYear: Value }>> = {
  polyester: {
    firstYear: value(0.7, '1', 'published', `polyester ${WEBBING}: about 30 % lost, mostly in the first 12 months`),
    furtherYear: value(0.7, '1', 'computed', `polyester ${WEBBING}: level after the first 12 months; as much again taken each year, for cord is thinner`),
  },
  nylon: {
    firstYear: value(0.4, '1', 'published', `nylon ${WEBBING}: 50 to 60 % lost in 36 months; all of the 60 % taken in the first 12, when polyester lost most of its share`),
    furtherYear: value(0.4 ** (1 / 3), '1', 'computed', `nylon ${WEBBING}: 60 % lost in 36 months is 26 % of each year’s start`),
  },
}

/** How long synthetic cord may hang outdoors, s: as long as any test of it ran. */
export const SYNTHETIC_SEASONS: Value = value(36 * MONTH, 's', 'published', `nylon ${WEBBING} ran for 36 months; of longer exposure nothing is known`)

/**
 * Strength left of a cord after a service life, s, in an exposure. Where the loss outdoors is not
 * known it is shown with the mildest that is, polyester's, and never counted as known.
 */
export function strengthAfter(fibre: Fibre, exposure: Exposure, life: number): Value {
  if (exposure !== 'outdoors') return INDOORS[exposure]
  if (WEATHERING[fibre] === 'season') return NATURAL_OUTDOORS
  const { firstYear, furtherYear } = SYNTHETIC_OUTDOORS[fibre === 'nylon' ? 'nylon' : 'polyester']
  return life <= YEAR ? firstYear : { ...furtherYear, value: firstYear.value * furtherYear.value ** (life / YEAR - 1) }
}

/** Further loss at a gathering knot under a drain hole, kept damp by every watering. */
export const UNDER_DRAIN_HOLE: Value = memory(0.7, 'knot kept damp under the hole; jute in damp soil loses all strength within 2.5 months (jute geotextile study)')

/** How long natural cord may hang that is often wet, s. */
export const OFTEN_WET_LIFE: Value = value(YEAR, 's', 'common practice', 'natural cord that is often wet is replaced yearly; no published loss rate was found')

/** Time in which jute that never dries has lost all its strength, s. */
export const JUTE_NEVER_DRY: Value = value(2.5 * MONTH, 's', 'published', 'jute in damp living soil: strength to zero within 2.5 months (jute geotextile study)')
