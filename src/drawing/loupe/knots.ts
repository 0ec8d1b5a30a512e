import { strandsSeen } from '../bundle'
import type { Point, Shape } from '../shape'
import { curve } from './curve'

/** The pen cords of a detail are drawn with: all but where they run. */
export type CordPen = Omit<Extract<Shape, { kind: 'line' }>, 'kind' | 'points' | 'width'>

/** Puts a point of a knot on the page: across it and up, in cords. */
type Put = (across: number, up: number) => Point

/** Half the height of a square knot, in cords. */
export const KNOT_HALF = 2.2

/**
 * One square knot, in cords of their true thickness: a working cord over the fillers to one side and back, the other
 * behind them, out through its loops. Fillers run straight through; under two strands more than the workers there is
 * only an overhand knot to be drawn.
 */
export function squareKnot(pen: CordPen, centre: Point, cord: number, strands: number): readonly Shape[] {
  const put: Put = (across, up) => [centre[0] + across * cord, centre[1] + up * cord]
  const cordLine = (points: readonly Point[]): Shape => ({ ...pen, kind: 'line', width: cord, points: curve(points) })
  const fillers = Math.max(0, strands - 2)
  if (fillers === 0) return overhand(cordLine, put)
  const seen = strandsSeen(fillers)
  const half = seen / 2
  const side = half + 0.55
  return [
    ...Array.from({ length: seen }, (_, i): Shape => ({ ...pen, kind: 'line', width: cord, points: [put(i + 0.5 - half, KNOT_HALF), put(i + 0.5 - half, 0 - KNOT_HALF)] })),
    cordLine([put(side, KNOT_HALF), put(side + 0.2, 1.4), put(half - 0.2, 1)]),
    cordLine([put(half - 0.2, -1), put(side + 0.2, -1.4), put(side, 0 - KNOT_HALF)]),
    cordLine([
      put(0 - side, KNOT_HALF), put(-0.5 - side, 1.3), put(0 - half, 0.65), put(0, 0.6), put(half, 0.6), put(side + 0.45, 0),
      put(half, -0.6), put(0, -0.6), put(0 - half, -0.65), put(-0.5 - side, -1.3), put(0 - side, 0 - KNOT_HALF),
    ]),
    cordLine([put(0.3 - half, 1.05), put(-0.4 - half, 0.75), put(-0.65 - half, 0), put(-0.4 - half, -0.75), put(0.3 - half, -1.05)]),
  ]
}

/** Two strands tied together. */
const overhand = (line: (points: readonly Point[]) => Shape, put: Put): readonly Shape[] => [
  line([put(-0.5, KNOT_HALF), put(-0.6, 1), put(0.8, -0.4), put(0.5, 0 - KNOT_HALF)]),
  line([put(0.5, KNOT_HALF), put(0.9, 1), put(1.1, 0.2), put(0, -0.2), put(-1.1, 0.3), put(-0.4, 0.9), put(0.6, 0.2), put(-0.5, -1), put(-0.5, 0 - KNOT_HALF)]),
]

/** A lark's head: one cord doubled over a bar, its two strands drawn through the bight. `out` is the unit vector from the bar to where the strands go, `thick` the bar's thickness, m. */
export function larksHead(pen: CordPen, at: Point, out: Point, thick: number, cord: number): readonly Shape[] {
  const across: Point = [0 - out[1], out[0]]
  const put: Put = (side, away) => [at[0] + across[0] * side + out[0] * away, at[1] + across[1] * side + out[1] * away]
  const [half, bight] = [cord / 2, thick / 2 + 0.7 * cord]
  const strand = (side: number): Shape => ({ ...pen, kind: 'line', width: cord, points: [put(side, 0 - thick / 2 - 0.35 * cord), put(side, thick / 2 + 1.6 * cord)] })
  return [
    strand(0 - half), strand(half),
    { ...pen, kind: 'line', width: 0.95 * cord, points: curve([put(-0.9 * cord, bight - 0.35 * cord), put(-0.5 * cord, bight), put(0.5 * cord, bight), put(0.9 * cord, bight - 0.35 * cord)]) },
  ]
}
