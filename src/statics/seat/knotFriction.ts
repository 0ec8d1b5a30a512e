import { metres, type Metres, type Newtons, type Radians } from '../../quantity/si'
import { solveSling } from '../sling/solveSling'
import type { SlingInput } from '../sling/result'
import { lasts } from './slidingSeat'

/** One strand at the gathering knot: its pull above the rim, how far it turns over rim and base edge, and its edge point as seen from the knot along the base, m. */
export interface KnotStrand {
  readonly tension: Newtons
  readonly turn: Radians
  readonly edge: readonly [x: number, y: number]
}

/** Whether friction holds the strands where they lie; `spare`: what is left in the worst direction, as a share of all pulls, negative if it does not. */
export interface KnotFriction {
  readonly held: boolean
  readonly spare: number
}

/**
 * Whether strands need not slip: below the base each may pull with T e^(-mu a) to T e^(mu a) (capstan, both ways), and
 * those pulls must balance at the knot. All sums they can make fill a polygon whose sides run along the strands, so
 * zero lies in it if it does seen along every strand and square to it.
 */
export function knotFriction(strands: readonly KnotStrand[], friction: number): KnotFriction {
  const pulls = strands.map(({ tension, turn, edge: [x, y] }) => {
    const [grip, length] = [friction * turn, Math.hypot(x, y)]
    return { middle: tension * Math.cosh(grip), half: tension * Math.sinh(grip), x: x / length, y: y / length }
  })
  const all = pulls.reduce((sum, { middle }) => sum + middle, 0)
  if (!(all > 0) || pulls.some(({ half, x }) => !Number.isFinite(half) || !Number.isFinite(x))) return { held: false, spare: -1 }
  const spareSeen = (dx: number, dy: number): number => {
    let [out, reach] = [0, 0]
    for (const { middle, half, x, y } of pulls) {
      const along = x * dx + y * dy
      out += middle * along
      reach += half * Math.abs(along)
    }
    return (reach - Math.abs(out)) / all
  }
  const spare = Math.min(...pulls.flatMap(({ x, y }) => [spareSeen(x, y), spareSeen(0 - y, x)]))
  return { held: spare >= 0 - ROUNDING, spare }
}

const ROUNDING = 1e-9
const HALVINGS = 14

export interface HeldOffsetInput {
  /** The pot with its strands fixed where they leave it. */
  readonly sling: SlingInput
  readonly turns: readonly Radians[]
  /** Edge points as seen from the knot, along the base, m. */
  readonly edges: readonly (readonly [x: number, y: number])[]
  readonly friction: number
  /** Directions seen from above in which the weight may sit aside, rad; and how far at most, m. */
  readonly directions: readonly number[]
  readonly most: Metres
}

/** How far aside the weight may sit, and in which direction the least. `rests`: whether it is held with the weight where it is. */
export interface HeldOffset {
  readonly held: boolean
  readonly offset: Metres
  readonly direction: number | null
}

/**
 * The largest offset of the weight from where it is that friction holds in every one of the directions, no strand
 * slipping: the pulls above the rim are those of the sling with its strands fixed (solveSling), those below must balance
 * at the knot. Of one opposite pair e/a <= tanh(mu alpha). Zero where it is not held at all.
 */
export function heldOffset({ sling, turns, edges, friction, directions, most }: HeldOffsetInput): HeldOffset {
  const holds = (direction: number, offset: number): boolean => {
    const [x, y, z] = sling.cg
    const rest = solveSling({ ...sling, cg: [x + offset * Math.cos(direction), y + offset * Math.sin(direction), z] })
    if (!('T' in rest) || !lasts(sling, rest, Math.PI)) return false
    return knotFriction(rest.T.map((tension, i) => ({ tension, turn: turns[i] ?? (0 as Radians), edge: edges[i] ?? [0, 0] })), friction).held
  }
  if (!holds(0, 0)) return { held: false, offset: metres(0), direction: null }
  let best: HeldOffset = { held: true, offset: most, direction: null }
  for (const direction of directions) {
    if (holds(direction, best.offset)) continue
    let [low, high] = [0, best.offset as number]
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (low + high) / 2
      if (holds(direction, middle)) low = middle
      else high = middle
    }
    best = { held: true, offset: metres(low), direction }
  }
  return best
}
