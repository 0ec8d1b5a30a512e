import { metres, type Metres, type Newtons } from '../quantity/si'

/**
 * Diameter of a round bundle of equal strands, m: d sqrt(n / packing), packing the share of the bundle's
 * cross-section that cord fills (areas; 0.907 is the most that round cords can fill, they then touch in threes).
 * @example bundleDiameter(16, metres(0.004), 0.81) * 1000 // 17.78
 */
export const bundleDiameter = (strands: number, cord: Metres, packing: number): Metres => metres(cord * Math.sqrt(strands / packing))

export interface WrappingCordInput {
  readonly wraps: number
  /** Diameters of the bundle that is wrapped and of the wrapping cord, m. */
  readonly bundle: Metres
  readonly cord: Metres
  /** Both ends together as left to pull on, m. */
  readonly tails: Metres
}

export interface WrappingCord {
  /** The whole cord to cut, m: wraps, fold and tails. */
  readonly length: Metres
  /** Once round the bundle, measured along the middle of the cord; and the loop laid under the wraps, there and back. */
  readonly round: Metres
  readonly fold: Metres
  /** Height of the wraps lying side by side. */
  readonly height: Metres
}

/**
 * Wrapping cord of a gathering knot: wraps times pi (D + d), the fold of twice the height n d on which they lie,
 * and both tails (plane geometry). The rise of each wrap, d over pi (D + d), is left out: below 1 in 500.
 * @example wrappingCord({ wraps: 7, bundle: metres(0.02), cord: metres(0.004), tails: metres(0.2) }).length // 0.7838
 */
export function wrappingCord({ wraps, bundle, cord, tails }: WrappingCordInput): WrappingCord {
  const round = Math.PI * (bundle + cord)
  const height = wraps * cord
  return { length: metres(wraps * round + 2 * height + tails), round: metres(round), fold: metres(2 * height), height: metres(height) }
}

/**
 * Whole wraps that a cord of given length makes, none where it is shorter than its tails.
 * @example wrapsFrom({ length: metres(0.79), bundle: metres(0.02), cord: metres(0.004), tails: metres(0.2) }) // 7
 */
export const wrapsFrom = ({ length, bundle, cord, tails }: Omit<WrappingCordInput, 'wraps'> & { readonly length: Metres }): number =>
  Math.max(0, Math.floor((length - tails) / (Math.PI * (bundle + cord) + 2 * cord) + ROUNDING))

/** A count this little short of a whole number is that number. */
const ROUNDING = 1e-9

/** Without friction or tension in the wraps no number of them grips. */
export type WrapsNeeded = { readonly ok: true; readonly wraps: number } | { readonly ok: false; readonly reason: 'noGrip' }

/**
 * The least whole number of wraps whose grip 2 pi mu n t is not below the pull, one at least. A model only, as
 * wrapGrip (friction.ts): no published test of a wrapped gathering knot exists.
 * @example wrapsForGrip(newtons(300), 0.3, newtons(30)) // { ok: true, wraps: 6 }
 */
export function wrapsForGrip(pull: Newtons, friction: number, tension: Newtons): WrapsNeeded {
  const each = 2 * Math.PI * friction * tension
  if (!(each > 0)) return { ok: false, reason: 'noGrip' }
  return { ok: true, wraps: Math.max(1, Math.ceil(pull / each - ROUNDING)) }
}
