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
  /** Tension of each leg, N, by state; empty where no balance was found, or none was looked for. */
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

/** A pot hung by a hanger's numbers. */
export interface Hung {
  /** Hangs it anew, unless none of the numbers that it goes by has changed. */
  readonly hang: (z: Float64Array, massIn: (state: State) => number) => void
  /** The numbers that it goes by, besides those of the masses. */
  readonly places: readonly number[]
}

/**
 * Hangs a pot in its legs: lengths as unevenly tied as the tolerance allows 19 times in 20, weight as far off the axis and as
 * much higher as is reckoned with, legs between their first stretch and bedded in. Against a wall, where few millimetres
 * decide, tensions are not solved: the check's worst counts. `massPlaces`: the numbers that the masses go by.
 */
export function hangsIn(solved: Solved, now: PotNow, layout: Layout, { stretch }: Shared, massPlaces: () => readonly number[]): Hung {
  const { plan, loads, hanger: { answers } } = solved
  const sigmas = TOLERANCE_SIGMAS.value
  const [tolerance, offset, margin] = [answers['make.tolerance'] / sigmas, Math.max(answers['seat.offset'], LEAST_OFFSET.value) / sigmas, CENTRE_MARGIN.value / sigmas]
  const legs = plan?.legs.length ?? 0
  const solves = plan !== null && plan.wall === null
  const lengths = solves && tolerance > 0 ? layout.take('legLengths', legs) : null
  const [aside, up] = [layout.take('offset', 2), layout.take('centre', 1)]
  const places = [stretch, aside, aside + 1, up, ...(lengths === null ? [] : longerPlaces(lengths, legs))]
  const stiffness = legStiffness(answers, solved.cord) * Math.sqrt(BEDDED_STIFFNESS.value)
  const stretches = logDeviation(STRETCH_SCATTER.value)
  const longer = new Array<number>(legs).fill(0)
  const changed = changeOf(() => [...places, ...massPlaces()])
  return {
    places,
    hang: (z, massIn) => {
      if (!changed(z)) return
      const [x, y] = [offset * z[aside]!, offset * z[aside + 1]!]
      now.rise = margin * z[up]!
      now.offset = Math.hypot(x, y)
      if (lengths !== null) for (let i = 0; i < legs; i += 1) longer[i] = tolerance * z[lengths + i]!
      const axial = stiffness * Math.exp(stretches * z[stretch]!)
      const solve = (state: State): void => {
        if (!solves) return
        const mass = massIn(state)
        const { centre } = loads[state]
        const sling = solveSling(slingInput({ plan, mass, stiffness: axial, bedded: axial, centre, offset, tolerance }, axial, [x, y, Math.max(0, centre + now.rise)], longer))
        now.tensions[state] = tensionsOf(sling)
        now.topples[state] = troubleOf(sling, plan) === 'unstable'
      }
      for (const state of STATES) now.ratio[state] = (massIn(state) * STANDARD_GRAVITY) / loads[state].weight
      solve('dry')
      solve('flooded')
      const between = watersBetween(now, massIn)
      if (between === null) solve('watered')
      else {
        now.tensions.watered = between
        now.topples.watered = now.topples.dry || now.topples.flooded
      }
    },
  }
}

const longerPlaces = (first: number, count: number): readonly number[] => Array.from({ length: count }, (_, i) => first + i)

/** Whether any of the numbers at these places is another than when last asked. */
function changeOf(placesOf: () => readonly number[]): (z: Float64Array) => boolean {
  let places: readonly number[] | null = null
  let last = new Float64Array(0)
  return (z) => {
    if (places === null) {
      places = placesOf()
      last = new Float64Array(places.length).fill(NaN)
    }
    let any = false
    for (let i = 0; i < places.length; i += 1) {
      const number = z[places[i]!]!
      if (number === last[i]) continue
      last[i] = number
      any = true
    }
    return any
  }
}

/**
 * Tensions just watered from those dry and flooded, between which it weighs: legs are straight springs, so what their unequal
 * lengths add is the same under any weight, and each tension is straight in the weight while the same legs carry. Null where others do.
 */
function watersBetween({ tensions }: PotNow, massIn: (state: State) => number): readonly number[] | null {
  const [dry, flooded] = [tensions.dry, tensions.flooded]
  const [from, to, at] = [massIn('dry'), massIn('flooded'), massIn('watered')]
  if (dry.length === 0 || dry.length !== flooded.length || at < from || at > to || to - from < 0.01 * to) return null
  const share = (at - from) / (to - from)
  const least = (0.01 * to * STANDARD_GRAVITY) / dry.length
  return dry.every((tension, i) => tension > least === flooded[i]! > least) ? dry.map((tension, i) => tension + share * (flooded[i]! - tension)) : null
}
