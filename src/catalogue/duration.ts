import { value, type Value } from './basis'

/** Length of the reference pull that breaking forces are quoted for, s. */
export const TEST_TIME: Value = value(10, 's', 'from memory', 'a short tensile test')

export const DAY = 86400
export const YEAR = 365.25 * DAY
export const MONTH = YEAR / 12

/** Share of the service life that an ordinary pot spends just watered. */
export const WATERED_SHARE: Value = value(0.3, '1', 'common practice', 'watered weekly, wet for two days')

/** Time under flooded load over the service life, s, with a hole that may clog for a while. */
export const FLOODED_TIME: Value = value(7 * DAY, 's', 'common practice', 'a clogged hole is noticed within a week')

/** Time under flooded load over the service life, s, for a pot from which water cannot run out. */
export const STANDING_WATER_TIME: Value = value(0.25 * YEAR, 's', 'common practice', 'three months in all')

/** Time an accident may go unnoticed at rest, s. */
export const UNNOTICED_TIME: Value = value(DAY, 's', 'common practice', 'a parted strand is seen at the next watering')

/** Duration of a jolt, s. */
export const MOMENT: Value = value(10, 's', 'common practice', 'as long as the reference pull; longer than any jolt')
