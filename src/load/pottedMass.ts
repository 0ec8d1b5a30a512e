import type { Range } from '../catalogue/basis'
import { PLANT_CENTRE_SHARE, PLANT_SHARE_OF_MIX } from '../catalogue/plants'
import { POT_MATERIALS } from '../catalogue/potMaterials'
import { LEAST_SOLID_SHARE, POTTING_MIXES, WATER_DENSITY } from '../catalogue/pottingMixes'
import type { Answers } from '../hanger/fields'
import { metres, type Metres } from '../quantity/si'
import { potShape } from './potShape'
import { addMass, massRange, NO_MASS, STATES, type MassRange, type State } from './states'

const PARTS = ['pot', 'mix', 'plant', 'standingWater'] as const

/** One component of a potted plant in one state: its mass and the height of its centre above the base. */
export interface Component {
  readonly part: (typeof PARTS)[number]
  readonly mass: MassRange
  readonly centre: Metres
}

/** The potted plant in one state: what hangs in the seat, without the hanger's own mass. */
export interface PottedState {
  readonly state: State
  readonly mass: MassRange
  /** Height of the common centre of gravity above the pot's base, from the high masses. */
  readonly centre: Metres
  readonly components: readonly Component[]
  /** Whether the mass was weighed in this very state. */
  readonly weighed: boolean
  /** The weighing leaves less than anything solid for this state: it does not fit the drawn pot. */
  readonly tooLight: boolean
}

const scaleRange = (r: Range, by: number): MassRange => ({ low: r.low * by, likely: r.likely * by, high: r.high * by })

/**
 * Mass and centre of gravity of the potted plant in each state, from its dimensions and materials,
 * or from one weighed number in a stated state. Of a weighing in one state the other states are
 * found by the water between them; a dry weighing does not narrow that water. `tooLight` marks a
 * weighing that leaves nothing solid in some state.
 */
export function pottedMass(answers: Answers): Readonly<Record<State, PottedState>> {
  const estimate = estimateStates(answers)
  const mass = answers['weighed.mass']
  if (mass === null) return estimate
  const at = answers['weighed.state']
  const states = STATES.map((state): [State, PottedState] => {
    if (state === at) {
      // Whatever the pot is made of, its mix alone weighs this much.
      const mixAlone = estimate[state].components.find((c) => c.part === 'mix')?.mass.low ?? 0
      return [state, { ...estimate[state], mass: massRange(mass, mass, mass), weighed: true, tooLight: mass < mixAlone + (answers['pot.emptyMass'] ?? 0) }]
    }
    const water = between(estimate[at].components, estimate[state].components)
    const other = massRange(mass + water.low, mass + water.likely, mass + water.high)
    // A weighing lighter than the water the drawn pot would hold says the pot is smaller: something solid is left.
    const least = LEAST_SOLID_SHARE.value * mass
    const clipped = { low: Math.max(least, other.low), likely: Math.max(least, other.likely), high: Math.max(least, other.high) }
    return [state, { ...estimate[state], mass: clipped, tooLight: other.high < Math.max(least, answers['pot.emptyMass'] ?? 0) }]
  })
  return Object.fromEntries(states) as Record<State, PottedState>
}

/** Water gained from one state to another; component by component, low with low and high with high. */
function between(from: readonly Component[], to: readonly Component[]): MassRange {
  const massOf = (state: readonly Component[], part: Component['part']): MassRange => state.find((c) => c.part === part)?.mass ?? NO_MASS
  return PARTS.reduce((sum, part) => {
    const before = massOf(from, part)
    const after = massOf(to, part)
    const gains = [after.low - before.low, after.likely - before.likely, after.high - before.high] as const
    return addMass(sum, { low: Math.min(...gains), likely: gains[1], high: Math.max(...gains) })
  }, NO_MASS)
}

function estimateStates(answers: Answers): Record<State, PottedState> {
  const shape = potShape(answers)
  const material = POT_MATERIALS[answers['pot.material']]
  const mix = POTTING_MIXES[answers['mix.kind']]
  const weighedPot = answers['pot.emptyMass']
  const pot: MassRange = weighedPot !== null
    ? massRange(weighedPot, weighedPot, weighedPot)
    : { low: shape.shell.low * material.density.low, likely: shape.shell.likely * material.density.likely, high: shape.shell.high * material.density.high }
  const soaked: MassRange = { low: pot.low * (1 + material.uptake.low), likely: pot.likely * (1 + material.uptake.likely), high: pot.high * (1 + material.uptake.high) }
  const watered = scaleRange(mix.watered, shape.mix.volume)
  const weighedPlant = answers['plant.mass']
  const share = PLANT_SHARE_OF_MIX
  const plant: MassRange = weighedPlant !== null
    ? massRange(weighedPlant, weighedPlant, weighedPlant)
    : { low: share.low * watered.low, likely: share.likely * watered.likely, high: share.high * watered.high }
  const headWater = shape.head.volume * WATER_DENSITY.value
  const standing: MassRange = answers['pot.drainage'] === 'hole' ? NO_MASS : { low: answers['pot.drainage'] === 'none' ? headWater : 0, likely: headWater, high: headWater }
  const plantCentre = metres(shape.height + PLANT_CENTRE_SHARE.value * answers['plant.height'])
  const at = (state: State, potMass: MassRange, mixMass: MassRange, water: MassRange): PottedState => {
    const components: Component[] = [
      { part: 'pot', mass: potMass, centre: shape.shell.centroid },
      { part: 'mix', mass: mixMass, centre: shape.mix.centroid },
      { part: 'plant', mass: plant, centre: plantCentre },
    ]
    if (water.high > 0) components.push({ part: 'standingWater', mass: water, centre: shape.head.centroid })
    const mass = components.reduce((sum, c) => addMass(sum, c.mass), NO_MASS)
    const moment = components.reduce((sum, c) => sum + c.mass.high * c.centre, 0)
    return { state, mass, centre: metres(mass.high > 0 ? moment / mass.high : shape.height / 2), components, weighed: false, tooLight: false }
  }
  return {
    dry: at('dry', pot, scaleRange(mix.dry, shape.mix.volume), NO_MASS),
    watered: at('watered', soaked, watered, NO_MASS),
    flooded: at('flooded', soaked, scaleRange(mix.flooded, shape.mix.volume), standing),
  }
}
