import { metres, type Metres, type Radians } from '../../quantity/si'
import { lasts, slidingSeatError, solveSlidingSeat, type SlidingSeat, type SlidingSeatError } from './slidingSeat'

export type HeightLimit =
  /** Up to this height above the base the centre of gravity may stand; `most` where nothing tips it that far up. */
  | { readonly ok: true; readonly limit: Metres; readonly beyond: boolean }
  /** It does not even last with its centre of gravity at the lowest height looked at. */
  | { readonly ok: false; readonly reason: 'TIPS_AT_LEAST'; readonly least: Metres }
  | { readonly ok: false; readonly reason: 'ERROR'; readonly error: SlidingSeatError }

const MOST_HALVINGS = 40

/**
 * How high the centre of gravity may stand above the base before the frictionless seat tips, between `least` and
 * `most`, to `within`; the rest it stands in may tilt by no more than `mostTilt` (an uneven pot leans more and more
 * before it goes). Found by halving: a lower centre of gravity never lasts less.
 */
export function slidingHeightLimit(seat: SlidingSeat, range: { readonly least: Metres; readonly most: Metres; readonly within: Metres; readonly mostTilt: Radians }): HeightLimit {
  const error = slidingSeatError(seat)
  if (error !== null) return { ok: false, reason: 'ERROR', error }
  const stands = (height: number): boolean => lasts(seat, solveSlidingSeat({ ...seat, cg: [seat.cg[0], seat.cg[1], height] }), range.mostTilt)
  if (!stands(range.least)) return { ok: false, reason: 'TIPS_AT_LEAST', least: range.least }
  if (stands(range.most)) return { ok: true, limit: range.most, beyond: true }
  let [low, high] = [range.least as number, range.most as number]
  for (let i = 0; i < MOST_HALVINGS && high - low > range.within; i++) {
    const middle = (low + high) / 2
    if (stands(middle)) low = middle
    else high = middle
  }
  return { ok: true, limit: metres(low), beyond: false }
}
