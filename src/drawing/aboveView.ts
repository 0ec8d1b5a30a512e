import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import { boundsOf } from './bounds'
import { bundle } from './bundle'
import { hull } from './hull'
import { legPen, standingLegs } from './legs'
import { potCircle } from './pot'
import { sceneOf, type Scene } from './scene'
import type { Drawing, Point, Shape } from './shape'

/** Distance of a leg's number from the pot's axis, over the leave point's. */
const LABEL_REACH = 1.12

/** The same hanger from above: rim, hidden base, ring and legs, numbered as from the front. Null as frontView. */
export function aboveView(check: CheckResult, code: CaseCode): Drawing | null {
  const scene = sceneOf(check, code)
  if (scene === null) return null
  const { pose, view, answers, pencil } = scene
  const circle = (radius: number, z: number): readonly Point[] => hull(potCircle(scene, radius, z).map(view.above))
  const pot = { kind: 'area', link: 'load', ink: 'pot', leg: null, pencil: pencil('pot.rim', 'pot.base') } as const
  const hanging = view.above(pose.hangingPoint)
  const legs = Array.from({ length: pose.legs }, (_, leg) => (leg === pose.gone ? null : [hanging, view.above(pose.leavePoint(leg))] as const))
  const shapes: Shape[] = [
    { ...pot, points: circle(answers['pot.rim'] / 2, answers['pot.height']), texture: 'paper', behind: false },
    { ...pot, points: circle(answers['pot.base'] / 2, 0), texture: 'open', behind: true },
    ...standingLegs(scene).map((leg): Shape => ({
      ...legPen(scene, leg), kind: 'cord', behind: false, ...bundle([hanging, view.above(pose.leavePoint(leg))], scene.cord, scene.carrying),
    })),
    ...topShapes(scene, hanging),
    ...standingLegs(scene).map((leg) => labelShape(scene, leg)),
  ]
  const { left, right, bottom, top } = boundsOf(shapes, [], scene.unit)
  const room = 1.6 * scene.unit
  return { shapes, dimensions: [], anchors: {}, legs, bounds: { left: left - room, right: right + room, bottom: bottom - room, top: top + room } }
}

/** The ring seen on edge, or the point where bunched cords hang. */
function topShapes({ answers, pencil, cord }: Scene, [x, y]: Point): readonly Shape[] {
  if (answers['make.top'] !== 'ring') {
    return [{ kind: 'circle', link: 'hook', ink: 'wire', leg: null, pencil: pencil('hook.wire'), centre: [x, y], radius: 1.5 * cord, width: 0, behind: false }]
  }
  const half = answers['ring.inside'] / 2 + answers['ring.wire']
  return [{ kind: 'line', link: 'ring', ink: 'wire', leg: null, pencil: pencil('ring.wire', 'ring.inside'), points: [[x - half, y], [x + half, y]], width: answers['ring.wire'], behind: false }]
}

function labelShape(scene: Scene, leg: number): Shape {
  const { pose, view, unit } = scene
  const middle = view.above(pose.place([0, 0, pose.path.leave.z]))
  const end = view.above(pose.leavePoint(leg))
  const [dx, dy] = [end[0] - middle[0], end[1] - middle[1]]
  const far = Math.max(1e-9, Math.hypot(dx, dy))
  const reach = LABEL_REACH + (1.1 * unit) / far
  return { ...legPen(scene, leg), ink: 'note', kind: 'label', at: [middle[0] + dx * reach, middle[1] + dy * reach], text: String(leg + 1) }
}
