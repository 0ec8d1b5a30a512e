import type { UnitSymbol } from './units'

/** Two units written one after the other, the first in whole numbers: 5 ft 6 1/2 in, 12 lb 4 oz. */
export interface CompoundUnit {
  readonly symbol: CompoundSymbol
  readonly major: UnitSymbol
  readonly minor: UnitSymbol
  /** How many of the minor unit make one of the major. */
  readonly minorsInMajor: bigint
}

export type CompoundSymbol = 'ft in' | 'lb oz'

export const COMPOUND_UNITS: readonly CompoundUnit[] = [
  { symbol: 'ft in', major: 'ft', minor: 'in', minorsInMajor: 12n },
  { symbol: 'lb oz', major: 'lb', minor: 'oz', minorsInMajor: 16n },
]

export const compoundStartingWith = (major: UnitSymbol): CompoundUnit | undefined =>
  COMPOUND_UNITS.find(compound => compound.major === major)
