import { newtons, pascals, radians, type MetresPerSecond, type Newtons, type Pascals, type Radians } from '../quantity/si'

/** Half the density of air at 15 degrees and sea level, kg/m3 (ASCE 7, velocity pressure in SI units). */
const HALF_AIR_DENSITY = 0.613

/**
 * Pressure of the wind brought to rest: q = 0.613 V^2 (Bernoulli; ASCE 7, velocity pressure).
 * @example dynamicPressure(metresPerSecond(20)) // 245.2
 */
export const dynamicPressure = (speed: MetresPerSecond): Pascals => pascals(HALF_AIR_DENSITY * speed * speed)

/** What is left at a wind speed of what foliage sets against still air: area and drag together, 1 for all of it. */
export interface FoliageShare {
  readonly speed: MetresPerSecond
  readonly share: number
}

/**
 * Share read from a curve of rising speeds, straight between its points and level beyond both ends. Leaves
 * fold and turn in wind, so that drag grows more slowly than the square of its speed (Vollsinger et al. and
 * Rudnicki et al., Canadian Journal of Forest Research, 2005 and 2004).
 * @throws RangeError where the curve has no point or its speeds do not rise
 * @example foliageShareAt([{ speed: metresPerSecond(5), share: 1 }, { speed: metresPerSecond(10), share: 0.5 }], metresPerSecond(8)) // 0.7
 */
export function foliageShareAt(curve: readonly FoliageShare[], speed: MetresPerSecond): number {
  const [first] = curve
  if (first === undefined || curve.slice(1).some((point, i) => !(point.speed > (curve[i] ?? point).speed))) throw new RangeError('A foliage curve asks one point at least, and rising speeds')
  let before = first
  for (const point of curve) {
    if (speed <= point.speed) return point === first ? first.share : before.share + ((point.share - before.share) * (speed - before.speed)) / (point.speed - before.speed)
    before = point
  }
  return before.share
}

/** One thing in the wind: frontal area in still air, m2, its drag coefficient, and the share of that at this speed (1 for a pot). */
export interface InWind {
  readonly area: number
  readonly drag: number
  readonly share: number
}

/**
 * Push of the wind, N: q sum of share Cd A (definition of the drag coefficient).
 * @example windForce(pascals(100), [{ area: 0.04, drag: 0.75, share: 1 }, { area: 0.2, drag: 1, share: 0.35 }]) // 10
 */
export const windForce = (pressure: Pascals, parts: readonly InWind[]): Newtons => newtons(parts.reduce((sum, { area, drag, share }) => sum + pressure * area * drag * share, 0))

/** How a hanger stands in the wind: lean of its cords from the vertical, and the pull on the hook along them. */
export interface WindSwing {
  readonly lean: Radians
  readonly tension: Newtons
}

/**
 * In a steady wind: T = sqrt(W^2 + F^2), lean atan(F / W) (triangle of forces, the wind taken to act at the
 * centre of gravity).
 * @example steadySwing(newtons(40), newtons(30)) // { lean: Math.atan2(30, 40), tension: 50 }
 */
export const steadySwing = (weight: Newtons, force: Newtons): WindSwing => ({ lean: radians(Math.atan2(force, weight)), tension: newtons(Math.hypot(weight, force)) })

/**
 * The farthest swing and greatest pull where the same wind comes all at once on a hanger at rest, without
 * damping: twice the lean, and at its middle T = 3 sqrt(W^2 + F^2) - 2 W. (Energy of a pendulum whose gravity
 * is weight and wind together: it starts a lean away from its rest, and W_e (3 - 2 cos a) passes there.)
 * @example suddenSwing(newtons(40), newtons(30)) // { lean: 2 * Math.atan2(30, 40), tension: 70 }
 */
export const suddenSwing = (weight: Newtons, force: Newtons): WindSwing => ({
  lean: radians(2 * Math.atan2(force, weight)),
  tension: newtons(3 * Math.hypot(weight, force) - 2 * weight),
})

/** Halvings that leave nothing of an angle but rounding. */
const MOST_HALVINGS = 60

/**
 * The greatest pull on the hook to one side, N, where a wind comes all at once. With weight and wind together as one gravity
 * W_e, tilted by the lean a, the pull a swing p beyond that lean is W_e (3 cos p - 2 cos a) at a + p from the
 * vertical; its part aside grows until 3 cos(a + 2 p) = 2 cos a cos(a + p), or to the end of the swing, p = a.
 * @example suddenAside(newtons(100), newtons(0)) // 0
 */
export function suddenAside(weight: Newtons, force: Newtons): Newtons {
  const lean = Math.atan2(force, weight)
  const growing = (p: number): boolean => 3 * Math.cos(lean + 2 * p) > 2 * Math.cos(lean) * Math.cos(lean + p)
  let [from, to] = [0, lean]
  for (let i = 0; i < MOST_HALVINGS && !growing(lean); i++) {
    const middle = (from + to) / 2
    if (growing(middle)) from = middle
    else to = middle
  }
  return newtons(Math.hypot(weight, force) * (3 * Math.cos(to) - 2 * Math.cos(lean)) * Math.sin(lean + to))
}
