import { newtons, type Metres, type Newtons, type Radians } from '../quantity/si'

export interface OverBeamInput {
  /** Pulls of the two sides of a cord that lies over a beam, in either order. */
  readonly pulls: readonly [Newtons, Newtons]
  /** Friction of cord on beam, and the angle over which the cord lies on it: half a turn where both sides hang down. */
  readonly friction: number
  readonly turn: Radians
}

export interface OverBeam {
  /** Heavier side over lighter, infinite where one side is slack; and the largest ratio that friction holds. */
  readonly ratio: number
  readonly largestRatio: number
  /** Whether the cord runs over to the heavier side. */
  readonly runs: boolean
  /** The least pull of the lighter side that keeps the heavier from running. */
  readonly leastLight: Newtons
  /** Friction that would just hold these two pulls. */
  readonly frictionNeeded: number
  /** Force of the cord on the beam: both pulls together where they hang side by side. */
  readonly onBeam: Newtons
}

const largestRatioOf = (friction: number, turn: Radians): number => Math.exp(friction * turn)

/**
 * A cord over a beam with an unequal pull on either side: it stays while T1 <= T2 e^(mu phi) (Euler and
 * Eytelwein); the beam bears sqrt(T1^2 + T2^2 - 2 T1 T2 cos phi).
 * @example overBeam({ pulls: [newtons(30), newtons(60)], friction: 0.25, turn: radians(Math.PI) }).runs // false
 * @example overBeam({ pulls: [newtons(30), newtons(60)], friction: 0.22, turn: radians(Math.PI) }).runs // true
 */
export function overBeam({ pulls, friction, turn }: OverBeamInput): OverBeam {
  const heavy = Math.max(...pulls)
  const light = Math.min(...pulls)
  const ratio = heavy === light ? 1 : heavy / light
  const largestRatio = largestRatioOf(friction, turn)
  return {
    ratio,
    largestRatio,
    runs: ratio > largestRatio,
    leastLight: newtons(heavy / largestRatio),
    frictionNeeded: ratio === 1 ? 0 : Math.log(ratio) / turn,
    onBeam: newtons(Math.sqrt(Math.max(0, heavy * heavy + light * light - 2 * heavy * light * Math.cos(turn)))),
  }
}

export interface SidesInput {
  readonly weight: Newtons
  /** Lengths of the two sides from the beam down to what both hold together, m. */
  readonly lengths: readonly [Metres, Metres]
  readonly friction: number
  readonly turn: Radians
}

/** Pulls of the sides in the order given, and whether the cord had to run for them. */
export interface Sides {
  readonly pulls: readonly [Newtons, Newtons]
  readonly runs: boolean
}

/**
 * One load on both sides of a cord that was laid over the beam without pull and hangs plumb on both: both
 * stretch by as much, so the shorter side bears more, T1 / T2 = L2 / L1, until friction lets the cord run at
 * e^(mu phi), where it stops (Hooke; Euler and Eytelwein).
 * @example sharedOverBeam({ weight: newtons(90), lengths: [metres(0.6), metres(0.3)], friction: 0.3, turn: radians(Math.PI) }) // { pulls: [30, 60], runs: false }
 */
export function sharedOverBeam({ weight, lengths: [first, second], friction, turn }: SidesInput): Sides {
  const held = second / first
  const most = largestRatioOf(friction, turn)
  const ratio = Math.min(most, Math.max(1 / most, held))
  return { pulls: [newtons((weight * ratio) / (1 + ratio)), newtons(weight / (1 + ratio))], runs: ratio !== held }
}
