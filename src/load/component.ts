import type { Basis } from '../catalogue/basis'
import type { Metres } from '../quantity/si'
import type { MassRange } from './states'
import type { WeightPart } from './weightParts'

/** One component of what hangs, in one state. */
export interface Component {
  readonly part: WeightPart
  readonly mass: MassRange
  /** How much of its mass is water that was poured or has risen into it, kg; a plant's own sap is not counted. */
  readonly water: MassRange
  /** Height of its centre above the pot's base. */
  readonly centre: Metres
  readonly basis: Basis
}
