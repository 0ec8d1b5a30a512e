import { metres, newtons, pascals, type Metres, type Newtons, type Pascals } from '../quantity/si'
import { plasticMoment } from './wire'

export interface ProjectingPinInput {
  readonly diameter: Metres
  /** From the wood's face to the load; board or plaster over the wood counts as air, m. */
  readonly projection: Metres
  /** Length in the wood, m. */
  readonly depth: Metres
  /** Bending yield stress of the pin, and bearing strength of the wood across it. */
  readonly yieldStress: Pascals
  readonly bearing: Pascals
}

/** Load at yield, how it yields, and the depth in the wood of the bend (or of the turning point). */
export interface ProjectingPin {
  readonly load: Newtons
  readonly mode: 'bends' | 'turnsInWood'
  readonly at: Metres
}

/**
 * A nail or hook standing out of wood, loaded square to it (yield theory of dowels: AWC Technical Report 12,
 * General Dowel Equations, with a gap for the projection and the side member left out). q = F_e D, e projection:
 * - bends: P e + P^2 / (2 q) = M_y, M_y = F_yb D^3 / 6, the hinge P / q deep;
 * - deep in the wood l, a stiff pin turns: P^2 / (4 q) + P (e + l / 2) = q l^2 / 4, about (P / q + l) / 2.
 * The lesser decides. Yield, not a permissible load.
 * @example projectingPin({ diameter: metres(0.00287), projection: metres(0.01), depth: metres(0.05), yieldStress: pascals(690e6), bearing: pascals(23.2e6) }).load // 231.6
 */
export function projectingPin({ diameter, projection: e, depth, yieldStress, bearing }: ProjectingPinInput): ProjectingPin {
  const q = bearing * diameter
  // Written so that neither root is a difference of near equals.
  const moment = plasticMoment(diameter, yieldStress)
  const bends = (2 * moment) / (e + Math.sqrt(e * e + (2 * moment) / q))
  const arm = e + depth / 2
  const turns = depth === 0 ? 0 : (q * depth * depth) / (2 * (arm + Math.sqrt(arm * arm + (depth * depth) / 4)))
  return bends <= turns
    ? { load: newtons(bends), mode: 'bends', at: metres(bends / q) }
    : { load: newtons(turns), mode: 'turnsInWood', at: metres((turns / q + depth) / 2) }
}

/**
 * Bearing strength of wood under a dowel by its specific gravity: c G^n. Coefficient and power are the
 * caller's, with their source.
 * @example dowelBearing(pascals(114.5e6), 1.84, 0.5) / 1e6 // 31.98
 */
export const dowelBearing = (coefficient: Pascals, power: number, gravity: number): Pascals => pascals(coefficient * gravity ** power)
