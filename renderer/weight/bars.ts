import { STATES, type MassRange, type State, type WeightMakeup, type WeightPart } from '#core'

/** One part's stretch of a bar; places and widths from 0 to 1 of the common scale, its water at its end. */
export interface Stretch {
  readonly part: WeightPart
  /** Letter that stands for the part in every bar and in the legend. */
  readonly letter: string
  readonly from: number
  readonly solid: number
  readonly water: number
}

export interface Bar {
  readonly state: State
  readonly stretches: readonly Stretch[]
  readonly total: MassRange
  /** Of the likely total, how much is water, kg. */
  readonly water: number
  /** The total's range on the scale. */
  readonly low: number
  readonly likely: number
  readonly high: number
  readonly weighed: boolean
}

export interface BarPart {
  readonly part: WeightPart
  readonly letter: string
  /** Whether it is nothing but water, in every state: what a weighed pot takes up once it is wetter. */
  readonly onlyWater: boolean
}

export interface Bars {
  readonly bars: readonly Bar[]
  /** Every part that weighs something in some state, with its letter, in the order of the bars. */
  readonly parts: readonly BarPart[]
  /** Round masses along the scale, in its unit, with their places. */
  readonly ticks: readonly { readonly mass: number, readonly along: number }[]
}

/** Room beyond the heaviest end. */
const BEYOND = 1.02
const STEPS = [1, 2, 5, 10] as const
const MOST_TICKS = 6

/** What it weighs in every state as bars on one scale, marked in a unit of so many kilograms; parts in the order given. */
export function barsOf(makeups: Readonly<Record<State, WeightMakeup>>, unit: number): Bars {
  const weighs = new Set(STATES.flatMap((state) => makeups[state].segments.filter(({ mass }) => mass.likely > 0).map(({ part }) => part)))
  const parts = [...weighs].map((part, i): BarPart => {
    const segments = STATES.flatMap((state) => makeups[state].segments.filter((segment) => segment.part === part))
    return { part, letter: String.fromCharCode(65 + i), onlyWater: segments.every(({ mass, water }) => mass.likely - water < 1e-9) }
  })
  const full = Math.max(...STATES.map((state) => makeups[state].total.high)) * BEYOND || 1
  const bars = STATES.map((state): Bar => {
    const { segments, total, weighed } = makeups[state]
    let from = 0
    const stretches = parts.flatMap(({ part, letter }): readonly Stretch[] => {
      const masses = segments.filter((segment) => segment.part === part && segment.mass.likely > 0)
      const mass = masses.reduce((sum, segment) => sum + segment.mass.likely, 0)
      if (mass === 0) return []
      const water = Math.max(0, Math.min(mass, masses.reduce((sum, segment) => sum + segment.water, 0)))
      const stretch = { part, letter, from: from / full, solid: mass - water < 1e-9 ? 0 : (mass - water) / full, water: water / full }
      from += mass
      return [stretch]
    })
    const water = stretches.reduce((sum, stretch) => sum + stretch.water, 0) * full
    return { state, stretches, total, water, low: total.low / full, likely: total.likely / full, high: total.high / full, weighed }
  })
  return { bars, parts, ticks: ticksUpTo(full / unit).map((mass) => ({ mass, along: (mass * unit) / full })) }
}

/** Round masses from nothing up to `most`, at most six steps. */
function ticksUpTo(most: number): readonly number[] {
  const power = 10 ** Math.floor(Math.log10(most / MOST_TICKS))
  const step = (STEPS.find((one) => most / (one * power) <= MOST_TICKS) ?? 10) * power
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => i * step)
}
