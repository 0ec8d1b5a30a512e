import type { LinkDiagram } from '../check/diagrams'
import type { Point, Shape } from '../drawing/shape'
import type { Picture } from './block'

/** The bar is drawn so long, its bending and its sag at most so deep, m of the picture. */
const LENGTH = 0.24
const DEPTH = 0.04
const SAG = 0.022
const HATCH = 0.006

const common = { link: null, ink: 'wire', pencil: false, leg: null } as const
const line = (points: readonly Point[], width: number, behind: boolean): Shape => ({ ...common, kind: 'line', points, width, behind })
const largest = (numbers: readonly number[]): number => Math.max(0, ...numbers.map(Math.abs))

/** Value at a place between the points given. */
function between(at: readonly number[], values: readonly number[], along: number): number {
  const i = Math.max(1, at.findIndex((place) => place >= along))
  const [from, to] = [at[i - 1] ?? 0, at[i] ?? 0]
  const [low, high] = [values[i - 1] ?? 0, values[i] ?? 0]
  return to > from ? low + ((high - low) * (along - from)) / (to - from) : high
}

/** Where a bar is bent hardest, m along; how hard, N m; and its largest sag, m. */
export function worstBending({ at, moment, sag }: LinkDiagram): { readonly at: number; readonly moment: number; readonly sag: number | null } {
  const most = largest(moment)
  return { at: at[moment.findIndex((m) => Math.abs(m) === most)] ?? 0, moment: most, sag: sag === null ? null : largest(sag) }
}

/**
 * A bar with where it is held (triangles), where it is pulled (arrows), its bending hatched on the side that is
 * stretched, and its sag as a broken line, drawn larger than it is.
 */
export function bendingPicture(diagram: LinkDiagram): Picture {
  const { at, moment, sag, held, pulls } = diagram
  const scale = LENGTH / (at.at(-1) || 1)
  const [most, deepest] = [largest(moment), sag === null ? 0 : largest(sag)]
  const bend = (m: number): number => (most > 0 ? (0 - m / most) * DEPTH : 0)
  const hatch = Array.from({ length: Math.floor(LENGTH / HATCH) }, (_, i): Shape => {
    const x = (i + 0.5) * HATCH
    return line([[x, 0], [x, bend(between(at, moment, x / scale))]], 0, false)
  })
  const triangle = (x: number): Shape => ({ ...common, kind: 'area', texture: 'open', behind: false, points: [[x, -0.001], [x - 0.005, -0.01], [x + 0.005, -0.01]] })
  const arrow = (x: number): readonly Shape[] => [line([[x, 0.016], [x, 0.001]], 0, false), line([[x - 0.003, 0.005], [x, 0.001], [x + 0.003, 0.005]], 0, false)]
  return {
    shapes: [
      ...hatch,
      line(at.map((place, i): Point => [place * scale, bend(moment[i] ?? 0)]), 0, false),
      ...(sag === null || deepest === 0 ? [] : [line(at.map((place, i): Point => [place * scale, (0 - (sag[i] ?? 0) / deepest) * SAG]), 0, true)]),
      line([[0, 0], [LENGTH, 0]], 0.002, false),
      ...held.map((place) => triangle(place * scale)),
      ...pulls.flatMap(({ at: place }) => arrow(place * scale)),
    ],
    bounds: { left: -0.01, right: LENGTH + 0.01, bottom: -DEPTH - 0.005, top: DEPTH + 0.005 },
  }
}
