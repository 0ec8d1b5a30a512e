import type { LinkDiagram } from '#core'

/** Size of the chart, px: its width, the room above and below the bar. */
const WIDTH = 320
const ROOM = 56
const MARGIN = 12
/** The sag is drawn at most this deep, px. */
const SAG_DEPTH = 30
const HATCH = 7

export interface BendingChart {
  readonly viewBox: string
  readonly left: number
  readonly right: number
  readonly axis: number
  readonly moment: string
  readonly hatch: readonly string[]
  readonly sag: string | null
  readonly held: readonly number[]
  readonly pulls: readonly number[]
  /** Largest sag by size, m, and how many times larger it is drawn than the bar. */
  readonly mostSag: number | null
  readonly enlarged: number
  /** Where it is bent hardest, m along. */
  readonly mostAt: number
}

const largest = (numbers: readonly number[]): number => Math.max(...numbers.map(Math.abs))

/** A diagram in the chart’s pixels: bending on the side that is stretched (sagging below the bar), the sag enlarged. */
export function chartOf({ at, moment, sag, held, pulls }: LinkDiagram): BendingChart {
  const length = at.at(-1) ?? 1
  const scale = (WIDTH - 2 * MARGIN) / length
  const [axis, x] = [ROOM, (along: number): number => MARGIN + along * scale]
  const most = largest(moment)
  const y = (m: number): number => axis + (most > 0 ? (m / most) * (ROOM - MARGIN) : 0)
  const line = (ys: readonly number[]): string => ys.map((value, i) => `${i === 0 ? 'M' : 'L'}${x(at[i] ?? 0).toFixed(1)} ${value.toFixed(1)}`).join('')
  const mostSag = sag === null ? null : largest(sag)
  const drawn = mostSag !== null && mostSag > 0 ? SAG_DEPTH / mostSag : 0
  const hatch = Array.from({ length: Math.floor((WIDTH - 2 * MARGIN) / HATCH) }, (_, i): string => {
    const px = MARGIN + (i + 0.5) * HATCH
    return `M${px.toFixed(1)} ${axis}V${y(between(at, moment, (px - MARGIN) / scale)).toFixed(1)}`
  })
  return {
    viewBox: `0 0 ${WIDTH} ${2 * ROOM}`, left: x(0), right: x(length), axis,
    moment: line(moment.map(y)), hatch,
    sag: sag === null || drawn === 0 ? null : line(sag.map((s) => axis + s * drawn)),
    held: held.map(x), pulls: pulls.map((pull) => x(pull.at)),
    mostSag, enlarged: drawn / scale,
    mostAt: at[moment.findIndex((m) => Math.abs(m) === most)] ?? 0,
  }
}

/** Value at a place between the points given. */
export function between(at: readonly number[], values: readonly number[], along: number): number {
  const i = Math.max(1, at.findIndex((place) => place >= along))
  const [from, to] = [at[i - 1] ?? 0, at[i] ?? 0]
  const [low, high] = [values[i - 1] ?? 0, values[i] ?? 0]
  return to > from ? low + ((high - low) * (along - from)) / (to - from) : high
}
