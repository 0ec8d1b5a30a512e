import { metres, type Metres } from '../../../src/quantity/si'

export interface CriticalHeightInput {
  /** Radius at which the legs hold the pot, and at which they hang from the ring above (0: one hook), m. */
  readonly radius: Metres
  readonly ring: Metres
  /** Height of the loaded legs, m. */
  readonly height: Metres
  /** Strain of the legs under the load. */
  readonly strain: number
}

/**
 * How high the attachments of three or more equal legs must at least stand above the centre of gravity
 * for the upright position to be stable: -(a r0 / (2 h) + h a^2 / (2 eps l^2 + s^2)), s = a - r0. Negative: they
 * may be that far below it. From the least eigenvalue of the sway and tilt stiffness (small motions,
 * attachments fixed to the pot, all legs taut).
 * @example criticalHeight({ radius: metres(0.1), ring: metres(0), height: metres(0.6), strain: 0.02 }) // -0.2419
 */
export function criticalHeight({ radius: a, ring: r0, height: h, strain }: CriticalHeightInput): Metres {
  const s = a - r0
  const slack = 2 * strain * (h * h + s * s) + s * s
  return metres(a === 0 ? 0 : -((a * r0) / (2 * h) + (h * a * a) / slack))
}
