import { metres, radians, type Metres, type Radians } from '../quantity/si'
import type { Vec3 } from './sling/result'
import { radiusAt, rollUp, slantOf, tipDistance, unroll, type OnSide, type RoundSide, type Unrolled } from './unrolled'

/**
 * A strand from a panel to the front of a pot. Axes: x along the wall to the right, y from the wall into the
 * room, z up from the pot's base; the pot stands upright with its axis `axisFromWall` from the wall.
 */
export interface PanelStrandInput {
  readonly pot: RoundSide
  readonly axisFromWall: Metres
  /** Where the strand leaves the panel: to the right of the pot's middle (never negative: the left is its mirror), from the wall, above the pot's base, m. */
  readonly across: Metres
  readonly fromWall: Metres
  readonly height: Metres
  /** The first knot in front: its height above the base, and its turn to the right of the very front. */
  readonly knotHeight: Metres
  readonly knotTurn: Radians
}

export interface PanelStrand {
  readonly ok: true
  /** Where it leaves the panel, and where it comes to the pot, pot frame shifted to the wall: as the axes above, m. */
  readonly from: Vec3
  readonly touch: Vec3
  /** Unit vector of its pull on the pot. */
  readonly pull: Vec3
  /** Lengths from panel to pot, and on the pot to the knot, m. */
  readonly free: Metres
  readonly onPot: Metres
  /** Angle of the free part from the vertical. */
  readonly angle: Radians
  /** Turn in plan from the touching point to the knot. */
  readonly turn: Radians
}

/**
 * Why a taut strand cannot go so: the panel's edge is inside the pot; it is no higher than
 * where the strand comes to the pot; or the strand would run off the side over the rim or under the base, or round the tip.
 */
export interface NoPanelStrand {
  readonly ok: false
  readonly reason: 'insidePot' | 'panelTooLow' | 'offRim' | 'offBase' | 'roundTip'
}

/**
 * The plane that touches the side along the touching generator holds the panel's end of the strand too: unrolled
 * into it the whole strand is one straight line. In plan the generator is where the tangent touches the circle that
 * the side, drawn on, has at the height of the panel's edge. On a cylinder this is tan(slope) = (tangent + arc) / drop.
 * (Geodesics of developable surfaces; descriptive geometry.)
 * @example panelStrand({ pot: { baseRadius: metres(0.1), rimRadius: metres(0.1), height: metres(0.3) }, axisFromWall: metres(0.1), across: metres(0.1), fromWall: metres(0), height: metres(0.4), knotHeight: metres(0.05), knotTurn: radians(0) }).angle // 0.6335
 */
export function panelStrand({ pot, axisFromWall, across, fromWall, height, knotHeight, knotTurn }: PanelStrandInput): PanelStrand | NoPanelStrand {
  const off = Math.hypot(across, fromWall - axisFromWall)
  const circle = radiusAt(pot, height)
  // Above the rim only the side drawn on is in the way: the strand would come over the rim.
  if (!(off >= Math.abs(circle))) return { ok: false, reason: height > pot.height ? 'offRim' : 'insidePot' }
  // Turns count from the very front to the right.
  const generator = Math.atan2(across, fromWall - axisFromWall) - Math.acos(circle / off)
  const turn = generator - knotTurn
  const end: Unrolled = { along: -Math.sqrt((off - circle) * (off + circle)), up: height / Math.cos(slantOf(pot)) }
  const knot = unroll(pot, knotHeight, radians(turn))
  if (!(turn >= 0 && knot.along >= 0)) return { ok: false, reason: 'roundTip' }
  const run = knot.along - end.along
  const up = run === 0 ? knot.up : end.up + ((knot.up - end.up) * -end.along) / run
  const { z } = rollUp(pot, { along: 0, up })
  if (!(height > z)) return { ok: false, reason: 'panelTooLow' }
  const past = pastSide(pot, [z, knotHeight, turnedBack(pot, up, knot)])
  if (past !== null) return { ok: false, reason: past }
  const radius = radiusAt(pot, z)
  const touch: Vec3 = [radius * Math.sin(generator), axisFromWall + radius * Math.cos(generator), z]
  const free = Math.hypot(across - touch[0], fromWall - touch[1], height - z)
  return {
    ok: true,
    from: [across, fromWall, height],
    touch,
    pull: [(across - touch[0]) / free, (fromWall - touch[1]) / free, (height - z) / free],
    free: metres(free),
    onPot: metres(Math.hypot(knot.along, knot.up - up)),
    angle: radians(Math.acos(Math.min(1, (height - z) / free))),
    turn: radians(turn),
  }
}

/** Share of the pot's height by which rounding may miss rim and base. */
const ROUNDING = 1e-12

function pastSide({ height }: RoundSide, heights: readonly number[]): 'offRim' | 'offBase' | null {
  if (heights.some((z) => z > height * (1 + ROUNDING))) return 'offRim'
  return heights.some((z) => z < 0 - height * ROUNDING) ? 'offBase' : null
}

/** Height where a straight line of the unrolled cone, from its touching point so far up to its knot, comes nearest to the tip, if that is between its ends, else that of its knot. */
function turnedBack(pot: RoundSide, from: number, to: Unrolled): number {
  const [x, y] = [to.along, to.up - from]
  const length2 = x * x + y * y
  if (slantOf(pot) === 0 || length2 === 0) return rollUp(pot, to).z
  const share = (-(from + tipDistance(pot)) * y) / length2
  return rollUp(pot, share > 0 && share < 1 ? { along: share * x, up: from + share * y } : to).z
}

/** The same strand on the left. */
export const mirrored = (strand: PanelStrand): PanelStrand => ({ ...strand, from: flip(strand.from), touch: flip(strand.touch), pull: flip(strand.pull) })

const flip = ([x, y, z]: Vec3): Vec3 => [0 - x, y, z]

/** Height above the base and turn from the touching point of `share` of the way from it to the knot, for drawing. */
export function alongStrand(pot: RoundSide, strand: PanelStrand, knotHeight: Metres, share: number): OnSide {
  const from = strand.touch[2] / Math.cos(slantOf(pot))
  const to = unroll(pot, knotHeight, strand.turn)
  return rollUp(pot, { along: share * to.along, up: from + share * (to.up - from) })
}
