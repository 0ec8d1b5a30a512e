import type { LinkCode } from '../check/linkResult'
import type { PartKey } from '../check/parts'
import type { FieldPath } from '../hanger/fields'
import type { CaseCode } from '../load/loadCases'
import { anchorsOf } from './anchors'
import { cradleShapes, underBase } from './cradle'
import { fringeShapes, gatheringShapes } from './gathering'
import { legShapes } from './legs'
import type { Pencil } from './pencil'
import { plantShapes } from './plant'
import { potShapes } from './pot'
import { sceneOf, type Scene } from './scene'
import type { Drawing, Point, Shape } from './shape'
import { movedPoint, movedShape } from './shifted'

/** A pot under another, and how far its own picture is moved to hang where it does, m. */
export interface LowerScene {
  readonly tier: number
  readonly scene: Scene
  readonly by: Point
}

/** A part of a lower pot, by the key it has on the ladder. */
export const keyOf = (link: LinkCode, tier: number): PartKey => `${link}@${tier === 2 ? 2 : 3}`

/** A shape of a lower pot by the key of its part. */
export const lowerKeyed = (shape: Shape, tier: number): Shape => ({ ...shape, link: shape.link === null || shape.link === 'load' ? shape.link : keyOf(shape.link as LinkCode, tier) })

/** What parts, parts in the upper pot's legs: the lower ones are drawn whole. */
const wholeCase = (code: CaseCode): CaseCode => (code === 'strandParted' || code === 'legParted' || code === 'legPartedSudden' ? 'watered' : code)

const hangsBeside = ({ answers }: Scene): boolean => answers['tiers.how'] === 'ownCords'

/** The pots under the first, each from the gathering knot above it or from the top; none where they are lifted out. `seen`: turns a scene to the view of the upper one. */
export function lowerScenes(upper: Scene, seen: (scene: Scene) => Scene): readonly LowerScene[] {
  const { check, code, unit, pose } = upper
  if (code === 'lowerOut') return []
  const found: LowerScene[] = []
  let [x, z] = hangsBeside(upper) ? upper.view.front(pose.hangingPoint) : underKnot(upper)
  for (const { tier, hung } of check.solved.tiers.slice(1)) {
    const hanging = sceneOf({ ...check, solved: hung }, wholeCase(code))
    if (hanging === null) return found
    const scene = seen(hanging)
    const by: Point = [x, z - scene.pose.hangingPoint[2]]
    found.push({ tier, scene: { ...scene, unit, pencil: lowerPencil(scene.pencil, tier) }, by })
    if (!hangsBeside(upper)) [x, z] = movedPoint(underKnot(scene), by)
  }
  return found
}

/** What is told of a lower pot stands in answers of its own. */
function lowerPencil(pencil: Pencil, tier: number): Pencil {
  const pot = tier === 2 ? 'second' : 'third'
  const own: Readonly<Partial<Record<FieldPath, FieldPath>>> = {
    'pot.rim': `${pot}.rim`, 'pot.height': `${pot}.height`, 'pot.base': `${pot}.base`, 'cradle.first': `${pot}.first`, 'make.strands': `${pot}.strands`, 'make.totalLength': `${pot}.strand`,
  }
  return (...paths) => pencil(...paths.map((path) => own[path] ?? path))
}

/** As every scene is first made. */
export const fromFront = (scene: Scene): Scene => scene

const underKnot = ({ gathering: [x, z], check }: Scene): Point => [x, z - check.solved.geometry.knot]

/** Whether a fringe hangs from the upper knot: not where strands go on from there. */
export const hasFringe = (scene: Scene): boolean => scene.check.solved.tiers.length === 0 || hangsBeside(scene)

/** The lower pots in their legs, the lowest first: whatever hangs above stands before it. */
export const lowerShapes = (lower: readonly LowerScene[]): readonly Shape[] => [...lower].reverse().flatMap(({ tier, scene, by }) =>
  [
    ...legShapes(scene, true), ...plantShapes(scene), ...potShapes(scene), ...cradleShapes(scene, true), ...fringeShapes(scene),
    ...underBase(scene), ...gatheringShapes(scene), ...cradleShapes(scene, false), ...legShapes(scene, false),
  ].map((shape) => lowerKeyed(movedShape(shape, by), tier)))

const POINTED = ['leg', 'cradle', 'seat', 'gatheringTurn', 'wrapHoop', 'gatheringGrip'] as const

/** Where their parts are. */
export const lowerAnchors = (lower: readonly LowerScene[]): Drawing['anchors'] => Object.fromEntries(lower.flatMap(({ tier, scene, by }) => {
  const anchors = anchorsOf(scene)
  return POINTED.flatMap((link) => {
    const at = anchors[link]
    return at === undefined ? [] : [[keyOf(link, tier), movedPoint(at, by)]]
  })
}))
