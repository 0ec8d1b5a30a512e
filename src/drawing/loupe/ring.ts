import { ringShapes, hookShapes } from '../hook'
import { uprightLine } from '../measure'
import type { Scene } from '../scene'
import type { Dimension, Point, Shape } from '../shape'
import { around, type Detail } from './detail'
import { curve } from './curve'
import { larksHead, type CordPen } from './knots'

/** Lark's heads of all legs: one cord folded gives two strands. */
export const headsOf = (strands: number): number => Math.max(1, Math.ceil(strands / 2))

/** Cords may cover so much of a ring, rad. */
const MOST = 1.7 * Math.PI

const pen = ({ pencil }: Scene): CordPen => ({ link: 'leg', ink: 'cord', leg: null, pencil: pencil('make.legs', 'make.strands', 'cord.diameter'), behind: false })

/** The ring with every cord that is folded over it; null where the legs hang from none. */
export function ringDetail(scene: Scene): Detail | null {
  const { answers, hangsFrom, pose, carried, check } = scene
  if (hangsFrom !== 'ring') return null
  if (check.solved.geometry.ringRadius > 0) return levelDetail(scene)
  const reach = answers['ring.inside'] / 2 + answers['ring.wire']
  const centre: Point = [0, (carried + pose.hangingPoint[2] + answers['ring.wire']) / 2]
  const ring = ringShapes(scene)
  return {
    code: 'ring', link: 'ring', of: around(centre, 1.5 * reach),
    shapes: [...(scene.hasStick || answers['connector.kind'] !== 'none' ? [] : hookShapes(scene, 0).slice(1, 2)), ...ring, ...headsOnRing(scene)],
    dimensions: (unit) => ringDimensions(scene, unit),
  }
}

/** Heads side by side round the lower part of the ring, as close as they lie; more than find room there crowd each other. Their strands go on down. */
function headsOnRing(scene: Scene): readonly Shape[] {
  const { answers, pose, cord } = scene
  const [wire, inside] = [answers['ring.wire'], answers['ring.inside']]
  const radius = (inside + wire) / 2
  const middle = pose.hangingPoint[2] + wire + inside / 2
  const heads = headsOf(pose.legs * answers['make.strands'])
  const step = Math.min((2 * cord) / radius, MOST / heads)
  const low = pose.hangingPoint[2] - 6 * cord - 0.25 * inside
  const angles = Array.from({ length: heads }, (_, i) => (i - (heads - 1) / 2) * step)
  const tail = (angle: number): readonly Shape[] => [-0.5, 0.5].map((side): Shape => {
    const out: Point = [Math.sin(angle), 0 - Math.cos(angle)]
    const from = radius + wire / 2 + 1.2 * cord
    const start: Point = [from * out[0] + side * cord * Math.cos(angle), middle + from * out[1] + side * cord * Math.sin(angle)]
    return { ...pen(scene), kind: 'line', width: cord, points: curve([start, [start[0] + 0.8 * cord * out[0], start[1] + 0.8 * cord * out[1] - cord], [0.75 * start[0], Math.min(start[1], low) - cord], [0.55 * start[0], low - 5 * cord]]) }
  })
  // The outermost first: those at the bottom lie over their strands.
  const inwards = [...angles].sort((a, b) => Math.abs(b) - Math.abs(a))
  return [
    ...inwards.flatMap(tail),
    ...inwards.flatMap((angle) => larksHead(pen(scene), [radius * Math.sin(angle), middle - radius * Math.cos(angle)], [Math.sin(angle), 0 - Math.cos(angle)], wire, cord)),
  ]
}

function ringDimensions(scene: Scene, unit: number): readonly Dimension[] {
  const { answers, pose, pencil, cord } = scene
  const [wire, inside, bottom] = [answers['ring.wire'], answers['ring.inside'], pose.hangingPoint[2]]
  const top = bottom + 2 * wire + inside
  const half = inside / 2
  return [
    uprightLine({ path: 'ring.inside', value: inside, pencil, ends: [bottom + wire, top - wire], at: 0 - half - wire - 3 * cord - 1.6 * unit, feet: [0, 0] }, { side: 'left', away: 0.4 * unit, height: bottom + wire + half }),
    uprightLine({ path: 'ring.wire', value: wire, pencil, ends: [top - wire, top], at: half + wire + 2 * unit, feet: [0, 0] }, { side: 'right', away: 0.4 * unit, height: top - wire / 2 }),
  ]
}

/** A ring that lies level, on edge: the heads of the leg in front. */
function levelDetail(scene: Scene): Detail {
  const { answers, pose, cord, pencil, view } = scene
  const wire = answers['ring.wire']
  const front = Array.from({ length: pose.legs }, (_, leg) => leg).reduce((a, b) => (view.depth(pose.upperEnd(b)) < view.depth(pose.upperEnd(a)) ? b : a))
  const [x, bottom] = view.front(pose.upperEnd(front))
  const heads = headsOf(answers['make.strands'])
  const reach = (heads + 3) * cord + 2 * wire
  const bar: Shape = { kind: 'line', link: 'ring', ink: 'wire', leg: null, pencil: pencil('make.top', 'ring.lies', 'ring.wire'), width: wire, behind: false, points: [[x - reach, bottom + wire / 2], [x + reach, bottom + wire / 2]] }
  const places = Array.from({ length: heads }, (_, i) => x + (i - (heads - 1) / 2) * 2 * cord)
  const strands = places.flatMap((at) => [-0.5, 0.5].map((side): Shape => ({ ...pen(scene), kind: 'line', width: cord, points: [[at + side * cord, bottom - 0.5 * cord], [at + side * cord, bottom - reach]] })))
  return {
    code: 'ring', link: 'ring', of: around([x, bottom], reach),
    shapes: [bar, ...strands, ...places.flatMap((at) => larksHead(pen(scene), [at, bottom + wire / 2], [0, -1], wire, cord))],
    dimensions: (unit) => [uprightLine({ path: 'ring.wire', value: wire, pencil, ends: [bottom, bottom + wire], at: x + reach + unit, feet: [x + reach, x + reach] }, { side: 'right', away: 0.4 * unit, height: bottom + wire / 2 })],
  }
}
