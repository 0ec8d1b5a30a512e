import { SCALE_SCATTER, WEIGHT_CUT, WEIGHT_ENDS } from '../catalogue/scatter'
import type { Solved } from '../check/solved'
import type { MassRange, State } from '../load/states'
import { weightMakeup } from '../load/weightMakeup'
import type { WeightPart } from '../load/weightParts'
import type { ChanceInput } from './inputs'
import type { Layout } from './layout'

/** What decides each part of a weight; one number for all states, for what is heavy dry is heavy wet. */
const INPUT_OF: Readonly<Record<WeightPart, ChanceInput>> = {
  weighed: 'mix', mix: 'mix', layer: 'mix', topping: 'mix', pot: 'pot', coverPot: 'pot', plant: 'plant', rain: 'plant',
  reservoir: 'otherWater', standingWater: 'otherWater', saucer: 'otherWater', hanger: 'ownMass',
}

/**
 * A mass from its range, kg: likely in the middle, low and high what 1 in 20 lies beyond, on each side its own normal.
 * @example massAt({ low: 3, likely: 4, high: 6 }, 1.6449) // 6
 */
export function massAt({ low, likely, high }: MassRange, z: number): number {
  const out = Math.max(-WEIGHT_CUT.value, Math.min(WEIGHT_CUT.value, z)) / WEIGHT_ENDS.value
  return Math.max(0, likely + out * (out > 0 ? high - likely : likely - low))
}

/** The mass of one potted plant with its hanger in a state, kg, from a hanger's numbers. */
export type MassOf = (z: Float64Array, state: State) => number

/** Draws the masses of one pot: each part of the weight by its own range. `shared`: the numbers that all pots of a hanger share. */
export function massesOf({ potted, hangerMass }: Pick<Solved, 'potted' | 'hangerMass'>, layout: Layout, shared: Map<ChanceInput, number>): MassOf {
  const makeup = weightMakeup(potted, hangerMass)
  const placeOf = (input: ChanceInput): number => {
    const place = shared.get(input) ?? layout.take(input, 1)
    shared.set(input, place)
    return place
  }
  const partsIn = (state: State) => makeup[state].segments.map(({ part, mass }) => ({
    mass,
    place: mass.high > mass.low ? placeOf(INPUT_OF[part]) : null,
    scale: part === 'weighed' ? placeOf('scale') : null,
  }))
  const parts = { dry: partsIn('dry'), watered: partsIn('watered'), flooded: partsIn('flooded') }
  return (z, state) => {
    let sum = 0
    for (const { mass, place, scale } of parts[state]) {
      const drawn = place === null ? mass.likely : massAt(mass, z[place]!)
      sum += scale === null ? drawn : drawn * (1 + SCALE_SCATTER.value * z[scale]!)
    }
    return sum
  }
}
