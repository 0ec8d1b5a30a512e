import type { Basis, Range } from '../catalogue/basis'
import { FILLINGS } from '../catalogue/fillings'
import { PLANT_CENTRE_SHARE } from '../catalogue/plants'
import { POT_MATERIALS } from '../catalogue/potMaterials'
import { WATER_DENSITY } from '../catalogue/pottingMixes'
import { RAIN_ON_PLANT } from '../catalogue/wind'
import type { Answers } from '../hanger/fields'
import { metres } from '../quantity/si'
import type { Component } from './component'
import { coverPot } from './coverPot'
import { drainageOf, hasCover } from './drainage'
import { mixDensity } from './mixDensity'
import { plantMass } from './plantMass'
import { potShape, type PotShape } from './potShape'
import { hasSaucer, saucer } from './saucer'
import type { Solid } from './solid'
import { addMass, gainOf, massRange, NO_MASS, scaleMass, STATES, timesRange, type MassRange, type State } from './states'
import { soakedInto } from './vesselMass'

/** What hangs in the seat in one state, component by component, from dimensions and materials. */
export type Estimate = readonly Component[]

/** The components of a potted plant in every state; those of no mass are left out. */
export function estimateStates(answers: Answers): Readonly<Record<State, Estimate>> {
  const shape = potShape(answers)
  const mix = mixDensity(answers)
  const plant = plantMass(answers, scaleMass(mix.watered, shape.mix.volume))
  const inState = (state: State): Estimate => {
    const parts: Component[] = [
      emptyPot(answers, shape, state),
      filled('layer', shape.layer, FILLINGS[answers['layer.kind']], state, FILLINGS[answers['layer.kind']].watered.basis),
      filled('mix', shape.mix, mix, state, mix.basis),
      filled('topping', shape.topping, FILLINGS[answers['topping.kind']], state, FILLINGS[answers['topping.kind']].watered.basis),
      { part: 'plant', mass: plant.mass, water: NO_MASS, centre: metres(shape.height + PLANT_CENTRE_SHARE.value * answers['plant.height']), basis: plant.basis },
    ]
    if (answers['place.exposure'] === 'outdoors' && state !== 'dry') parts.push(rain(plant.mass, answers, shape, state))
    const reservoir = answers['reservoir.volume']
    if (reservoir !== null) parts.push(reservoirWater(reservoir, shape, state))
    if (state === 'flooded') parts.push(standingWater(answers, shape))
    if (hasSaucer(answers)) parts.push(saucer(answers, state))
    if (hasCover(answers)) parts.push(coverPot(answers, state))
    return parts.filter((c) => c.part === 'pot' || c.part === 'mix' || c.part === 'plant' || c.mass.high > 0)
  }
  return Object.fromEntries(STATES.map((state) => [state, inState(state)])) as Record<State, Estimate>
}

function emptyPot(answers: Answers, { shell }: PotShape, state: State): Component {
  const { density } = POT_MATERIALS[answers['pot.material']]
  const weighed = answers['pot.emptyMass']
  const dry: MassRange = weighed === null
    ? { low: shell.low * density.low, likely: shell.likely * density.likely, high: shell.high * density.high }
    : massRange(weighed, weighed, weighed)
  const water = state === 'dry' ? NO_MASS : soakedInto(dry, answers['pot.material'])
  return { part: 'pot', mass: addMass(dry, water), water, centre: shell.centroid, basis: weighed === null ? density.basis : 'your own' }
}

/** Rain on the leaves, which may or may not have fallen on a pot just watered. It was not on the scale with a pot that was weighed. */
function rain(plant: MassRange, answers: Answers, { height }: PotShape, state: State): Component {
  const clings = timesRange(plant, state === 'flooded' ? RAIN_ON_PLANT : { ...RAIN_ON_PLANT, low: 0 })
  return { part: 'rain', mass: clings, water: clings, centre: metres(height + PLANT_CENTRE_SHARE.value * answers['plant.height']), basis: RAIN_ON_PLANT.basis }
}

type Densities = Readonly<Record<State, Range | MassRange>>

function filled(part: 'layer' | 'mix' | 'topping', { volume, centroid }: Solid, densities: Densities, state: State, basis: Basis): Component {
  const mass = scaleMass(densities[state], volume)
  return { part, mass, water: state === 'dry' ? NO_MASS : gainOf(scaleMass(densities.dry, volume), mass), centre: centroid, basis }
}

/** Water in the reservoir: none dry, up to full just watered, else full. No room is taken from the mix for it: the heavier answer. */
function reservoirWater(volume: number, { room, floor, height }: PotShape, state: State): Component {
  const full = volume * WATER_DENSITY.value
  const water: MassRange = state === 'dry' ? NO_MASS : { low: state === 'flooded' ? full : 0, likely: full, high: full }
  // As deep as its share of the room inside.
  const share = Math.min(1, volume / room.volume)
  return { part: 'reservoir', mass: water, water, centre: metres(floor + (share * (height - floor)) / 2), basis: 'your own' }
}

/** Water on the mix up to the rim, where it cannot run out; it may or may not be there where that is not known, or where a cover pot is lower than the rim. */
function standingWater(answers: Answers, { head }: PotShape): Component {
  const full = head.volume * WATER_DENSITY.value
  const water: MassRange = drainageOf(answers) === 'hole' ? NO_MASS : { low: answers['pot.drainage'] === 'none' ? full : 0, likely: full, high: full }
  return { part: 'standingWater', mass: water, water, centre: head.centroid, basis: 'computed' }
}
