import { metres, newtons, radians, type Metres, type Newtons, type Radians } from '../../../src/quantity/si'

export interface SymmetricSlingInput {
  readonly legs: number
  /** Radius at which the legs hold the pot, and at which they hang from the ring above (0: one hook), m. */
  readonly radius: Metres
  readonly ring: Metres
  /** Length of a leg without load, m. */
  readonly unstretched: Metres
  /** Axial stiffness EA of one leg, N. */
  readonly stiffness: Newtons
  readonly weight: Newtons
}

export interface SymmetricSling {
  /** Height of the loaded legs and their loaded length, m. */
  readonly height: Metres
  readonly length: Metres
  /** Angle of a leg from the vertical. */
  readonly angle: Radians
  readonly tension: Newtons
  /** Horizontal pull of one leg on the pot, toward the axis if the ring is the smaller; N, never negative. */
  readonly inwardPull: Newtons
}

const MOST_HALVINGS = 200

/**
 * Equal legs round an axis, the weight on it: T = W l / (m h), with the loaded height h from
 * m EA (l / L0 - 1) h / l = W, l^2 = h^2 + (a - r0)^2 (textbook statics). The left side grows with h, so
 * halving finds the one height; any positive weight and stiffness have one.
 * @example symmetricSling({ legs: 3, radius: metres(0.3), ring: metres(0), unstretched: metres(0.5), stiffness: newtons(1e9), weight: newtons(60) }).tension // 25.0000
 */
export function symmetricSling({ legs, radius, ring, unstretched, stiffness, weight }: SymmetricSlingInput): SymmetricSling {
  const run = Math.abs(radius - ring)
  const lengthAt = (h: number): number => Math.sqrt(h * h + run * run)
  const lift = (h: number): number => (legs * stiffness * (lengthAt(h) / unstretched - 1) * h) / lengthAt(h)
  let low = Math.sqrt(Math.max(0, unstretched * unstretched - run * run))
  let high = low + unstretched
  while (lift(high) < weight) high *= 2
  for (let i = 0; i < MOST_HALVINGS; i++) {
    const middle = (low + high) / 2
    if (middle === low || middle === high) break
    if (lift(middle) < weight) low = middle
    else high = middle
  }
  const length = lengthAt(high)
  return {
    height: metres(high),
    length: metres(length),
    angle: radians(Math.atan2(run, high)),
    tension: newtons((weight * length) / (legs * high)),
    inwardPull: newtons((weight * run) / (legs * high)),
  }
}
