import type { Value } from '../catalogue/basis'
import { readCurve } from '../catalogue/readCurve'
import { CLEAR_WOOD_DIVISOR, LOWER_TAIL, MOISTURE_OF_TABLES, SLOPE_OF_GRAIN, WOOD_SCATTER } from '../catalogue/sticks'
import { PERMANENT_IN_TIMBER, TIMBER_DURATION, TIMBER_DURATION_1947 } from '../catalogue/timber'
import type { Wood } from '../catalogue/woods'
import { pascals, type Pascals, type Seconds } from '../quantity/si'

/**
 * Timber's strength left under a load lasting t, s: (18.3 + 108.4 t^-0.0464) / 100, at most 1 (Madison
 * curve). Under ten years:
 * @example madisonShare(3.156e8) // 0.620
 */
export const madisonShare = (time: number): number => Math.min(1, TIMBER_DURATION.a + TIMBER_DURATION.b * time ** -TIMBER_DURATION.n)

/**
 * The same by the older straight line, (90.4 - 6.3 lg t) / 100, t in hours, at most 1. Under ten years:
 * @example share1947(seconds(3.156e8)) // 0.593
 */
export const share1947 = (time: Seconds): number => Math.min(1, TIMBER_DURATION_1947.a - TIMBER_DURATION_1947.b * Math.log10(time / 3600))

/**
 * A strength or stiffness of clear wood at another moisture than the 12 % of the tables:
 * P12 (P12 / Pg)^((12 - M) / (Mp - 12)), that of green wood from Mp on (USDA Wood Handbook, eq. 5-3;
 * not for tension across the grain). `moisture` M and `from` Mp as shares.
 * @example moistureAdjusted(pascals(106e6), pascals(66e6), 0.18, 0.24) / 1e6 // 83.64
 */
export function moistureAdjusted(dry: Pascals, green: Pascals, moisture: number, from: number): Pascals {
  if (moisture >= from) return green
  const power = (MOISTURE_OF_TABLES.value - moisture) / (from - MOISTURE_OF_TABLES.value)
  return pascals(dry * (dry / green) ** power)
}

/**
 * The 5 % value under a mean: 1 - 1.645 v, v the coefficient of variation.
 * @example lowerTail(0.16) // 0.737
 */
export const lowerTail = (variation: number): number => 1 - LOWER_TAIL.value * variation

/**
 * Bending stress that a clear, straight stick may bear for good: mean modulus of rupture x 5 % value x
 * 0.9 for a permanent load / the divisor of clear wood, which holds ten years and the safety (ASTM
 * D245). With a modulus of rupture of 114 MPa:
 * @example permissibleBending('hardwood', { value: 114e6, unit: 'Pa', basis: 'computed', source: '' }) / 1e6 // 32.87
 */
export const permissibleBending = (kind: Wood['kind'], rupture: Value): Pascals =>
  pascals((rupture.value * lowerTail(WOOD_SCATTER.rupture.value) * PERMANENT_IN_TIMBER.value) / CLEAR_WOOD_DIVISOR[kind].value)

/**
 * Bending strength left where the grain runs out, by its slope (rise over length); null beyond 1 in 5.
 * @example slopeShare(0.0625) // 0.900
 */
export const slopeShare = (slope: number): number | null => readCurve([[0, 1], ...SLOPE_OF_GRAIN.points], slope)
