import { metres, newtons, radians, type Metres, type Newtons, type Radians } from '../quantity/si'
import { vCord, type CordTooShort, type VCord, type VCordInput } from './vCord'

export interface VCordOffsetInput extends VCordInput {
  /** How far the load's centre of gravity is from the stick's middle, along the stick; toward the second end positive. */
  readonly offset: Metres
  /** How far below the stick it is fixed to it, never negative: 0 where the loads hang freely. */
  readonly depth: Metres
}

/** How the stick hangs. Pairs: first end, second end. */
export interface VCordOffset {
  readonly ok: true
  /** Where the hook stands over the stick: along it from the middle, and above it. */
  readonly hookAt: Metres
  readonly height: Metres
  /** Lean of the stick; positive: the second end is the lower. */
  readonly tilt: Radians
  readonly tensions: readonly [Newtons, Newtons]
  /** Pull of the cord on each end square to the stick. */
  readonly lifts: readonly [Newtons, Newtons]
  /** Larger of the pushes into the stick's ends. */
  readonly thrust: Newtons
  /** Turn of the cord over the hook. */
  readonly turn: Radians
}

export type VCordOffsetOutcome =
  | VCordOffset
  | CordTooShort
  /** The load stands so far out that the other half of the cord would have to push. */
  | { readonly ok: false; readonly reason: 'slack' }
  /** Without friction the cord runs over the hook until the stick hangs steeply; fixed more than `depth` below a middle load would stay. */
  | { readonly ok: false; readonly reason: 'runs'; readonly depth: Metres }

/**
 * The cord tied to the hook at its middle, or held there by friction: the stick turns until the centre of
 * gravity is under the hook, tilt = atan(e / (h + d)), and the halves share unequally (equilibrium).
 * @example heldCord({ cord: metres(1), span: metres(0.6), weight: newtons(80), offset: metres(0.15), depth: metres(0) }).lifts.map((x) => Math.round(x * 100) / 100) // [18.73, 56.18]
 */
export function heldCord(input: VCordOffsetInput): VCordOffsetOutcome {
  const middle = vCord(input)
  return middle.ok ? hung(input, 0, middle.height) : middle
}

/**
 * The largest offset that friction over the hook holds without the cord slipping, m:
 * ((h + d) / h) (s / 2) tanh(mu phi / 2), phi the turn over the hook, twice the angle of the cord from the
 * horizontal; from tensions in the ratio e^(mu phi) (Euler and Eytelwein).
 * @example noSlipLoadOffset({ height: metres(0.4), angle: radians(Math.atan2(4, 3)) }, metres(0.6), metres(0), 0.24) // 0.0657
 */
export const noSlipLoadOffset = ({ height, angle }: Pick<VCord, 'height' | 'angle'>, span: Metres, depth: Metres, friction: number): Metres =>
  metres(((height + depth) / height) * (span / 2) * Math.tanh(friction * angle))

const MOST_HALVINGS = 200

/**
 * The cord running over the hook without friction: seen from the stick the hook stands on an ellipse about
 * the ends, (A cos t, B sin t), A = Lc/2, c = s/2, B = sqrt(A^2 - c^2), and hangs where its normal passes
 * through the centre of gravity: A e / cos t + B d / sin t = c^2. Both tensions are then equal. Such a place
 * is one alone, and stable, outside the ellipse's evolute (A e)^(2/3) + (B d)^(2/3) = c^(4/3), which for a
 * middle load is d > c^2 / B; inside it, and for any load hung freely, the cord runs.
 * @example freeCord({ cord: metres(1), span: metres(0.6), weight: newtons(80), offset: metres(0), depth: metres(0.2) }) // { ok: false, reason: 'runs', depth: 0.225 }
 */
export function freeCord(input: VCordOffsetInput): VCordOffsetOutcome {
  const middle = vCord(input)
  if (!middle.ok) return middle
  const [A, B, c, e, d] = [input.cord / 2, middle.height, input.span / 2, input.offset, input.depth]
  if (d <= 0 || Math.cbrt(A * e) ** 2 + Math.cbrt(B * d) ** 2 <= Math.cbrt(c) ** 4) return { ok: false, reason: 'runs', depth: metres((c * c) / B) }
  // Falls from B d to -B d over half the ellipse, through nothing once.
  const rest = (t: number): number => A * e * Math.sin(t) + B * d * Math.cos(t) - c * c * Math.sin(t) * Math.cos(t)
  let low = 0
  let high = Math.PI
  for (let i = 0; i < MOST_HALVINGS; i++) {
    const half = (low + high) / 2
    if (half === low || half === high) break
    if (rest(half) > 0) low = half
    else high = half
  }
  return hung(input, A * Math.cos(high), B * Math.sin(high))
}

/** Forces where the hook stands over (x, y) of the stick, the centre of gravity plumb under it. */
function hung({ span, weight, offset, depth }: VCordOffsetInput, x: number, y: number): VCordOffsetOutcome {
  const c = span / 2
  const tilt = Math.atan2(offset - x, depth + y)
  const sum = (weight * Math.cos(tilt)) / y
  const apart = (0 - weight * Math.sin(tilt) - x * sum) / c
  // Tension over length of each half.
  const first = (sum + apart) / 2
  const second = (sum - apart) / 2
  if (Math.min(first, second) < 0) return { ok: false, reason: 'slack' }
  return {
    ok: true,
    hookAt: metres(x),
    height: metres(y),
    tilt: radians(tilt),
    tensions: [newtons(first * Math.hypot(x + c, y)), newtons(second * Math.hypot(c - x, y))],
    lifts: [newtons(first * y), newtons(second * y)],
    thrust: newtons(Math.max(first * (x + c), second * (c - x))),
    turn: radians(Math.PI - Math.atan2(x + c, y) - Math.atan2(c - x, y)),
  }
}
