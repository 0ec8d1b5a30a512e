import type { PottedState } from './pottedMass'
import { addMass, NO_MASS, STATES, type MassRange, type State } from './states'
import type { WeightPart } from './weightParts'

/** One part of what hangs: its mass with its water, and how much of the likely mass is water, kg. */
export interface WeightSegment {
  readonly part: WeightPart
  readonly mass: MassRange
  readonly water: number
}

/** What the weight on the hook is made of in one state; the segments add up to the total, end by end. */
export interface WeightMakeup {
  readonly segments: readonly WeightSegment[]
  readonly total: MassRange
  /** Whether pot, mix and plant were weighed in this very state. */
  readonly weighed: boolean
}

/** What the weight is made of, state by state: the components of the potted plant and the hanger itself, kg. */
export function weightMakeup(potted: Readonly<Record<State, PottedState>>, hangerMass: Readonly<Record<State, MassRange>>): Readonly<Record<State, WeightMakeup>> {
  const makeup = (state: State): WeightMakeup => {
    const { components, weighed } = potted[state]
    const hanger: WeightSegment = { part: 'hanger', mass: hangerMass[state], water: hangerMass[state].likely - hangerMass.dry.likely }
    const segments = [...components.map((c): WeightSegment => ({ part: c.part, mass: c.mass, water: c.water.likely })), hanger]
    return { segments, total: segments.reduce((sum, s) => addMass(sum, s.mass), NO_MASS), weighed }
  }
  return Object.fromEntries(STATES.map((state) => [state, makeup(state)])) as Record<State, WeightMakeup>
}
