import { metres, type Metres } from '../quantity/si'

export interface SlidingSeatInput {
  /** Radius at which the strands leave the pot, m. */
  readonly leaveRadius: Metres
  /** Radius of the base edge, m. */
  readonly baseRadius: Metres
  /** Free length from the hanging point to the leave point, and its height, m. */
  readonly free: Metres
  readonly rise: Metres
}

/** q of the sliding limit: a^2/(2 l b) - a^2/(2 l^2), for leave radius a, base radius b, free length l. */
export const slidingRatio = ({ leaveRadius: a, baseRadius: b, free: l }: Omit<SlidingSeatInput, 'rise'>): number => (a * a) / (2 * l * b) - (a * a) / (2 * l * l)

/**
 * The sliding limit of the seat: how far above the leave points the centre of gravity may stand if
 * three or more equal strands, hanging from one point, could run without friction over rim and base
 * edge and the knot could shift. y = h q / (1 + q), q = a^2/(2 l b) - a^2/(2 l^2); inextensible
 * strands. Derived by energy (eight unknowns: pose of the pot and place of the knot) and checked
 * symbolically. Negative only if the free length is shorter than the base radius.
 * @example slidingSeatLimit({ leaveRadius: metres(0.1), baseRadius: metres(0.07), free: metres(0.65), rise: metres(0.6423) }) // 0.0574
 */
export function slidingSeatLimit(seat: SlidingSeatInput): Metres {
  const q = slidingRatio(seat)
  return metres((seat.rise * q) / (1 + q))
}

/**
 * The same where the leave points are fixed to the pot (endless friction): h a^2 / (2 eps l^2 + a^2)
 * for three or more equal legs from one point, eps their strain; by the eigenvalues of the sway and
 * tilt block of a symmetric sling. Above the leave points, as there; strain is a ratio.
 * @example lockedSeatLimit(metres(0.1), metres(0.61), metres(0.6), 0.02) // 0.2411
 */
export const lockedSeatLimit = (leaveRadius: Metres, free: Metres, rise: Metres, strain: number): Metres =>
  metres((rise * leaveRadius ** 2) / (2 * strain * free ** 2 + leaveRadius ** 2))

/**
 * The largest offset, as a share of the leave radius, that friction over rim and base can hold for
 * one pair of opposite strands: e/a <= tanh(mu alpha), from tensions T e^(+-mu alpha) that must
 * balance at the knot. `turn`: the whole turn of one strand, rad.
 * @example noSlipOffset(0.12, 1.8) // 0.2127
 */
export const noSlipOffset = (friction: number, turn: number): number => Math.tanh(friction * turn)
