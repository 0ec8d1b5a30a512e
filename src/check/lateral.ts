import { BENDING_YIELD, DOWEL_BEARING, DOWEL_BEARING_POWER, LAG_ACROSS_GRAIN, LATERAL_LIMIT, LATERAL_POWER, YIELD_REDUCTION, type Curve } from '../catalogue/lateral'
import { readCurve, stepFrom, stepUpTo } from '../catalogue/readCurve'
import type { WithdrawnByAllowable } from '../catalogue/withdrawal'
import type { WoodKind } from '../catalogue/woods'
import { newtons, pascals, type Metres, type Newtons, type Pascals } from '../quantity/si'
import { dowelBearing } from '../statics/projectingPin'

/**
 * Load across a fastening at its proportional limit, in side grain: K D^1.5 for nails, K D^2 for wood
 * screws and lags (USDA Wood Handbook, chapter 8); null for wood lighter than its table. `gravity` at
 * 12 % moisture; a lag is taken across the grain, the weaker way, and is null outside that table.
 * @example lateralLimit('woodScrew', 'softwood', 0.42, metres(0.00417)) // 402.9
 */
export function lateralLimit(kind: WithdrawnByAllowable, wood: WoodKind, gravity: number, diameter: Metres): Newtons | null {
  const constant = stepFrom(LATERAL_LIMIT[kind][wood].steps, gravity)
  const across = kind === 'lagScrew' ? readCurve(LAG_ACROSS_GRAIN.steps, diameter) : 1
  return constant === null || across === null ? null : newtons(constant * diameter ** LATERAL_POWER[kind].value * across)
}

/**
 * Pressure at which a dowel thinner than 1/4 in crushes its way into wood: 114.5 G^1.84 MPa (USDA Wood
 * Handbook, eq. 8-3; the same in the National Design Specification, there with the oven-dry gravity).
 * @example woodBearing(0.5) / 1e6 // 31.98
 */
export const woodBearing = (gravity: number): Pascals => dowelBearing(pascals(DOWEL_BEARING.value), DOWEL_BEARING_POWER.value, gravity)

/**
 * Yield stress in bending of a nail (or of a wood screw, by its root) or a lag; null beyond the table.
 * @example bendingYield('nail', metres(0.00287)) / 1e6 // 689.48
 */
export function bendingYield(kind: keyof typeof BENDING_YIELD, diameter: Metres): Pascals | null {
  const curve: Curve = BENDING_YIELD[kind]
  const found = stepUpTo(curve.steps, diameter)
  return found === null ? null : pascals(found)
}

/**
 * What the yield of a dowel is divided by for an allowable: 2.2 up to 0.17 in, then 10 D + 0.5 (D in
 * inches); null from 1/4 in on, where it depends on the mode (National Design Specification, 12.3.1).
 * @example yieldReduction(metres(0.0048)) // 2.39
 */
export function yieldReduction(diameter: Metres): number | null {
  if (diameter >= YIELD_REDUCTION.upTo.value) return null
  return diameter <= YIELD_REDUCTION.thinUpTo.value ? YIELD_REDUCTION.thin.value : YIELD_REDUCTION.slope.value * diameter + YIELD_REDUCTION.offset.value
}
