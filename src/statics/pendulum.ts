import { metres, seconds, STANDARD_GRAVITY, type Metres, type Radians, type Seconds } from '../quantity/si'

/**
 * Length of the plain pendulum that swings as a body does whose centre of gravity hangs `depth` below the
 * hook: (k^2 + D^2) / D, k its radius of gyration about the centre of gravity (Huygens; textbook mechanics).
 * @example equivalentLength(metres(0.5), metres(0.2)) // 0.58
 */
export const equivalentLength = (depth: Metres, gyration: Metres): Metres => metres(depth + (gyration * gyration) / depth)

/** Halves the distance to the mean far more than this often enough for every digit. */
const MOST_ROUNDS = 12

/**
 * Period of a whole swing there and back: 2 pi sqrt(L / g) / M(1, cos(a / 2)), M the arithmetic-geometric mean
 * (Gauss: the complete elliptic integral). `amplitude`: largest angle from the vertical, less than half a turn.
 * @example pendulumPeriod(metres(1), radians(0)) // 2.0064
 */
export function pendulumPeriod(length: Metres, amplitude: Radians): Seconds {
  let mean = 1
  let geometric = Math.cos(amplitude / 2)
  for (let i = 0; i < MOST_ROUNDS; i++) {
    const next = (mean + geometric) / 2
    geometric = Math.sqrt(mean * geometric)
    mean = next
  }
  return seconds((2 * Math.PI * Math.sqrt(length / STANDARD_GRAVITY)) / mean)
}
