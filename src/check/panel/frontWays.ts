import type { Answers } from '../../hanger/fields'
import { metres, radians } from '../../quantity/si'
import type { PanelPoints } from '../../statics/panel'
import { alongStrand } from '../../statics/panelStrand'
import type { Vec3 } from '../../statics/sling/result'
import { radiusAt, slantOf, type RoundSide } from '../../statics/unrolled'
import { netRows, netRuns, type NetKnot } from './netRows'

/** Where the strands in front lie on the pot, to be drawn: points in the pot's frame, y out from the wall. */
export interface FrontWays {
  /** From where the strands of the right corner touch the pot: in a net two to each of the uppermost knots on their side, the last of them the rest. */
  readonly strands: readonly (readonly Vec3[])[]
  /** Knots on the side, and the runs between them and from the lowest down to the base edge. */
  readonly knots: readonly Vec3[]
  readonly runs: readonly (readonly [Vec3, Vec3])[]
}

/** The net of a panel as it lies on the pot. */
export function frontWays(answers: Answers, side: RoundSide, points: PanelPoints): FrontWays {
  const rows = netRows(answers)
  const at = (knot: NetKnot): Vec3 => frontPoint(side, knot)
  const onSide = ({ along }: NetKnot): boolean => along > side.baseRadius
  const edge = ({ aside }: NetKnot): NetKnot => ({ along: side.baseRadius, aside })
  const down = (knot: NetKnot): NetKnot => (onSide(knot) ? knot : edge(knot))
  const last = rows.at(-1)?.at(0)
  const runs = [...netRuns(rows), ...(last === undefined ? [] : [[last, edge({ along: 0, aside: 0 })] as const])]
  return {
    strands: rows.slice(0, Math.ceil(rows.length / 2)).map((row) => wayToKnot(side, points, down(row.at(-1) ?? { along: 0, aside: 0 }))),
    knots: rows.flat().filter(onSide).map(at),
    runs: runs.filter(([from]) => onSide(from)).map(([from, to]) => [at(from), at(down(to))]),
  }
}

/** How far round from the very front a knot may be drawn, rad. */
const ROUND = 1.2

/** A point of the pot's front on its side. */
function frontPoint(side: RoundSide, { along, aside }: NetKnot): Vec3 {
  const z = Math.max(0, along - side.baseRadius) * Math.cos(slantOf(side))
  const r = radiusAt(side, metres(z))
  const turn = Math.max(0 - ROUND, Math.min(ROUND, aside / r))
  return [r * Math.sin(turn), r * Math.cos(turn), z]
}

/** Points on the way of a strand over the pot's side. */
const STEPS = 12

/** The straightest way over the side from where the strands of the right corner touch it to a knot in front. */
function wayToKnot(side: RoundSide, { front, axisFromWall }: PanelPoints, knot: NetKnot): readonly Vec3[] {
  const [x, y, height] = frontPoint(side, knot)
  const start = Math.atan2(front.touch[0], front.touch[1] - axisFromWall)
  const strand = { ...front, turn: radians(start - Math.atan2(x, y)) }
  return Array.from({ length: STEPS + 1 }, (_, i): Vec3 => {
    const { z, turn } = alongStrand(side, strand, metres(height), i / STEPS)
    const r = radiusAt(side, z)
    return [r * Math.sin(start - turn), r * Math.cos(start - turn), z]
  })
}
