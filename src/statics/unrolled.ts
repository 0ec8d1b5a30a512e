import { metres, radians, type Metres, type Radians } from '../quantity/si'

/** The straight side of a round pot: a cylinder or a cone, wider above or below; m. */
export interface RoundSide {
  readonly baseRadius: Metres
  readonly rimRadius: Metres
  readonly height: Metres
}

/** A point of the unrolled side, m: `along` round the pot from the generator that was kept in place, `up` the slope from the base. */
export interface Unrolled {
  readonly along: number
  readonly up: number
}

/**
 * Radius of the side, or of what it would be if it went on, at a height above the base.
 * @example radiusAt({ baseRadius: metres(0.08), rimRadius: metres(0.11), height: metres(0.2) }, metres(0.1)) // 0.0950
 */
export const radiusAt = ({ baseRadius, rimRadius, height }: RoundSide, z: Metres): Metres => metres(baseRadius + ((rimRadius - baseRadius) * z) / height)

/** Angle of the side from the vertical, above zero where it widens upwards. */
export const slantOf = ({ baseRadius, rimRadius, height }: RoundSide): Radians => radians(Math.atan2(rimRadius - baseRadius, height))

/**
 * Distance from the cone's tip to its base edge along the side, m; negative where the tip is above, infinite
 * for a cylinder.
 */
export const tipDistance = (side: RoundSide): number => side.baseRadius / Math.sin(slantOf(side))

/**
 * Lays the side flat: a point at height z, turned away by an angle from the generator kept in place. A cone
 * unrolls to a sector in which that angle counts times the sine of its slant; a cylinder to a strip (developable
 * surfaces; descriptive geometry). Lengths on the side stay what they are, so a taut strand is a straight line.
 * @example unroll({ baseRadius: metres(0.1), rimRadius: metres(0.1), height: metres(0.2) }, metres(0.05), radians(0.5)) // { along: 0.05, up: 0.05 }
 */
export function unroll(side: RoundSide, z: Metres, turn: Radians): Unrolled {
  const slant = slantOf(side)
  const up = z / Math.cos(slant)
  if (slant === 0) return { along: side.baseRadius * turn, up }
  const fromTip = tipDistance(side) + up
  const angle = turn * Math.sin(slant)
  // Written so that nothing large is subtracted where the tip is far away.
  return { along: fromTip * Math.sin(angle), up: up - 2 * fromTip * Math.sin(angle / 2) ** 2 }
}

/** A point of the side: height above the base and turn from the generator kept in place. */
export interface OnSide {
  readonly z: Metres
  readonly turn: Radians
}

/**
 * The way back from the flat to the pot, the opposite of unroll().
 * @example rollUp({ baseRadius: metres(0.1), rimRadius: metres(0.1), height: metres(0.2) }, { along: 0.05, up: 0.07 }) // { z: 0.07, turn: 0.5 }
 */
export function rollUp(side: RoundSide, { along, up }: Unrolled): OnSide {
  const slant = slantOf(side)
  if (slant === 0) return { z: metres(up), turn: radians(along / side.baseRadius) }
  const toBase = tipDistance(side)
  const fromTip = Math.sign(toBase) * Math.hypot(along, toBase + up)
  const climbed = (along * along + 2 * toBase * up + up * up) / (fromTip + toBase)
  return { z: metres(climbed * Math.cos(slant)), turn: radians(Math.atan2(along * Math.sign(toBase), (toBase + up) * Math.sign(toBase)) / Math.sin(slant)) }
}
