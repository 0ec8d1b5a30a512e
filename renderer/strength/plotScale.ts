import type { PullTestSet } from '#core'

/** Dots closer than this share of the plot's width are set one above the other. */
const TOUCHING = 0.055
/** Room beyond the strongest test, as a share of it. */
const BEYOND = 1.08
const STEPS = [1, 2, 5, 10] as const
const MOST_TICKS = 6

/** One test on the plot: where along it (0 to 1), and how many dots it stands above the line. */
export interface Dot {
  readonly row: number
  readonly along: number
  readonly above: number
  readonly isOutlier: boolean
}

export interface Plot {
  readonly dots: readonly Dot[]
  readonly mean: number
  readonly counted: number
  /** Round masses along the line with their places. */
  readonly ticks: readonly { readonly mass: number, readonly along: number }[]
  /** Most dots above each other. */
  readonly tallest: number
}

/** Step between ticks: 1, 2 or 5 times a power of ten, so that few are needed up to `most`. */
function tickStep(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most / MOST_TICKS))
  return (STEPS.find((step) => (most / (step * power)) <= MOST_TICKS) ?? 10) * power
}

/** A set of pull tests along a line from zero, in the mass that pulls as hard; `gravity`: pull of one mark’s unit of mass, N. */
export function plotOf(set: PullTestSet, gravity: number): Plot {
  const full = Math.max(...set.pulls.map(({ counted }) => counted), set.mean) * BEYOND
  const along = (force: number): number => force / full
  const dots: Dot[] = []
  for (const { row, counted } of [...set.pulls].sort((a, b) => a.counted - b.counted)) {
    const taken = new Set(dots.filter((dot) => Math.abs(dot.along - along(counted)) < TOUCHING).map(({ above }) => above))
    let above = 0
    while (taken.has(above)) above += 1
    dots.push({ row, along: along(counted), above, isOutlier: set.outliers.includes(row) })
  }
  const most = full / gravity
  const step = tickStep(most)
  const ticks = Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => ({ mass: i * step, along: along(i * step * gravity) }))
  return { dots, mean: along(set.mean), counted: along(set.characteristic), ticks, tallest: Math.max(...dots.map(({ above }) => above)) + 1 }
}
