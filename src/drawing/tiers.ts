import type { LinkCode } from '../check/linkResult'
import type { PartKey } from '../check/parts'
import type { CaseCode } from '../load/loadCases'
import { anchorsOf } from './anchors'
import { cradleShapes, underBase } from './cradle'
import { potDimensions } from './dimension/pot'
import { fringeShapes, gatheringShapes } from './gathering'
import { legShapes } from './legs'
import { plantShapes } from './plant'
import { potShapes } from './pot'
import { sceneOf, type Scene } from './scene'
import type { Dimension, Drawing, Point, Shape } from './shape'
import { movedDimension, movedPoint, movedShape } from './shifted'

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
    found.push({ tier, scene: { ...scene, unit }, by })
    if (!hangsBeside(upper)) [x, z] = movedPoint(underKnot(scene), by)
  }
  return found
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

/** Their measures, as far as they are told apart from the first pot's. */
export const lowerDimensions = (lower: readonly LowerScene[]): readonly Dimension[] => lower.flatMap(({ tier, scene, by }) => {
  const pot = tier === 2 ? 'second' : 'third'
  const own = { 'pot.rim': `${pot}.rim`, 'pot.height': `${pot}.height`, 'pot.base': `${pot}.base` } as const
  return potDimensions(scene).flatMap((d): readonly Dimension[] => {
    const { path } = d
    if (path !== 'pot.rim' && path !== 'pot.height' && path !== 'pot.base') return []
    return [{ ...movedDimension(d, by), path: own[path], pencil: scene.pencil(own[path]) }]
  })
})

const POINTED = ['leg', 'cradle', 'seat', 'gatheringTurn', 'wrapHoop', 'gatheringGrip'] as const

/** Where their parts are. */
export const lowerAnchors = (lower: readonly LowerScene[]): Drawing['anchors'] => Object.fromEntries(lower.flatMap(({ tier, scene, by }) => {
  const anchors = anchorsOf(scene)
  return POINTED.flatMap((link) => {
    const at = anchors[link]
    return at === undefined ? [] : [[keyOf(link, tier), movedPoint(at, by)]]
  })
}))
