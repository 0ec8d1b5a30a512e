import type { Basis } from '../catalogue/basis'
import { POTTING_MIXES, SOLIDS_DENSITY, WATER_DENSITY } from '../catalogue/pottingMixes'
import type { Answers } from '../hanger/fields'
import { addMass, massRange, type MassRange } from './states'

/** Densities of the mix in its three states, kg/m3, low to high. */
export interface MixDensity {
  readonly dry: MassRange
  readonly watered: MassRange
  readonly flooded: MassRange
  readonly basis: Basis
}

type MixAnswers = Pick<Answers, 'mix.kind' | 'mix.bulkDensity' | 'mix.capacity' | 'mix.porosity'>
const ENDS = ['low', 'likely', 'high'] as const
const eachEnd = (of: (end: (typeof ENDS)[number]) => number): MassRange => massRange(of('low'), of('likely'), of('high'))

/**
 * The mix's densities: of its kind, or the maker's own. Of bulk density, container capacity and total
 * porosity only what is given replaces the catalogue's: watered = BD + 1000 CC, flooded = BD + 1000 TP
 * (definitions of Int. J. Agronomy 2012, 978528, table 1). Pores from the catalogue are no more than
 * the solids of a given bulk density leave.
 */
export function mixDensity(answers: MixAnswers): MixDensity {
  const kind = POTTING_MIXES[answers['mix.kind']]
  const bulk = answers['mix.bulkDensity']
  const capacity = answers['mix.capacity']
  const porosity = answers['mix.porosity']
  if (bulk === null && capacity === null && porosity === null) return { dry: kind.dry, watered: kind.watered, flooded: kind.flooded, basis: kind.watered.basis }
  const room = (dry: number): number => WATER_DENSITY.value * (1 - Math.min(1, dry / SOLIDS_DENSITY.value))
  const dry = eachEnd((end) => bulk ?? kind.dry[end])
  const pores = porosity === null ? Infinity : WATER_DENSITY.value * porosity
  const held = eachEnd((end) => (capacity === null ? Math.min(kind.watered[end] - kind.dry[end], room(dry[end]), pores) : WATER_DENSITY.value * capacity))
  const full = eachEnd((end) => (porosity === null ? Math.max(held[end], Math.min(kind.flooded[end] - kind.dry[end], room(dry[end]))) : pores))
  return {
    dry, watered: addMass(dry, held), flooded: addMass(dry, full),
    basis: bulk !== null && capacity !== null && porosity !== null ? 'your own' : kind.watered.basis,
  }
}
