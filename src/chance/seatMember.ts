import { FRICTION } from '../catalogue/scatter'
import { CENTRE_MARGIN } from '../catalogue/seat'
import type { LinkResult } from '../check/linkResult'
import type { TermCode } from '../check/termCodes'
import type { Member, StateIn } from './member'
import type { PotNow } from './potNow'
import { overCounted } from './spread'

/** What a pot that finds no upright rest is taken to use of its seat. */
const TOPPLES = 2

/**
 * The seat of a pot: how high the weight really sits against what strands, sliding or locked, hold upright; above that how far off
 * the axis it sits against what friction holds. A pot whose sling is not stable topples.
 */
export function seatMember(results: readonly LinkResult[], friction: number, now: PotNow, stateIn: StateIn): Member {
  const over = overCounted(FRICTION)
  const cases = new Map(results.map((result) => {
    const term = (code: TermCode): number => result.terms.find((t) => t.code === code)?.value ?? 0
    return [result.case, {
      byFriction: result.part === 'friction', demand: result.demand?.value ?? 0, capacity: result.capacity?.value ?? 0, turn: term('frictionOnPot') * term('turnAngle'),
    }]
  }))
  let drawn = 1
  return {
    draw: (z) => { drawn = over(z[friction]!) },
    use: (code) => {
      const seat = cases.get(code)
      if (seat === undefined) return 0
      if (now.topples[stateIn(code)]) return TOPPLES
      if (!seat.byFriction) return Math.max(0, seat.demand - CENTRE_MARGIN.value + now.rise) / seat.capacity
      // Friction holds e / a = tanh(mu alpha) at most, so a higher one helps less and less.
      const held = seat.capacity * (seat.turn > 0 ? Math.tanh(drawn * seat.turn) / Math.tanh(seat.turn) : 1)
      return now.offset / held
    },
  }
}
