import { newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'

/** Strands in one square knot. */
const IN_KNOT = 4

/**
 * Strands for a diamond whose widest row has so many knots: 4 k, since each row beyond the first takes up two
 * more strands on either side.
 * @example strandsForDiamond(3) // 12
 */
export const strandsForDiamond = (widest: number): number => IN_KNOT * widest

export interface DiamondNetInput {
  /** Downward pull on each strand above the net, from one side to the other, N: four for each knot of the widest row. */
  readonly strands: readonly Newtons[]
  /** Between neighbouring knots of one row, and from one row to the next, m. */
  readonly spacing: Metres
  readonly rowDistance: Metres
}

export interface DiamondNet {
  readonly ok: true
  /** Knots of the widest row. */
  readonly widest: number
  /** Rows from above, 1, 2 ... k ... 2, 1 knots: the vertical load that each knot passes on, N. */
  readonly rows: readonly (readonly Newtons[])[]
  /** Downward pull on each strand below the net, N. */
  readonly below: readonly Newtons[]
  /** Angle of the strands between two rows from the vertical, and their greatest tension, N. */
  readonly inclination: Radians
  readonly tension: Newtons
}

/** The strands are not four for each knot, or rows lie on one another. */
export interface NoDiamondNet {
  readonly ok: false
  readonly reason: 'notInFours' | 'noRowDistance'
}

/**
 * A net of alternating square knots in the form of a diamond. A knot passes on the vertical load of the four
 * strands that enter it, and is taken to share it evenly among the four that leave (statics leaves that open;
 * evenly is what a firm knot between equal strands does). Between rows a strand goes half a spacing sideways:
 * tan i = (spacing / 2) / row distance, T = V / cos i.
 * @example diamondNet({ strands: [newtons(9), newtons(1), newtons(2), newtons(3), newtons(4), newtons(5), newtons(6), newtons(7)], spacing: metres(0.06), rowDistance: metres(0.04) }).rows // [[14], [17, 20], [18.5]]
 */
export function diamondNet({ strands, spacing, rowDistance }: DiamondNetInput): DiamondNet | NoDiamondNet {
  const widest = strands.length / IN_KNOT
  if (!(Number.isInteger(widest) && widest > 0)) return { ok: false, reason: 'notInFours' }
  if (!(rowDistance > 0)) return { ok: false, reason: 'noRowDistance' }
  const pulls: number[] = [...strands]
  const rows: Newtons[][] = []
  let most = 0
  for (let row = 1; row < 2 * widest; row++) {
    const knots = widest - Math.abs(widest - row)
    const first = 2 * (widest - knots)
    const loads = Array.from({ length: knots }, (_, knot) => {
      const from = first + IN_KNOT * knot
      const load = pulls.slice(from, from + IN_KNOT).reduce((sum, pull) => sum + pull, 0)
      pulls.fill(load / IN_KNOT, from, from + IN_KNOT)
      return newtons(load)
    })
    rows.push(loads)
    // The last row has nothing between rows below it.
    if (row < 2 * widest - 1) most = Math.max(most, ...loads.map((load) => load / IN_KNOT))
  }
  const inclination = Math.atan2(spacing / 2, rowDistance)
  return { ok: true, widest, rows, below: pulls.map(newtons), inclination: radians(inclination), tension: newtons(most / Math.cos(inclination)) }
}
