import { metres, newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'

export interface VCordInput {
  /** Length of the cord from one end of the stick over the hook to the other, and between those ends along the stick, m. */
  readonly cord: Metres
  readonly span: Metres
  readonly weight: Newtons
}

/** A stick hung by a cord from both its ends over one hook, the load in the middle. */
export interface VCord {
  readonly ok: true
  /** Height of the hook above the stick. */
  readonly height: Metres
  /** Angle of either half of the cord from the horizontal. */
  readonly angle: Radians
  readonly tension: Newtons
  /** Push along the stick, never negative. */
  readonly thrust: Newtons
}

/** The cord does not reach: it must be longer than `least`. */
export interface CordTooShort {
  readonly ok: false
  readonly reason: 'cordTooShort'
  readonly least: Metres
}

/**
 * h = sqrt((Lc/2)^2 - (s/2)^2), T = W Lc / (4 h) = W / (2 sin q), H = W s / (4 h) = W / (2 tan q), q from
 * the horizontal (equilibrium; a cord that does not stretch).
 * @example vCord({ cord: metres(1), span: metres(0.6), weight: newtons(80) }) // { ok: true, height: 0.4, angle: Math.atan2(4, 3), tension: 50, thrust: 30 }
 */
export function vCord({ cord, span, weight }: VCordInput): VCord | CordTooShort {
  if (cord <= span) return { ok: false, reason: 'cordTooShort', least: span }
  const height = Math.sqrt((cord - span) * (cord + span)) / 2
  return {
    ok: true,
    height: metres(height),
    angle: radians(Math.atan2(2 * height, span)),
    tension: newtons((weight * cord) / (4 * height)),
    thrust: newtons((weight * span) / (4 * height)),
  }
}
