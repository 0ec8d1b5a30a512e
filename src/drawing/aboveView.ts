import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import type { Level } from '../load/outline'
import { boundsOf } from './bounds'
import { bundle, strandsSeen } from './bundle'
import { hull } from './hull'
import { legPen, standingLegs } from './legs'
import { levelLine } from './measure'
import type { PanelGeometry } from '../check/panel/panelGeometry'
import { freeStrands, netShapes, panelOf, strandsOnPot } from './panel/strands'
import { edgeOf } from './pot'
import { sceneOf, standOf, type Scene, type Stand } from './scene'
import { stickSaid } from './stick'
import type { Dimension, Drawing, Point, Shape } from './shape'
import { fromFront, lowerScenes } from './tiers'

/** Distance of a leg's number from the pot's axis, over the leave point's. */
const LABEL_REACH = 1.12

/** The same hanger from above: rim, hidden base, ring and legs, numbered as from the front; the pot alone where nothing hangs. */
export function aboveView(check: CheckResult, code: CaseCode): Drawing {
  const scene = sceneOf(check, code)
  if (scene === null) {
    const stand = standOf(check, code)
    return framed(stand, potOutlines(stand), [], Array.from({ length: stand.answers['make.legs'] }, () => null))
  }
  const { pose, view, cord, carrying } = scene
  const hanging = view.above(pose.hangingPoint)
  const ends = (leg: number): readonly [Point, Point] => [view.above(pose.upperEnd(leg)), view.above(pose.leavePoint(leg))]
  const panel = panelOf(scene)
  if (panel !== null) return framed(scene, planterFromAbove(scene, panel, hanging), behindLine(scene, panel), Array.from({ length: pose.legs }, (_, leg) => (leg === pose.gone ? null : ends(leg))))
  const shapes: Shape[] = [
    ...lowerScenes(scene, fromFront).flatMap((lower) => potOutlines(lower.scene)),
    ...potOutlines(scene),
    ...standingLegs(scene).map((leg): Shape => ({ ...legPen(scene, leg), kind: 'cord', behind: false, ...bundle(ends(leg), cord, strandsSeen(carrying)) })),
    ...topShapes(scene, hanging),
    ...standingLegs(scene).map((leg) => labelShape(scene, leg)),
  ]
  return framed(scene, shapes, [], Array.from({ length: pose.legs }, (_, leg) => (leg === pose.gone ? null : ends(leg))))
}

/** A pot in its panel before the wall, strands in front over the pot; those behind run down under its back. */
function planterFromAbove(scene: Scene, panel: PanelGeometry, hanging: Point): readonly Shape[] {
  const { above } = scene.view
  const { answers, pencil } = scene
  const half = answers['panel.width'] / 2
  const [wall, edge] = [0 - panel.points.axisFromWall, panel.edgeFromAxis]
  const line = (y: number, reach: number): readonly Point[] => [above([0 - reach, y, 0]), above([reach, y, 0])]
  return [
    ...potOutlines(scene),
    ...(panel.onWall ? [{ kind: 'line', link: 'fixing', ink: 'building', leg: null, pencil: pencil('panel.thickness'), points: line(wall, 1.5 * half), width: 0, behind: false } satisfies Shape] : []),
    ...netShapes(scene, panel, above),
    ...strandsOnPot(scene, panel, above),
    ...freeStrands(scene, above, 'back'),
    ...freeStrands(scene, above, 'front'),
    { kind: 'line', link: 'leg', ink: 'cord', leg: null, pencil: pencil('panel.width'), points: line(edge, half), width: scene.cord, behind: false },
    ...topShapes(scene, hanging),
    ...standingLegs(scene).map((leg) => labelShape(scene, leg)),
  ]
}

/** How far apart the strands behind the pot are, between the outermost. */
function behindLine({ answers, view, unit, pencil }: Scene, { points }: PanelGeometry): readonly Dimension[] {
  const wide = answers['panel.behindWidth']
  const wall = view.above([0, 0 - points.axisFromWall, 0])[1]
  return wide === 0 ? [] : [levelLine({ path: 'panel.behindWidth', value: wide, pencil, ends: [0 - wide / 2, wide / 2], at: wall + 1.6 * unit, feet: [wall, wall] }, 0.5 * unit)]
}

/** With room at the sides for what each leg pulls, and above for a name. */
function framed({ unit }: Stand, shapes: readonly Shape[], dimensions: readonly Dimension[], legs: Drawing['legs']): Drawing {
  const { left, right, bottom, top } = boundsOf(shapes, dimensions, [], unit)
  return {
    shapes, legs, dimensions, anchors: {}, corner: null,
    captions: { above: [(left + right) / 2, top + unit] },
    bounds: { left: left - 3.4 * unit, right: right + 3.4 * unit, bottom: bottom - 0.8 * unit, top: top + 2.8 * unit },
  }
}

function potOutlines(stand: Stand): readonly Shape[] {
  const { answers, view, pencil, check } = stand
  const { pot: levels, saucer, cover } = check.solved.geometry.outline
  const edge = (level: Level): readonly Point[] => hull(edgeOf(stand, level).map(view.above))
  const rim = levels[levels.length - 1] as Level
  const base = levels[0] as Level
  const belly = levels.reduce((a, b) => (b.across > a.across ? b : a))
  const pot = { kind: 'area', link: 'load', ink: 'pot', leg: null, pencil: pencil('pot.rim', ...(answers['pot.shape'] === 'cylinder' ? [] : ['pot.base'] as const)) } as const
  const around = [...(belly.across > Math.max(rim.across, base.across) ? [belly] : []), ...[saucer, cover].flatMap((vessel) => (vessel === null ? [] : [vessel[0] as Level]))]
  return [
    ...around.map((level): Shape => ({ ...pot, points: edge(level), texture: 'paper', behind: false })),
    ...around.map((level): Shape => ({ ...pot, points: edge(level), texture: 'open', behind: false })),
    { ...pot, points: edge(rim), texture: 'paper', behind: false },
    { ...pot, points: edge(rim), texture: 'open', behind: false },
    { ...pot, points: edge(base), texture: 'open', behind: true },
  ]
}

/** The ring or stick seen on edge, or the point where bunched cords hang. */
function topShapes(scene: Scene, [x, y]: Point): readonly Shape[] {
  const { answers, hangsFrom, hasStick, stickAt, pencil, cord, check } = scene
  if (hasStick) {
    const half = answers['stick.length'] / 2
    return [{ kind: 'line', link: 'stick', ink: 'wire', leg: null, pencil: pencil(...stickSaid(scene), 'stick.length', 'stick.diameter'), points: [[x + stickAt - half, y], [x + stickAt + half, y]], width: answers['stick.diameter'], behind: false }]
  }
  if (hangsFrom !== 'ring') {
    return [{ kind: 'circle', link: 'hook', ink: 'wire', leg: null, pencil: pencil('hook.wire'), centre: [x, y], radius: 1.5 * cord, width: 0, behind: false }]
  }
  const ring = { link: 'ring', ink: 'wire', leg: null, pencil: pencil('ring.wire', 'ring.inside'), width: answers['ring.wire'], behind: false } as const
  const { ringRadius } = check.solved.geometry
  if (ringRadius > 0) return [{ ...ring, kind: 'circle', centre: [x, y], radius: ringRadius }]
  const half = answers['ring.inside'] / 2 + answers['ring.wire']
  return [{ ...ring, kind: 'line', points: [[x - half, y], [x + half, y]] }]
}

function labelShape(scene: Scene, leg: number): Shape {
  const { pose, view, unit } = scene
  const middle = view.above(pose.place([0, 0, pose.path.leave.z]))
  const end = view.above(pose.leavePoint(leg))
  const [dx, dy] = [end[0] - middle[0], end[1] - middle[1]]
  const far = Math.max(1e-9, Math.hypot(dx, dy))
  const reach = LABEL_REACH + (0.6 * unit) / far
  return { ...legPen(scene, leg), ink: 'note', kind: 'label', at: [middle[0] + dx * reach, middle[1] + dy * reach], text: String(leg + 1) }
}
