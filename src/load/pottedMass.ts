import { LEAST_SOLID_SHARE } from '../catalogue/pottingMixes'
import type { Answers } from '../hanger/fields'
import { metres, type Metres } from '../quantity/si'
import type { Component } from './component'
import { estimateStates, type Estimate } from './estimate'
import { addMass, gainOf, massRange, NO_MASS, STATES, type MassRange, type State } from './states'
import type { WeightPart } from './weightParts'

/** The potted plant in one state: what hangs in the seat, without the hanger's own mass. */
export interface PottedState {
  readonly state: State
  /** The sum of its components. */
  readonly mass: MassRange
  /** Height of the common centre of gravity above the pot's base, from the high masses. */
  readonly centre: Metres
  readonly components: readonly Component[]
  /** Whether the mass was weighed in this very state. */
  readonly weighed: boolean
  /** The weighing leaves less than anything solid for this state: it does not fit the drawn pot. */
  readonly tooLight: boolean
  /** Whether water may stand on the mix. */
  readonly standing: boolean
}

/** What hangs with the pot but was not on the scale. */
const BESIDE: readonly WeightPart[] = ['saucer', 'coverPot', 'rain']
const isBeside = ({ part }: Component): boolean => BESIDE.includes(part)
const massOf = (components: readonly Component[]): MassRange => components.reduce((sum, c) => addMass(sum, c.mass), NO_MASS)
const waterOf = (components: readonly Component[]): MassRange => components.reduce((sum, c) => addMass(sum, c.water), NO_MASS)
const atMost = (r: MassRange, most: MassRange): MassRange => ({ low: Math.min(r.low, most.low), likely: Math.min(r.likely, most.likely), high: Math.min(r.high, most.high) })
const atLeast = (r: MassRange, least: number): MassRange => ({ low: Math.max(least, r.low), likely: Math.max(least, r.likely), high: Math.max(least, r.high) })

/**
 * Mass and centre of gravity of the potted plant in each state, from its dimensions and materials,
 * or from one weighed number in a stated state, less its tare; saucer and cover pot come on top of it.
 * Of a weighing in one state the other states are found by the water between them; a dry weighing does
 * not narrow that water. `tooLight` marks a weighing that leaves nothing solid in some state.
 */
export function pottedMass(answers: Answers): Readonly<Record<State, PottedState>> {
  const estimate = estimateStates(answers)
  const gross = answers['weighed.mass']
  const net = gross === null ? null : gross - (answers['weighed.tare'] ?? 0)
  return Object.fromEntries(STATES.map((state) => [state, net === null
    ? stateOf(state, estimate[state], estimate[state], false, false)
    : weighedState(answers, estimate, net, state)])) as Record<State, PottedState>
}

function stateOf(state: State, estimate: Estimate, components: readonly Component[], weighed: boolean, tooLight: boolean): PottedState {
  return { state, mass: massOf(components), centre: centreOf(estimate), components, weighed, tooLight, standing: estimate.some((c) => c.part === 'standingWater') }
}

/** Of an estimate with at least its pot in it, which always weighs something. */
const centreOf = (estimate: Estimate): Metres => metres(estimate.reduce((sum, c) => sum + c.mass.high * c.centre, 0) / massOf(estimate).high)

/**
 * A state of a pot that was weighed: what stood on the scale as one component, with the water each part
 * gains when wetter beside it; when drier, that component less the water lost.
 */
function weighedState(answers: Answers, estimate: Readonly<Record<State, Estimate>>, net: number, state: State): PottedState {
  const at = answers['weighed.state']
  const onScale = (of: State): Estimate => estimate[of].filter((c) => !isBeside(c))
  const beside = estimate[state].filter(isBeside)
  const empty = answers['pot.emptyMass'] ?? 0
  const least = LEAST_SOLID_SHARE.value * net
  const lump = (mass: MassRange, water: MassRange): Component => ({
    // However much water the drawn pot would hold, some of what was weighed is solid.
    part: 'weighed', mass, water: atMost(water, { low: mass.low - least, likely: mass.likely - least, high: mass.high - least }), centre: centreOf(onScale(state)), basis: 'your own',
  })
  const exact = massRange(net, net, net)
  const result = (components: readonly Component[], weighed: boolean, tooLight: boolean): PottedState =>
    stateOf(state, estimate[state], [...components, ...beside], weighed, tooLight)
  if (state === at) {
    // Whatever the pot is made of, its mix alone weighs this much.
    const mixAlone = estimate[state].find((c) => c.part === 'mix')?.mass.low ?? 0
    return result([lump(exact, waterOf(onScale(state)))], true, net < mixAlone + empty)
  }
  const gains = gainsBetween(onScale(at), onScale(state))
  const other = addMass(exact, massOf(gains))
  const tooLight = other.high < Math.max(least, empty)
  const wetter = STATES.indexOf(state) > STATES.indexOf(at)
  return wetter
    ? result([lump(exact, waterOf(onScale(at))), ...gains], false, tooLight)
    // A weighing lighter than the water the drawn pot would hold says the pot is smaller: something solid is left.
    : result([lump(atLeast(other, least), waterOf(onScale(state)))], false, tooLight)
}

/** Water gained from one state to another, part by part: low with low and high with high. */
function gainsBetween(from: Estimate, to: Estimate): readonly Component[] {
  const parts = new Set([...from, ...to].map((c) => c.part))
  return [...parts].flatMap((part): readonly Component[] => {
    const [before, after] = [from, to].map((state) => state.find((c) => c.part === part))
    const found = after ?? before
    if (!found) return []
    const mass = gainOf(before?.mass ?? NO_MASS, after?.mass ?? NO_MASS)
    return mass.low === 0 && mass.high === 0 ? [] : [{ ...found, mass, water: mass }]
  })
}
