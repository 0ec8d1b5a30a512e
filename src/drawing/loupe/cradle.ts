import { strandsSeen } from '../bundle'
import { onStrand, runsOf } from '../cradle'
import { levelLine } from '../measure'
import { panelOf } from '../panel/strands'
import type { Vector } from '../pose'
import type { Scene } from '../scene'
import type { Point, Shape } from '../shape'
import { standingLegs } from '../legs'
import { around, type Detail } from './detail'
import { KNOT_HALF, squareKnot, type CordPen } from './knots'

/** Length of strand shown beyond the knot, in cords. */
const BEYOND = 7

/** A knot of the cradle seen straight on: from where strands come to it on either side, and of how many it is tied; they go straight on down. */
interface Met {
  readonly at: Point
  readonly from: readonly [Point, Point]
  readonly strands: number
}

/** The first knot of a net that is nearest the viewer: half the strands of two neighbours meet in a square knot and go on together. Null without a net. */
export function cradleDetail(scene: Scene): Detail | null {
  const met = panelOf(scene) === null ? ofLegs(scene) : ofPanel(scene)
  if (met === null) return null
  const { cord, pencil, answers } = scene
  const pen: CordPen = { link: 'seat', ink: 'cord', leg: null, pencil: pencil('cradle.kind', 'cradle.first', 'cord.diameter'), behind: false }
  const [x, z] = met.at
  const each = Math.max(1, Math.round(met.strands / 2))
  const reach = (BEYOND + KNOT_HALF) * cord
  return {
    code: 'cradle', link: 'seat', of: around(met.at, reach),
    shapes: [
      ...met.from.flatMap((from, side) => strandsFrom(pen, met.at, from, side === 0 ? -1 : 1, each, cord)),
      ...strandsDown(pen, met, cord),
      ...squareKnot(pen, met.at, cord, met.strands),
    ],
    dimensions: (unit) => (answers['cord.diameter'] === null ? [] : [levelLine({ path: 'cord.diameter', value: cord, pencil, ends: [x - cord / 2, x + cord / 2], at: z - reach - unit, feet: [z - reach, z - reach] }, 0.5 * unit)]),
  }
}

/** Strands of one side from as far as is shown to the top of the knot, where they lie beside those of the other. */
function strandsFrom(pen: CordPen, [x, z]: Point, from: Point, side: -1 | 1, strands: number, cord: number): readonly Shape[] {
  const far = Math.max(1e-9, Math.hypot(from[0] - x, from[1] - z))
  const [ux, uz] = [(from[0] - x) / far, (from[1] - z) / far]
  const seen = strandsSeen(strands)
  return Array.from({ length: seen }, (_, i): Shape => {
    const end: Point = [x + side * (i + 0.5) * cord, z + KNOT_HALF * cord]
    // The outermost strand of the bundle is the outermost in the knot.
    const out = side * (i + 0.5 - seen / 2) * cord
    const middle: Point = [x + (side * seen * cord) / 2 + ux * BEYOND * cord, end[1] + uz * BEYOND * cord]
    return { ...pen, kind: 'line', width: cord, points: [[middle[0] + uz * out, middle[1] - ux * out], [end[0] + ux * cord, end[1] + uz * cord], end] }
  })
}

function strandsDown(pen: CordPen, { at: [x, z], strands }: Met, cord: number): readonly Shape[] {
  const seen = strandsSeen(strands)
  return Array.from({ length: seen }, (_, i): Shape => {
    const across = (i + 0.5 - seen / 2) * cord
    return { ...pen, kind: 'line', width: cord, points: [[x + across, z - KNOT_HALF * cord], [x + across, z - (KNOT_HALF + BEYOND) * cord]] }
  })
}

function ofLegs(scene: Scene): Met | null {
  const { answers, pose, view } = scene
  const standing = new Set(standingLegs(scene))
  const knots = Array.from({ length: pose.legs }, (_, leg) => leg).filter((leg) => standing.has(leg) && standing.has((leg + 1) % pose.legs))
  if (answers['cradle.kind'] !== 'net' || answers['make.strands'] < 2 || knots.length === 0) return null
  const place = (leg: number): Vector => onStrand(scene, leg + 0.5, answers['cradle.first'])
  const nearest = knots.reduce((a, b) => (view.depth(place(b)) < view.depth(place(a)) ? b : a))
  const at = view.front(place(nearest))
  const half = Math.max(1, Math.ceil(answers['make.strands'] / 2))
  const next = (nearest + 1) % pose.legs
  const ends = runsOf(scene).flatMap(({ leg, aside, points }) => {
    const top = points[0]
    return top !== undefined && ((leg === nearest && aside > 0) || (leg === next && aside < 0)) ? [straightOn(place(nearest), top, pose.place([0, 0, 0]))] : []
  })
  const [one, other] = ends
  // Above the rim strands part only there: nothing to be seen.
  if (one === undefined || other === undefined) return null
  const [aside, up] = [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2]
  return { at, from: [[at[0] - aside, at[1] + up], [at[0] + aside, at[1] + up]], strands: 2 * half }
}

/** A strand's end from a knot, by whoever faces the knot: aside, and up along the pot. */
function straightOn(knot: Vector, end: Vector, base: Vector): Point {
  const [rx, ry] = [knot[0] - base[0], knot[1] - base[1]]
  const far = Math.max(1e-9, Math.hypot(rx, ry))
  const [dx, dy, dz] = [end[0] - knot[0], end[1] - knot[1], end[2] - knot[2]]
  const aside = Math.abs((dx * ry - dy * rx) / far)
  return [aside, Math.sqrt(Math.max(0, dx * dx + dy * dy + dz * dz - aside * aside))]
}

function ofPanel(scene: Scene): Met | null {
  const panel = panelOf(scene)
  const knot = panel?.ways.knots[0]
  if (panel === null || knot === undefined) return null
  const { view, pose } = scene
  const put = (v: Vector): Point => view.front(pose.place(v))
  const at = put(knot)
  const [corner] = panel.ways.strands
  const before = corner?.at(-2) ?? corner?.[0]
  if (before === undefined) return null
  const aside = Math.abs(put(before)[0])
  const up = put(before)[1]
  if (up <= at[1]) return null
  return { at, from: [[at[0] - aside, up], [at[0] + aside, up]], strands: Math.min(4, 2 * scene.answers['panel.front']) }
}
