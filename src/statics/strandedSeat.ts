import { metres, type Metres } from '../quantity/si'
import { solveLinear } from './linear/solveLinear'

/** One strand of a seat: where it leaves the pot and where it turns under its base, from the axis, m. */
export interface SeatStrand {
  readonly leave: readonly [x: number, y: number]
  readonly edge: readonly [x: number, y: number]
  /** Part of the weight that it bears upwards; all of them together 1. */
  readonly share: number
  /** Strain under its pull; 0 where it does not stretch. */
  readonly strain: number
  /** Length that stretches, m: of its free part where it is locked to the pot, else of the whole strand. */
  readonly stretches: number
}

export interface StrandedSeatInput {
  readonly strands: readonly SeatStrand[]
  /** Height of the point they all hang from above the leave points, m. */
  readonly rise: Metres
  /** Whether the strands are fixed to the pot where they leave it, or run over it to a knot that may shift. */
  readonly locked: boolean
}

/** So stiff that a strand does not stretch. */
const INEXTENSIBLE = 1e-7

/**
 * How far above the leave points the centre of gravity may stand, m, with strands of any places on the pot. The
 * pot hangs with its centre of gravity plumb under the hook, so what is left are five unknowns: where the hook
 * stands over the pot (3) and the knot under it (2). With M the second derivatives of the strands' energy over
 * the weight, and S what is left of M for the hook's two sideways moves once the others have settled, the upright
 * pot is stable while 1 / (distance of hook and centre) is below the least eigenvalue of S. Each strand of share w,
 * length l and rise h adds w l/h [(I - n n')/l + (I - m m')/b + (1 + 1/eps)/L (n, -m)(n, -m)'], n and m the
 * directions of its free part and of that under the base, b the way under the base. For equal strands round a
 * circle this is `slidingSeatLimit`, and locked `lockedSeatLimit`.
 */
export function strandedSeatLimit({ strands, rise, locked }: StrandedSeatInput): Metres {
  const size = locked ? 3 : 5
  const M = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (const { leave: [x, y], edge: [p, q], share, strain, stretches } of strands) {
    const [l, b] = [Math.hypot(x, y, rise), Math.hypot(p, q)]
    const along = [0 - x / l, 0 - y / l, rise / l, 0 - p / b, 0 - q / b]
    const pull = (share * l) / rise
    const stiff = (1 + 1 / Math.max(strain, INEXTENSIBLE)) / stretches
    M.forEach((row, i) => row.forEach((_, j) => {
      const both = (along[i] ?? 0) * (along[j] ?? 0)
      const turns = i < 3 === j < 3 ? ((i === j ? 1 : 0) - both) / (i < 3 ? l : b) : 0
      row[j] = (row[j] ?? 0) + pull * (turns + stiff * both)
    }))
  }
  const least = leastSideways(M)
  return metres(least > 0 ? rise - 1 / least : -Infinity)
}

/** Least stiffness against the two sideways moves of the hook, the other unknowns settled; 0 where these find no rest. */
function leastSideways(M: readonly (readonly number[])[]): number {
  const among = M.slice(2).map((row) => row.slice(2))
  const [x, y] = [0, 1].map((side) => solveLinear(among, M.slice(2).map((row) => row[side] as number)))
  if (!x?.ok || !y?.ok) return 0
  const left = (i: 0 | 1, settled: readonly number[], j: 0 | 1): number => settled.reduce((sum, s, k) => sum - (M[i]?.[k + 2] as number) * s, M[i]?.[j] as number)
  const [a, d, o] = [left(0, x.x, 0), left(1, y.x, 1), left(0, y.x, 1)]
  return (a + d) / 2 - Math.hypot((a - d) / 2, o)
}
