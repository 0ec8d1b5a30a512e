import { metres, newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'

export interface DrawnKnotInput {
  readonly strands: number
  /** Weight of the upper pot, and what hangs from the knot under it, N; not both nothing. */
  readonly own: Newtons
  readonly lower: Newtons
  /** Radius at which the strands leave the pot, radius of its base edge, and the way along its side between the two, m. */
  readonly leaveRadius: Metres
  readonly baseRadius: Metres
  readonly side: Metres
  /** From the hanging point on the axis along a strand to the knot, m. */
  readonly strand: Metres
  /**
   * Friction over rim and base edge, with the sense in which it is spent: above zero the strands are about to be
   * drawn down to the knot (flattest, greatest tension below), below zero about to be drawn up (steepest); zero: they run freely.
   */
  readonly friction: number
}

/** How the strands stand above the upper pot and under its base, angles from the vertical; forces N. */
export interface DrawnKnot {
  readonly ok: true
  readonly angleAbove: Radians
  readonly angleBelow: Radians
  /** Tension of one strand above the pot, and between base edge and knot. */
  readonly tensionAbove: Newtons
  readonly tensionBelow: Newtons
  /** How far the knot hangs below the base, m. */
  readonly drawn: Metres
  /** Turn of a strand over rim and base edge, and into the knot's wraps. */
  readonly turn: Radians
  readonly turnIntoKnot: Radians
  /** Pull that the wraps hold back where friction in them is left out: of all strands above less what hangs below; never negative. */
  readonly held: Newtons
}

/** The strand does not reach from the hanging point round the pot: it must be longer than `least`. */
export interface StrandTooShort {
  readonly ok: false
  readonly reason: 'strandTooShort'
  readonly least: Metres
}

const MOST_HALVINGS = 200

/**
 * The gathering knot under an upper pot, drawn down by what hangs from it. With b and g the angles of the strands
 * from the vertical above the pot and under it: n T cos b = W_own + W_lower, n T' cos g = W_lower,
 * T' = T e^(mu (b + g)), and a strand's length is kept, sin b = a / (strand - side - b_base / sin g) (equilibrium of
 * pot and knot; Euler and Eytelwein). Without a lower load the strands lie flat under the base, which is the
 * single pot; without an upper one and without friction they run straight on, g = b.
 * @example drawnKnot({ strands: 4, own: newtons(60), lower: newtons(0), leaveRadius: metres(0.3), baseRadius: metres(0.2), side: metres(0.15), strand: metres(0.85), friction: 0 }).tensionAbove // 18.75
 */
export function drawnKnot({ strands, own, lower, leaveRadius, baseRadius, side, strand, friction }: DrawnKnotInput): DrawnKnot | StrandTooShort {
  const least = side + baseRadius + leaveRadius
  if (!(strand > least)) return { ok: false, reason: 'strandTooShort', least: metres(least) }
  const share = lower / (own + lower)
  const sineAbove = (below: number): number => leaveRadius / (strand - side - baseRadius / Math.sin(below))
  const surplus = (below: number): number => {
    const above = Math.asin(Math.min(1, sineAbove(below)))
    return Math.cos(below) * Math.exp(friction * (above + below)) - share * Math.cos(above)
  }
  // From where the strands above would lie level to where those below do: knot pulled up too hard at one end, not at all at the other.
  let low = Math.asin(baseRadius / (strand - side - leaveRadius))
  let high = Math.PI / 2
  if (share > 0) {
    for (let i = 0; i < MOST_HALVINGS; i++) {
      const middle = (low + high) / 2
      if (middle === low || middle === high) break
      if (surplus(middle) > 0) low = middle
      else high = middle
    }
  }
  const above = Math.asin(Math.min(1, sineAbove(high)))
  const tension = (own + lower) / (strands * Math.cos(above))
  const tensionBelow = tension * Math.exp(friction * (above + high))
  return {
    ok: true,
    angleAbove: radians(above),
    angleBelow: radians(high),
    tensionAbove: newtons(tension),
    tensionBelow: newtons(tensionBelow),
    drawn: metres(share > 0 ? baseRadius / Math.tan(high) : 0),
    turn: radians(above + high),
    turnIntoKnot: radians(high),
    held: newtons(Math.max(0, strands * tensionBelow - lower)),
  }
}
