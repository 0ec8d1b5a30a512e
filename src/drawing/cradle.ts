import type { ProfilePoint, TautPath } from '../statics/tautPath'
import { bundle, strandsSeen } from './bundle'
import { standingLegs } from './legs'
import type { Vector } from './pose'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** A point on the pot under a strand: at an angle round the pot, so far along the strand from the gathering knot. */
export function onStrand(scene: Scene, angle: number, along: number): Vector {
  const { path, place, hangingPoint } = scene.pose
  const at = (r: number, z: number): Vector => place([r * Math.cos(angle), r * Math.sin(angle), z])
  if (along <= path.knotToBaseEdge) return at(along, 0)
  if (along <= path.knotToLeave) {
    const { r, z } = onSide(path, along)
    return at(r, z)
  }
  const share = Math.min(1, (along - path.knotToLeave) / path.free)
  const leave = at(path.leave.r, path.leave.z)
  return leave.map((x, i) => x + ((hangingPoint[i] as number) - x) * share) as unknown as Vector
}

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

/** A run of strand from one leg's leave point to the gathering knot: angle round the pot at each station along it. */
interface Run {
  readonly leg: number
  readonly strands: number
  readonly stations: readonly (readonly [angle: number, along: number])[]
}

/** In a net each leg parts into two at the rim, and half meets the neighbour's half at the first knots; else it runs straight down. */
function runs(scene: Scene): readonly Run[] {
  const { answers, pose } = scene
  const first = answers['cradle.first']
  const { knotToLeave, knotToBaseEdge } = pose.path
  const strands = answers['make.strands']
  const net = isNet(scene) && strands > 1 && first < knotToLeave
  return standingLegs(scene).flatMap((leg): readonly Run[] => {
    const angle = pose.angle(leg)
    if (!net) return [{ leg, strands, stations: [[angle, knotToLeave], [angle, knotToBaseEdge], [angle, 0]] }]
    return [-0.5, 0.5].map((aside) => {
      const knot = pose.angle(leg + aside)
      const edge: readonly (readonly [number, number])[] = first > knotToBaseEdge
        ? [[knot, first], [knot, knotToBaseEdge]]
        : [[angle + ((knot - angle) * (knotToLeave - knotToBaseEdge)) / (knotToLeave - first), knotToBaseEdge], [knot, first]]
      return { leg, strands: Math.max(1, Math.ceil(strands / 2)), stations: [[angle, knotToLeave], ...edge, [knot, 0]] }
    })
  })
}

/** The stations with those between at which the side bends. */
function bent(path: TautPath, stations: Run['stations']): Run['stations'] {
  return stations.flatMap(([angle, along], i) => {
    const next = stations[i + 1]
    if (!next) return [[angle, along] as const]
    const between = bendsAlong(path).filter(([at]) => at < along - 1e-9 && at > next[1] + 1e-9).reverse()
    return [[angle, along] as const, ...between.map(([at]) => [angle + ((next[0] - angle) * (along - at)) / (along - next[1]), at] as const)]
  })
}

const isNet = ({ answers }: Scene): boolean => answers['cradle.kind'] === 'net'

/** Strands round the pot from the rim to the gathering knot, those before it or those behind, and the cradle's first knots. */
export function cradleShapes(scene: Scene, behind: boolean): readonly Shape[] {
  const { pose, view, pencil, cord } = scene
  const pen = { link: 'seat', ink: 'cord', pencil: pencil('make.legs', 'make.strands', 'cord.diameter') } as const
  const shapes = runs(scene).flatMap(({ leg, strands, stations }): readonly Shape[] => {
    const points = bent(pose.path, stations).map(([angle, along]) => onStrand(scene, angle, along))
    const hidden = points.slice(0, -1).reduce((sum, p) => sum + view.depth(p) - view.depth(pose.place([0, 0, 0])), 0) > 0
    if (hidden !== behind) return []
    return [{ ...pen, kind: 'cord', leg, behind, ...bundle(points.slice(0, -1).map(view.front), cord, strandsSeen(strands)) }]
  })
  return [...shapes, ...knotShapes(scene, behind)]
}

function knotShapes(scene: Scene, behind: boolean): readonly Shape[] {
  const { answers, pose, view, pencil, cord } = scene
  if (!isNet(scene)) return []
  const standing = new Set(standingLegs(scene))
  return Array.from({ length: pose.legs }, (_, leg) => leg).filter((leg) => standing.has(leg) && standing.has((leg + 1) % pose.legs)).flatMap((leg): readonly Shape[] => {
    const at = onStrand(scene, pose.angle(leg + 0.5), answers['cradle.first'])
    const hidden = view.depth(at) - view.depth(pose.place([0, 0, 0])) > 1e-9
    if (hidden !== behind) return []
    return [{ kind: 'circle', link: 'seat', ink: 'cord', leg: null, pencil: pencil('cradle.kind', 'cradle.first', 'cord.diameter'), centre: view.front(at), radius: 1.6 * cord, width: 0, behind }]
  })
}

/** Strands under the base, seen from the side, bent down into the gathering knot. */
export function underBase(scene: Scene): readonly Shape[] {
  const { pose, view, cord, pencil, gathering, answers } = scene
  const [x, z] = gathering
  return standingLegs(scene).map((leg): Shape => {
    const edge = view.front(onStrand(scene, pose.angle(leg), pose.path.knotToBaseEdge))
    const axis: readonly Point[] = [[edge[0], edge[1] - cord / 2], [x, z - cord / 2]]
    return { kind: 'cord', link: 'gatheringTurn', ink: 'cord', leg, pencil: pencil('make.legs', 'make.strands', 'cord.diameter'), behind: false, ...bundle(axis, cord, Math.min(2, answers['make.strands'])) }
  })
}
