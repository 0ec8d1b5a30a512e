import { newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'

export interface TugInput {
  readonly weight: Newtons
  readonly pull: Newtons
  /** Direction of the pull from straight down: a quarter turn is level, beyond it lifts. */
  readonly angle: Radians
  /** Depth of the centre of gravity and of the place that is pulled below the hook, along the hanger, m. */
  readonly centreDepth: Metres
  readonly pullDepth: Metres
}

/** A hanger at rest while something pulls at it; forces on the hook, N. */
export interface Tug {
  readonly ok: true
  /** Force on the hook, its part downwards and its part aside. */
  readonly tension: Newtons
  readonly down: Newtons
  readonly aside: Newtons
  /** Direction of that force, and lean of the hanger as a stiff pendulum, both from the vertical. */
  readonly direction: Radians
  readonly lean: Radians
}

/** The pull lifts the pot, or throws it over: its cords go slack and there is no rest to show. */
export interface Lifted {
  readonly ok: false
  readonly reason: 'lifted'
}

/**
 * An added pull P at an angle p: the hook bears W + P cos p down and P sin p aside. The hanger leans, as one
 * stiff piece about the hook, until moments agree: tan t = P b sin p / (W g + P b cos p), g and b the depths of
 * centre of gravity and pull (textbook statics). In a real hanger pot and cords lean a little apart.
 * @example tug({ weight: newtons(60), pull: newtons(80), angle: radians(Math.PI / 2), centreDepth: metres(0.8), pullDepth: metres(0.9) }).tension // 100
 */
export function tug({ weight, pull, angle, centreDepth, pullDepth }: TugInput): Tug | Lifted {
  const down = weight + pull * Math.cos(angle)
  const aside = pull * Math.sin(angle)
  const righting = weight * centreDepth + pull * pullDepth * Math.cos(angle)
  if (down <= 0 || righting <= 0) return { ok: false, reason: 'lifted' }
  return {
    ok: true,
    tension: newtons(Math.hypot(down, aside)),
    down: newtons(down),
    aside: newtons(aside),
    direction: radians(Math.atan2(aside, down)),
    lean: radians(Math.atan2(aside * pullDepth, righting)),
  }
}
