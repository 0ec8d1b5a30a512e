import { scaleLinear, scaleLog } from 'd3-scale'
import type { Distribution } from '#core'

/** Marks along a scale at most. */
const TICKS = 6

export interface SpreadBar {
  /** Along the scale, 0 to 1. */
  readonly from: number
  readonly to: number
  /** Of the tallest bar. */
  readonly height: number
  /** Lies beyond the limit. */
  readonly isOver: boolean
}

export interface Spread {
  readonly bars: readonly SpreadBar[]
  readonly ticks: readonly { readonly value: number, readonly along: number }[]
  readonly along: (value: number) => number
}

/** Round shares that people think in, where a scale rises by ratios. */
const SHARES = [0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 10]

/**
 * A distribution laid out along a scale from 0 to 1 that holds all of it and what is to be marked on it. `limit`: beyond it is too
 * much; null where there is none. `unit`: how many of the distribution's units one mark of the scale is.
 */
export function spreadOf({ edges, counts, logarithmic }: Pick<Distribution, 'edges' | 'counts' | 'logarithmic'>, marks: readonly number[], limit: number | null, unit: number): Spread {
  const all = [...edges, ...marks].map((value) => value / unit)
  const domain = [Math.min(...all), Math.max(...all)] as const
  const linear = scaleLinear().domain(domain).range([0, 1])
  const scale = logarithmic ? scaleLog().domain(domain).range([0, 1]) : linear
  const along = (value: number): number => scale(value / unit)
  const most = Math.max(...counts, 1)
  const values = logarithmic ? roundShares(domain) : linear.ticks(TICKS)
  return {
    bars: counts.flatMap((count, i): SpreadBar[] => {
      const [low, high] = [edges[i], edges[i + 1]]
      return count === 0 || low === undefined || high === undefined ? [] : [{ from: along(low), to: along(high), height: count / most, isOver: limit !== null && low >= limit * (1 - 1e-9) }]
    }),
    ticks: values.map((value) => ({ value: value * unit, along: scale(value) })),
    along,
  }
}

/** As many round shares as have room: over a wide span every other one. */
function roundShares([low, high]: readonly [number, number]): readonly number[] {
  const inside = SHARES.filter((share) => share >= low && share <= high)
  const every = Math.ceil(inside.length / TICKS)
  const one = inside.indexOf(1)
  return inside.filter((_, i) => (i - Math.max(0, one)) % every === 0)
}
