import { BEDDED_STIFFNESS } from '../catalogue/cords'
import { STRETCH_SCATTER, TOLERANCE_SIGMAS } from '../catalogue/scatter'
import { CENTRE_MARGIN, LEAST_OFFSET } from '../catalogue/seat'
import { slingInput, tensionsOf, troubleOf } from '../check/slingBattery'
import { legStiffness } from '../check/solve'
import type { Solved } from '../check/solved'
import { STATES, type State } from '../load/states'
import { STANDARD_GRAVITY } from '../quantity/si'
import { solveSling } from '../statics/sling/solveSling'
import type { Layout } from './layout'
import { logDeviation } from './spread'

/** One pot as it hangs in the hanger that was drawn last; scratch, written anew for each. */
export interface PotNow {
  /** What hangs in its legs over what the check counts, by state. */
  readonly ratio: Record<State, number>
  /** Tension of each leg, N, by state; empty where no balance was found. */
  readonly tensions: Record<State, readonly number[]>
  readonly topples: Record<State, boolean>
  /** How much higher than reckoned the weight sits, and how far off the axis, m. */
  rise: number
  offset: number
}

const NONE: readonly number[] = []
export const newPotNow = (): PotNow => ({
  ratio: { dry: 1, watered: 1, flooded: 1 }, tensions: { dry: NONE, watered: NONE, flooded: NONE }, topples: { dry: false, watered: false, flooded: false }, rise: 0, offset: 0,
})

/** Numbers that all pots of a hanger share: how its cord stretches. */
export interface Shared { readonly stretch: number }

/**
 * Hangs a pot in its legs: lengths as unevenly tied as the tolerance allows 19 times in 20, weight as far off the axis and as
 * much higher as is reckoned with, legs between their first stretch and bedded in; solved in each state. Against a wall, where
 * few millimetres decide, tensions are not solved (`plan` with a wall): the check's worst counts.
 */
export function hangsIn(solved: Solved, layout: Layout, { stretch }: Shared): (z: Float64Array, massIn: (state: State) => number, now: PotNow) => void {
  const { plan, loads, hanger: { answers } } = solved
  const sigmas = TOLERANCE_SIGMAS.value
  const [tolerance, offset, margin] = [answers['make.tolerance'] / sigmas, Math.max(answers['seat.offset'], LEAST_OFFSET.value) / sigmas, CENTRE_MARGIN.value / sigmas]
  const legs = plan?.legs.length ?? 0
  const solves = plan !== null && plan.wall === null
  const lengths = solves && tolerance > 0 ? layout.take('legLengths', legs) : null
  const [aside, up] = [layout.take('offset', 2), layout.take('centre', 1)]
  const stiffness = legStiffness(answers, solved.cord) * Math.sqrt(BEDDED_STIFFNESS.value)
  const stretches = logDeviation(STRETCH_SCATTER.value)
  const longer = new Array<number>(legs).fill(0)
  return (z, massIn, now) => {
    const [x, y] = [offset * z[aside]!, offset * z[aside + 1]!]
    now.rise = margin * z[up]!
    now.offset = Math.hypot(x, y)
    if (lengths !== null) for (let i = 0; i < legs; i += 1) longer[i] = tolerance * z[lengths + i]!
    const axial = stiffness * Math.exp(stretches * z[stretch]!)
    for (const state of STATES) {
      const mass = massIn(state)
      now.ratio[state] = (mass * STANDARD_GRAVITY) / loads[state].weight
      if (!solves) continue
      const { centre } = loads[state]
      const sling = solveSling(slingInput({ plan, mass, stiffness: axial, bedded: axial, centre, offset, tolerance }, axial, [x, y, Math.max(0, centre + now.rise)], longer))
      now.tensions[state] = tensionsOf(sling)
      now.topples[state] = troubleOf(sling, plan) === 'unstable'
    }
  }
}
