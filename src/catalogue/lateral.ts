import { INCH } from '../quantity/si'
import { value, type Value } from './basis'
import type { Points } from './readCurve'
import type { WithdrawnByAllowable } from './withdrawal'
import type { WoodKind } from './woods'

/** Steps or points that share one unit and one source. */
export interface Curve extends Omit<Value, 'value'> {
  readonly steps: Points
}

const PSI = 6894.757293168361
const HANDBOOK = 'USDA Wood Handbook FPL-GTR-282 (2021)'
/** From the printed constant of p = K D^1.5, N and mm, to SI. */
const PER_MM_1_5 = 1000 ** 1.5

const steps = (unit: string, size: number, source: string, printed: Points): Curve =>
  ({ steps: printed.map(([from, k]): readonly [number, number] => [from, k * size]), unit, basis: 'published', source })
const nails = (printed: Points): Curve => steps('N/m^1.5', PER_MM_1_5, `${HANDBOOK}, p. 8-6: p = K D^1.5 (N, mm)`, printed)
const screws = (printed: Points): Curve => steps('Pa', 1e6, `${HANDBOOK}, p. 8-11: p = K D^2 (N, mm)`, printed)
const lags = (printed: Points): Curve => steps('Pa', 1e6, `${HANDBOOK}, p. 8-13: p = K D^2 (N, mm)`, printed)

/**
 * Load across a nail, screw or lag at its proportional limit (a nail has slipped 0.38 mm), side grain:
 * K of p = K D^1.5 for nails, p = K D^2 for the others, by the gravity from which it counts.
 */
export const LATERAL_LIMIT: Readonly<Record<WithdrawnByAllowable, Readonly<Record<WoodKind, Curve>>>> = {
  smoothNail: { softwood: nails([[0.29, 50.04], [0.43, 62.55], [0.48, 76.45]]), hardwood: nails([[0.33, 50.04], [0.48, 69.5], [0.57, 94.52]]) },
  woodScrew: { softwood: screws([[0.29, 23.17], [0.43, 29.79], [0.48, 36.4]]), hardwood: screws([[0.33, 23.17], [0.48, 31.99], [0.57, 44.13]]) },
  lagScrew: { softwood: lags([[0.29, 23.3], [0.43, 26.34], [0.48, 29.51]]), hardwood: lags([[0.33, 26.34], [0.48, 29.51], [0.57, 34.13]]) },
}

/** Power of the diameter in the same. */
export const LATERAL_POWER: Readonly<Record<WithdrawnByAllowable, Value>> = {
  smoothNail: value(1.5, '1', 'published', `${HANDBOOK}, p. 8-6`),
  woodScrew: value(2, '1', 'published', `${HANDBOOK}, p. 8-11`),
  lagScrew: value(2, '1', 'published', `${HANDBOOK}, p. 8-13`),
}

/** Ultimate across over that limit, reached only after much slip. */
export const LATERAL_ULTIMATE_OVER_LIMIT: Readonly<Record<WoodKind, Value>> = {
  softwood: value(3.5, '1', 'published', `${HANDBOOK}, p. 8-6: nails`),
  hardwood: value(7, '1', 'published', `${HANDBOOK}, p. 8-6: nails`),
}

/** Thread that a wood screw needs in the wood for the same, as a multiple of its diameter. */
export const SCREW_LATERAL_PENETRATION: Value = value(7, '1', 'published', `${HANDBOOK}, p. 8-11`)

/** A lag screw loaded across the grain over along it, by its diameter in m. */
export const LAG_ACROSS_GRAIN: Curve = {
  steps: [[0.0048, 1], [0.0064, 0.97], [0.0079, 0.85], [0.0095, 0.76], [0.0127, 0.65]], unit: '1', basis: 'published', source: `${HANDBOOK}, table 8-11`,
}

/** Pressure at which a thin dowel crushes its way into wood: Fe = c G^n, Pa. */
export const DOWEL_BEARING: Value = value(114.5e6, 'Pa', 'published', `${HANDBOOK}, eq. 8-3: Fe = 114.5 G^1.84 (MPa); AWC National Design Specification, 16 600 G^1.84 psi below 1/4 in`)
export const DOWEL_BEARING_POWER: Value = value(1.84, '1', 'published', `${HANDBOOK}, eq. 8-3`)

/** Pressure at which a thin steel plate yields round a dowel, Pa. */
export const STEEL_BEARING: Value = value(61850 * PSI, 'Pa', 'from memory', 'AWC National Design Specification, steel side plates to ASTM A653 grade 33: 61 850 psi')

/** Bending yield stress by diameter in m up to which it holds, Pa. Screws as nails of their root diameter. */
export const BENDING_YIELD: Readonly<Record<'nail' | 'lag', Curve>> = {
  nail: steps('Pa', 1000 * PSI, `${HANDBOOK}, chapter 8: 100, 90 and 80 ksi`, [[0.0036, 100], [0.0045, 90], [0.006, 80]]),
  lag: { steps: [[6.35e-3, 70e3 * PSI], [20e-3, 45e3 * PSI]], unit: 'Pa', basis: 'from memory', source: 'AWC National Design Specification, lag screws: 70 ksi at 1/4 in, 45 ksi from 3/8 in' },
}

const REDUCTION = 'AWC National Design Specification, reduction term of the yield limit equations, dowels below 1/4 in'
/** What the yield of a dowel below 1/4 in is divided by: `thin` up to a diameter, above it slope x D + offset. */
export const YIELD_REDUCTION = {
  thin: value(2.2, '1', 'published', REDUCTION),
  thinUpTo: value(0.17 * INCH, 'm', 'published', REDUCTION),
  slope: value(10 / INCH, '1/m', 'published', `${REDUCTION}: 10 D + 0.5, D in inches`),
  offset: value(0.5, '1', 'published', `${REDUCTION}: 10 D + 0.5, D in inches`),
  upTo: value(0.25 * INCH, 'm', 'published', REDUCTION),
} as const satisfies Readonly<Record<string, Value>>
