import type { ProfilePoint, TautPath } from '../statics/tautPath'
import { bundle, strandsSeen } from './bundle'
import { standingLegs } from './legs'
import type { Vector } from './pose'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** A point on the pot under the strands of a leg, so far along them from the gathering knot; of a half leg between two. */
export function onStrand({ pose }: Scene, leg: number, along: number): Vector {
  const way = pose.way(leg)
  const at = pose.place(onWay(way, pose.angle(leg), along))
  if (along <= way.knotToLeave) return at
  return partWay(at, Number.isInteger(leg) ? pose.upperEnd(leg) : pose.hangingPoint, Math.min(1, (along - way.knotToLeave) / way.free))
}

/** The same in the pot's frame, at any angle round it; beyond the leave point that point. */
function onWay(way: TautPath, angle: number, along: number): Vector {
  const { r, z } = along <= way.knotToBaseEdge ? { r: along, z: 0 } : onSide(way, Math.min(along, way.knotToLeave))
  return [r * Math.cos(angle), r * Math.sin(angle), z]
}

const partWay = (a: Vector, b: Vector, share: number): Vector => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share]

/** Lengths along a strand from the gathering knot at which it bends over the pot's side, base edge first. */
function bendsAlong({ touched, knotToBaseEdge }: TautPath): readonly (readonly [along: number, at: ProfilePoint])[] {
  let along: number = knotToBaseEdge
  return [...touched].reverse().map((at, i, side) => {
    const before = side[i - 1]
    if (before) along += Math.hypot(at.r - before.r, at.z - before.z)
    return [along, at] as const
  })
}

/** The point of the pot's side so far along a strand from the gathering knot. */
function onSide(path: TautPath, along: number): ProfilePoint {
  const bends = bendsAlong(path)
  const i = Math.max(1, bends.findIndex(([reached]) => reached >= along - 1e-12))
  const [lower, upper] = [bends[i - 1], bends[i]]
  if (!lower || !upper) return path.leave
  const share = (along - lower[0]) / (upper[0] - lower[0])
  return { r: lower[1].r + (upper[1].r - lower[1].r) * share, z: lower[1].z + (upper[1].z - lower[1].z) * share }
}

/** A run of strand from one leg's leave point to the gathering knot: where it passes, placed. */
export interface Run {
  readonly leg: number
  /** To which side of its leg it goes: half a leg on or back, 0 straight down. */
  readonly aside: number
  readonly strands: number
  readonly points: readonly Vector[]
}

/** In a net each leg parts into two at the rim, and half meets the neighbour's half at the first knots; else it runs straight down. */
export function runsOf(scene: Scene): readonly Run[] {
  const { answers, pose } = scene
  const first = answers['cradle.first']
  const strands = answers['make.strands']
  return standingLegs(scene).flatMap((leg): readonly Run[] => {
    const way = pose.way(leg)
    if (!isNet(scene) || strands <= 1 || first >= way.knotToLeave) return [{ leg, aside: 0, strands, points: downFrom(way, way.knotToLeave).map((along) => onStrand(scene, leg, along)) }]
    return [-0.5, 0.5].map((aside) => ({ leg, aside, strands: Math.max(1, Math.ceil(strands / 2)), points: asideToKnot(scene, leg, leg + aside) }))
  })
}

/** From a leg's leave point aside to a first knot between two legs, and from there down. */
function asideToKnot({ pose, answers }: Scene, leg: number, knot: number): readonly Vector[] {
  const first = answers['cradle.first']
  const [from, to] = [pose.way(leg), pose.way(knot)]
  const [start, end] = [pose.angle(leg), pose.angle(knot)]
  const shareAt = (along: number): number => (from.knotToLeave - along) / (from.knotToLeave - first)
  // Over flat sides it lies straight; round a curved one it bends where the way of its leg does, turning evenly.
  const aside = from.knotToBaseEdge === to.knotToBaseEdge
    ? downFrom(from, from.knotToLeave).filter((along) => along > first + 1e-9).map((along) => onWay(from, start + (end - start) * shareAt(along), along))
    : [onWay(from, start, from.knotToLeave), ...(first > to.knotToBaseEdge ? [] : [partWay(onWay(from, start, from.knotToBaseEdge), onWay(to, end, to.knotToBaseEdge), Math.min(1, shareAt(from.knotToBaseEdge)))])]
  return [...aside, ...downFrom(to, first).map((along) => onWay(to, end, along))].map(pose.place)
}

/** Lengths along a way from one of them down to the gathering knot, with those at which its side bends. */
const downFrom = (way: TautPath, from: number): readonly number[] => [from, ...bendsAlong(way).map(([along]) => along).filter((along) => along < from - 1e-9).reverse(), 0]

const isNet = ({ answers }: Scene): boolean => answers['cradle.kind'] === 'net'

/** Strands round the pot from the rim to the gathering knot, those before it or those behind, and the cradle's first knots. */
export function cradleShapes(scene: Scene, behind: boolean): readonly Shape[] {
  const { pose, view, pencil, cord } = scene
  const pen = { link: 'seat', ink: 'cord', pencil: pencil('make.legs', 'make.strands', 'cord.diameter') } as const
  const shapes = runsOf(scene).flatMap(({ leg, strands, points }): readonly Shape[] => {
    const hidden = points.slice(0, -1).reduce((sum, p) => sum + view.depth(p) - view.depth(pose.place([0, 0, 0])), 0) > 0
    if (hidden !== behind) return []
    return [{ ...pen, kind: 'cord', leg, behind, ...bundle(points.slice(0, -1).map(view.front), cord, strandsSeen(strands)) }]
  })
  return [...shapes, ...knotShapes(scene, behind)]
}

function knotShapes(scene: Scene, behind: boolean): readonly Shape[] {
  const { answers, pose, view, pencil, cord } = scene
  if (!isNet(scene)) return edgeMarks(scene, behind)
  const standing = new Set(standingLegs(scene))
  return Array.from({ length: pose.legs }, (_, leg) => leg).filter((leg) => standing.has(leg) && standing.has((leg + 1) % pose.legs)).flatMap((leg): readonly Shape[] => {
    const at = onStrand(scene, leg + 0.5, answers['cradle.first'])
    const hidden = view.depth(at) - view.depth(pose.place([0, 0, 0])) > 1e-9
    if (hidden !== behind) return []
    return [{ kind: 'circle', link: 'cradle', ink: 'cord', leg: null, pencil: pencil('cradle.kind', 'cradle.first', 'cord.diameter'), centre: view.front(at), radius: 1.6 * cord, width: 0, behind }]
  })
}

/** Without a net the pot is held where its strands turn over the base's edge. */
function edgeMarks(scene: Scene, behind: boolean): readonly Shape[] {
  const { pose, view, pencil, cord } = scene
  return standingLegs(scene).flatMap((leg): readonly Shape[] => {
    const at = onStrand(scene, leg, pose.way(leg).knotToBaseEdge)
    if (view.depth(at) - view.depth(pose.place([0, 0, 0])) > 1e-9 !== behind) return []
    return [{ kind: 'circle', link: 'cradle', ink: 'cord', leg: null, pencil: pencil('cradle.kind', 'cord.diameter'), centre: view.front(at), radius: 0.7 * cord, width: 0, behind }]
  })
}

/** Strands under the base, seen from the side, bent down into the gathering knot. */
export function underBase(scene: Scene): readonly Shape[] {
  const { pose, view, cord, pencil, gathering, answers } = scene
  const [x, z] = gathering
  return standingLegs(scene).map((leg): Shape => {
    const edge = view.front(onStrand(scene, leg, pose.way(leg).knotToBaseEdge))
    const axis: readonly Point[] = [[edge[0], edge[1] - cord / 2], [x, z - cord / 2]]
    return { kind: 'cord', link: 'gatheringTurn', ink: 'cord', leg, pencil: pencil('make.legs', 'make.strands', 'cord.diameter'), behind: false, ...bundle(axis, cord, Math.min(2, answers['make.strands'])) }
  })
}
