import { beside, between, bundle, strandsSeen } from './bundle'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Legs that carry in this case, by number from 0. */
export const standingLegs = ({ pose }: Scene): readonly number[] =>
  Array.from({ length: pose.legs }, (_, leg) => leg).filter((leg) => leg !== pose.gone)

/** Ends of every leg from the front, as solved; null for one that is gone. */
export const legEnds = (scene: Scene): readonly (readonly [Point, Point] | null)[] =>
  Array.from({ length: scene.pose.legs }, (_, leg) =>
    leg === scene.pose.gone ? null : [scene.view.front(scene.pose.upperEnd(leg)), scene.view.front(scene.pose.leavePoint(leg))] as const)

const isBehind = ({ pose, view }: Scene, leg: number): boolean => view.depth(pose.leavePoint(leg)) > 0

/** Legs behind or in front of the pot: the strands that carry, at their thickness, with marks where they are knotted. */
export function legShapes(scene: Scene, behind: boolean): readonly Shape[] {
  return standingLegs(scene).filter((leg) => isBehind(scene, leg) === behind).flatMap((leg) => legShape(scene, leg))
}

function legShape(scene: Scene, leg: number): readonly Shape[] {
  const { pose, view, cord, carrying, code } = scene
  const from = view.front(pose.upperEnd(leg))
  const to = view.front(pose.leavePoint(leg))
  const parted = code === 'strandParted' && leg === 0
  const left = bundle([from, to], cord, strandsSeen(carrying) - (parted ? 1 : 0))
  const shape: Shape = { ...legPen(scene, leg), kind: 'cord', behind: false, ...left }
  const knots = knotMarks(scene, leg, from, to, left.width)
  return parted ? [shape, ...partedStrand(scene, beside([from, to], (left.width + cord) / 2)), ...knots] : [shape, ...knots]
}

/** The pen a leg is drawn with. */
export const legPen = ({ pencil, answers }: Scene, leg: number): { readonly link: 'leg'; readonly ink: 'cord'; readonly leg: number; readonly pencil: boolean } => ({
  link: 'leg', ink: 'cord', leg,
  pencil: pencil('make.legs', 'make.strands', 'make.build', 'cord.diameter', answers['make.legLength'] === null ? 'make.totalLength' : 'make.legLength'),
})

/** One strand that has parted: its two ends stand away from the leg, frayed. */
function partedStrand(scene: Scene, strand: readonly Point[]): readonly Shape[] {
  const { cord, unit } = scene
  const [from, to] = [strand[0] as Point, strand[1] as Point]
  const common = { ...legPen(scene, 0), kind: 'line', behind: false } as const
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const share = (distance: number): number => Math.min(0.3, distance / length)
  const away = ([x, z]: Point, aside: number): Point => [x + aside * unit, z]
  const end = (root: Point, upTo: number, droop: number): readonly Shape[] => {
    const bend = between(from, to, upTo)
    const tip = away([bend[0], bend[1] - droop * unit], 0.9)
    const frayed = [-0.35, 0, 0.35].map((side): Shape => ({ ...common, width: 0, points: [tip, [tip[0] + (0.45 + side * 0.4) * unit, tip[1] - (0.5 - side) * unit]] }))
    return [{ ...common, width: cord, points: [root, bend, away(between(bend, tip, 0.6), 0.05), tip] }, ...frayed]
  }
  return [...end(from, 0.42 - share(1.6 * unit), 1.1), ...end(to, 0.42 + share(1.6 * unit), -0.4)]
}

/** Where sinnets and knots usually run along a leg, as shares of it. */
const KNOTTED = [0.16, 0.84] as const

/** Where they are drawn: in the middle of the leg over the length that was told, else as usual. */
function knottedPart({ answers, pose }: Scene, leg: number): readonly [number, number] {
  const told = answers['make.knotted']
  if (told === null) return KNOTTED
  const [a, b] = [pose.upperEnd(leg), pose.leavePoint(leg)]
  const half = Math.min(0.5, told / (2 * Math.max(1e-9, Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]))))
  return [0.5 - half, 0.5 + half]
}

/** Small marks that suggest the knotting: bows for square knots, further apart where they alternate, slanted for a spiral. */
function knotMarks(scene: Scene, leg: number, from: Point, to: Point, width: number): readonly Shape[] {
  const { answers, cord, unit } = scene
  const build = answers['make.build']
  if (build === 'plain') return []
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const pitch = Math.max(build === 'alternating' ? 9 * cord : 4 * cord, unit * (build === 'alternating' ? 1.6 : 0.6))
  const [first, last] = knottedPart(scene, leg)
  const count = Math.floor((length * (last - first)) / pitch)
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const across: Point = [-along[1], along[0]]
  const reach = width / 2 + 0.8 * cord
  return Array.from({ length: count }, (_, i): Shape => {
    const middle = between(from, to, first + ((i + 0.5) * (last - first)) / count)
    const slant = build === 'spiral' ? 0.8 * reach : 0
    const bow = build === 'spiral' ? 0 : 0.35 * reach
    const point = (side: number, down: number): Point => [middle[0] + across[0] * side + along[0] * down, middle[1] + across[1] * side + along[1] * down]
    return { ...legPen(scene, leg), kind: 'line', width: 0, behind: false, points: [point(-reach, -slant - bow), point(0, bow), point(reach, slant - bow)] }
  })
}

/** Numbers of the legs, from 1, staggered along them so that no two meet. */
export function legLabels(scene: Scene): readonly Shape[] {
  const { pose, view } = scene
  const inOrder = standingLegs(scene).map((leg) => ({ leg, from: view.front(pose.upperEnd(leg)), to: view.front(pose.leavePoint(leg)) })).sort((a, b) => a.to[0] - b.to[0])
  return inOrder.map(({ leg, from, to }, i) => ({
    ...legPen(scene, leg), ink: 'note', kind: 'label', at: between(from, to, 0.56 + 0.12 * (i % 3)), text: String(leg + 1),
  }))
}
