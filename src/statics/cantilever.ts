import { metres, newtons, type Metres, type Newtons, type Pascals } from '../quantity/si'
import { fibreStress, shearStress, type Section } from './section'

/** An arm fixed at the wall, a load at its free end. */
export interface CantileverInput {
  readonly load: Newtons
  /** From where it is held to the load, square to the load, m. */
  readonly reach: Metres
  readonly section: Section
}

/** Bending moment where it is held, N m, and the stresses there. */
export interface Cantilever {
  readonly moment: number
  readonly bending: Pascals
  readonly shear: Pascals
}

/**
 * M = W a, bending M / Z, shear W over the area by the section's peak (textbook mechanics).
 * @example cantilever({ load: newtons(90), reach: metres(0.3), section: { area: 0.0004, modulus: 1e-6, inertia: 1e-8, shearPeak: 1.5 } }).bending // 27e6
 */
export function cantilever({ load, reach, section }: CantileverInput): Cantilever {
  const moment = load * reach
  return { moment, bending: fibreStress(section, moment, newtons(0)), shear: shearStress(section, load) }
}

/**
 * Droop of its end, m: W a^3 / (3 E I), bending only.
 * @example cantileverDroop(newtons(90), metres(0.3), pascals(10e9), 27e-9) // 0.003
 */
export const cantileverDroop = (load: Newtons, reach: Metres, modulus: Pascals, inertia: number): Metres => metres((load * reach ** 3) / (3 * modulus * inertia))
