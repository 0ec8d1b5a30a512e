import { LAG_IN_END_GRAIN, WET_SERVICE } from '../catalogue/timber'
import { WITHDRAWAL_ALLOWABLE, WITHDRAWAL_POWERS, WITHDRAWAL_ULTIMATE, type Withdrawn, type WithdrawnByAllowable } from '../catalogue/withdrawal'
import { metres, newtons, type Metres, type Newtons } from '../quantity/si'

const pulled = (constant: number, kind: Withdrawn, gravity: number, diameter: Metres, length: Metres): Newtons =>
  newtons(constant * gravity ** WITHDRAWAL_POWERS[kind].ofGravity * diameter ** WITHDRAWAL_POWERS[kind].ofDiameter * length)

/**
 * Mean pull that draws a fastening straight out of the side grain of seasoned wood: c G^a D^b L (USDA
 * Wood Handbook, chapter 8). `gravity` by volume at 12 % moisture; `diameter` outside the thread, at
 * the root of an annular nail; `length` the thread, or the nail, in the wood.
 * @example ultimateWithdrawal('woodScrew', 0.42, metres(0.00417), metres(0.03)) // 2388.8
 */
export const ultimateWithdrawal = (kind: Withdrawn, gravity: number, diameter: Metres, length: Metres): Newtons =>
  pulled(WITHDRAWAL_ULTIMATE[kind].value, kind, gravity, diameter, length)

/**
 * Pull allowed on the same for ten years, dry, before any other factor (AWC National Design
 * Specification, 12.2). `gravity` oven-dry; the tip of a lag screw is not counted in `length`.
 * @example allowableWithdrawal('lagScrew', 0.55, metres(0.0127), metres(0.0555625)) // 4247.8
 */
export const allowableWithdrawal = (kind: WithdrawnByAllowable, gravity: number, diameter: Metres, length: Metres): Newtons =>
  pulled(WITHDRAWAL_ALLOWABLE[kind].value, kind, gravity, diameter, length)

/**
 * Safety that the allowable hides: ultimate over allowable at one gravity.
 * @example impliedSafety('woodScrew') // 5.51
 */
export const impliedSafety = (kind: WithdrawnByAllowable): number => WITHDRAWAL_ULTIMATE[kind].value / WITHDRAWAL_ALLOWABLE[kind].value

/** Where and how the timber is. */
export interface Service {
  readonly wet: boolean
  readonly endGrain: boolean
}

/**
 * Factor on an allowable for wet service and end grain; null for a wood screw or nail in end grain,
 * for which nothing is allowed.
 * @example serviceFactor('lagScrew', { wet: true, endGrain: true }) // 0.525
 */
export function serviceFactor(kind: WithdrawnByAllowable, { wet, endGrain }: Service): number | null {
  if (endGrain && kind !== 'lagScrew') return null
  return (wet ? WET_SERVICE[kind].value : 1) * (endGrain ? LAG_IN_END_GRAIN.value : 1)
}

/**
 * Thread in the timber of a screw driven through something else first: what is left of its length,
 * at most its threaded part; never below nothing. `between`: board, plaster, plate or hook base.
 * @example threadInTimber(metres(0.06), metres(0.04), metres(0.0125)) // 0.04
 */
export const threadInTimber = (length: Metres, threaded: Metres, between: Metres): Metres => metres(Math.max(0, Math.min(length - between, threaded)))
