import { newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'

export interface WallHookInput {
  readonly weight: Newtons
  /** From the wall to the centre of gravity where the pot touches the wall, and to the place on the hook where the cord hangs, m. */
  readonly centreFromWall: Metres
  readonly projection: Metres
  /** Height of the hook above the place where the pot touches the wall, m. */
  readonly drop: Metres
}

export interface WallHook {
  readonly ok: true
  /** Whether the pot leans on the wall; otherwise it hangs clear and only its weight counts. */
  readonly leans: boolean
  /** Pull out of the wall, as large as the pot's push on it; force along the wall; both together, along the cord. */
  readonly pull: Newtons
  readonly shear: Newtons
  readonly resultant: Newtons
  /** Angle of the cord from the vertical. */
  readonly angle: Radians
  /** Bending of the hook at the wall's face, N m. */
  readonly moment: number
}

/** The pot leans but the hook is no higher than where it touches: nothing could balance it. */
export interface NoDrop {
  readonly ok: false
  readonly reason: 'noDrop'
}

/**
 * A hook or nail with a pot leaning on the wall without friction: H = W e / L, e = centre of gravity from the
 * wall less the projection (moments about the cord's place on the hook); cord angle atan(H / W); the
 * moment at the wall is W times the projection, since H runs along the hook.
 * @example wallHook({ weight: newtons(60), centreFromWall: metres(0.11), projection: metres(0.02), drop: metres(0.4) }).pull // 13.5
 */
export function wallHook({ weight, centreFromWall, projection, drop }: WallHookInput): WallHook | NoDrop {
  const lever = centreFromWall - projection
  const leans = lever > 0
  if (leans && drop <= 0) return { ok: false, reason: 'noDrop' }
  const pull = leans ? (weight * lever) / drop : 0
  return {
    ok: true,
    leans,
    pull: newtons(pull),
    shear: weight,
    resultant: newtons(Math.hypot(weight, pull)),
    angle: radians(Math.atan2(pull, weight)),
    moment: weight * projection,
  }
}
