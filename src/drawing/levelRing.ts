import { bundle, strandsSeen } from './bundle'
import { standingLegs } from './legs'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** A ring that lies level, seen on edge, with the lark's heads over it and the cords by which it hangs. */
export function levelRingShapes(scene: Scene): readonly Shape[] {
  const { answers, pose, pencil, cord, view, check: { solved: { geometry: { ringRadius } } } } = scene
  if (ringRadius === 0) return []
  const wire = answers['ring.wire']
  const [, bottom] = view.front(pose.hangingPoint)
  const ring: Shape = {
    kind: 'line', link: 'ring', ink: 'wire', leg: null, pencil: pencil('make.top', 'ring.lies', 'ring.wire', 'ring.inside'), width: wire, behind: false,
    points: [[0 - ringRadius - wire / 2, bottom + wire / 2], [ringRadius + wire / 2, bottom + wire / 2]],
  }
  const heads = standingLegs(scene).map((leg): Shape => {
    const [x] = view.front(pose.upperEnd(leg))
    return { kind: 'line', link: 'leg', ink: 'cord', leg, pencil: pencil('make.legs', 'cord.diameter'), width: 2 * cord, behind: false, points: [[x, bottom + wire + 0.4 * cord], [x, bottom - 0.4 * cord]] }
  })
  return [...ringCords(scene, bottom + wire / 2), ring, ...heads]
}

/** Evenly round, each over a leg where there are as many of them. */
function ringCords({ answers, pencil, cord, carried, view, pose, check: { solved: { geometry: { ringRadius } } } }: Scene, from: number): readonly Shape[] {
  const count = answers['ring.cords']
  return Array.from({ length: count }, (_, i): Shape => {
    const angle = pose.angle(0) + (2 * Math.PI * i) / count
    const [x] = view.front([ringRadius * Math.cos(angle), ringRadius * Math.sin(angle), 0])
    const axis: readonly Point[] = [[x, from], [0, carried]]
    return { kind: 'cord', link: 'ringCord', ink: 'cord', leg: null, pencil: pencil('ring.cords', 'ring.cordStrands', 'ring.rise', 'cord.diameter'), behind: false, ...bundle(axis, cord, Math.min(3, strandsSeen(answers['ring.cordStrands']))) }
  })
}
