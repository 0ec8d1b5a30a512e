import { newtons, pascals, type Metres, type Newtons, type Pascals } from '../quantity/si'

/**
 * Peak stress at the inner side of an open hook of round wire, opposite the mouth, the load on the axis of
 * the bowl: F / A + M (r_n - r_i) / (A e r_i), M = F R, e = R - r_n, with r_n = c^2 / (2 (R - sqrt(R^2 - c^2)))
 * for a circle of radius c (Winkler and Bach; Shigley, Mechanical Engineering Design, curved beams).
 * `inside` is the bowl's width, R reaches to the wire's centre line. Pull positive.
 * @example hookPeakStress(metres(0.004), metres(0.024), newtons(100)) / 1e6 // 257.3
 */
export function hookPeakStress(wire: Metres, inside: Metres, load: Newtons): Pascals {
  const c = wire / 2
  const inner = inside / 2
  const R = inner + c
  // c^2 / (2 (R - root)) and R minus it, without the difference of near equals.
  const root = Math.sqrt((R - c) * (R + c))
  const neutral = (R + root) / 2
  const shift = (c * c) / (2 * (R + root))
  const area = Math.PI * c * c
  return pascals(load / area + (load * R * (neutral - inner)) / (area * shift * inner))
}

/**
 * Load at which such a hook first yields at its inner side, N; it opens for good only near its plastic hinge.
 * @example hookFirstYield(metres(0.004), metres(0.024), pascals(250e6)) // 97.17
 */
export const hookFirstYield = (wire: Metres, inside: Metres, yieldStress: Pascals): Newtons => newtons(yieldStress / hookPeakStress(wire, inside, newtons(1)))
