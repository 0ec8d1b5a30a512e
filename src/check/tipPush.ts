import { TIPS_ABOVE } from '../catalogue/seat'
import { radians } from '../quantity/si'
import { pinnedAt } from '../statics/seat/slidingSeat'
import { pinnedTipPush, slidingTipPush, type TipPush } from '../statics/seat/tipPush'
import { seatOf } from './links/seat/seatOf'
import type { Solved } from './solved'

/** The push that tips a pot, and whether its strands were reckoned locked to it; else they slide without friction. */
export type SeatPush = Extract<TipPush, { readonly ok: true }> & { readonly locked: boolean }

/**
 * The smallest level push on the pot's rim that tips it in its seat, just watered: on strands that run over it without
 * friction, or fixed to it where the cradle's first knots lock them. Null of a panel and of several pots one under
 * another, where the strands do not reach, and where only friction keeps it from tipping by itself.
 */
export function tipPush(solved: Solved): SeatPush | null {
  const { hanger: { answers }, geometry: { firstKnots, outline }, plan, tiers } = solved
  const seat = tiers.length > 0 ? null : seatOf(solved, 'watered')
  const rim = outline.pot.at(-1)
  if (seat === null || plan === null || rim === undefined) return null
  const at = { height: rim.z, directions: plan.asides, tipsAbove: radians(TIPS_ABOVE.value) }
  const locked = answers['cradle.kind'] === 'net' && firstKnots === 'on the side'
  const push = locked ? pinnedTipPush(pinnedAt(seat), at) : slidingTipPush(seat, at)
  return push.ok ? { ...push, locked } : null
}
