import { bundle, strandsSeen } from './bundle'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Where the hooks stand, m from the middle: one, or one at each support of a stick on two. */
export const hookPlaces = ({ answers, hasStick }: Pick<Scene, 'answers' | 'hasStick'>): readonly number[] =>
  (hasStick && answers['stick.held'] === 'twoHooks' ? [0 - answers['stick.span'] / 2, answers['stick.span'] / 2] : [0])

/** A panel always hangs from a stick; elsewhere it is an answer of its own. */
export const stickSaid = ({ answers }: Pick<Scene, 'answers'>): readonly ['make.top'] | readonly [] => (answers['make.arrangement'] === 'panel' ? [] : ['make.top'])

/** Underside of the stick: the legs are tied to it, or their rings go round it. */
export const stickBottom = ({ answers, hangsFrom, pose }: Pick<Scene, 'answers' | 'hangsFrom' | 'pose'>): number =>
  pose.hangingPoint[2] + (hangsFrom === 'ring' ? answers['ring.wire'] + answers['ring.inside'] - answers['stick.diameter'] : 0)

/** The stick from the front, of its true length and thickness. */
export function stickShapes(scene: Scene): readonly Shape[] {
  const { answers, hasStick, pencil } = scene
  if (!hasStick) return []
  const bottom = stickBottom(scene)
  const [half, top] = [answers['stick.length'] / 2, bottom + answers['stick.diameter']]
  const points: readonly Point[] = [[-half, bottom], [half, bottom], [half, top], [-half, top]]
  const stick = { kind: 'area', link: 'stick', ink: 'wire', leg: null, pencil: pencil(...stickSaid(scene), 'stick.length', 'stick.diameter'), points, behind: false } as const
  return [{ ...stick, texture: 'paper' }, { ...stick, texture: 'open' }]
}

/** Lark's heads over the stick, one a leg, in their row. */
export function stickHeads({ answers, hangsFrom, pose, pencil, cord, view, check }: Scene): readonly Shape[] {
  // A panel brings its own, one a cord.
  if (hangsFrom !== 'stick' || check.solved.geometry.panel !== null) return []
  const bottom = pose.hangingPoint[2]
  const width = Math.max(cord, Math.min(2 * cord, answers['stick.bunch'] / pose.legs))
  return Array.from({ length: pose.legs }, (_, i): Shape => {
    const [x] = view.front(pose.upperEnd(i))
    const [towards] = view.front(pose.leavePoint(i))
    return {
      kind: 'line', link: 'leg', ink: 'cord', leg: null, pencil: pencil('make.legs', 'stick.bunch', 'cord.diameter'), width, behind: false,
      points: [[x, bottom + answers['stick.diameter'] + 0.3 * cord], [x, bottom], [x + Math.sign(towards - x) * 0.1 * cord, bottom - 0.6 * cord]],
    }
  })
}

/** Where the top cord is tied and where it passes over the hook; null where there is none, or it does not reach. */
export function topCordAxis(scene: Scene): readonly [Point, Point, Point] | null {
  const { answers, hasStick, carried, check } = scene
  if (!hasStick || answers['stick.held'] !== 'topCord' || check.solved.geometry.top === null) return null
  const half = answers['stick.span'] / 2
  const middle = stickBottom(scene) + answers['stick.diameter'] / 2
  return [[-half, middle], [0, carried], [half, middle]]
}

/** The top cord, all its strands that are seen, with its knots round the stick. */
export function topCordShapes(scene: Scene): readonly Shape[] {
  const axis = topCordAxis(scene)
  if (axis === null) return []
  const { answers, pencil, cord } = scene
  const common = { link: 'topCord', ink: 'cord', leg: null, pencil: pencil('stick.topCord', 'stick.span', 'stick.topStrands', 'cord.diameter'), behind: false } as const
  const seen = strandsSeen(answers['stick.topStrands'])
  const knot = (at: Point): Shape => ({ ...common, kind: 'line', width: seen * cord, points: [[at[0], at[1] - answers['stick.diameter'] / 2], [at[0], at[1] + answers['stick.diameter'] / 2]] })
  return [{ ...common, kind: 'cord', ...bundle(axis, cord, seen) }, knot(axis[0]), knot(axis[2])]
}
