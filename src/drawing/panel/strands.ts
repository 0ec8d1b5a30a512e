import type { PanelGeometry } from '../../check/panel/panelGeometry'
import { bundle, strandsSeen } from '../bundle'
import type { Vector } from '../pose'
import type { Scene } from '../scene'
import type { Point, Shape } from '../shape'

/** How a view turns a point to the page. */
export type Projection = (at: Vector) => Point

/** The panel of a scene; null of any other hanger. */
export const panelOf = ({ check }: Pick<Scene, 'check'>): PanelGeometry | null => {
  const { panel } = check.solved.geometry
  return panel?.ok ? panel : null
}

const goneLeg = ({ pose }: Scene, leg: number): boolean => pose.gone === leg

/** The pen of strands in front or behind. */
const pen = ({ pencil }: Scene, leg: number) => ({ link: 'leg', ink: 'cord', leg, pencil: pencil(leg < 2 ? 'panel.front' : 'panel.behind', 'panel.width', 'panel.rise', 'cord.diameter') } as const)

/** The strands of every group from the panel's edge to where they come to the pot, as solved. */
export function freeStrands(scene: Scene, to: Projection, kind: 'front' | 'back'): readonly Shape[] {
  const { answers, cord, pose } = scene
  const seen = strandsSeen(kind === 'front' ? answers['panel.front'] : Math.floor(answers['panel.behind'] / 2))
  return (kind === 'front' ? [0, 1] : [2, 3]).filter((leg) => !goneLeg(scene, leg)).map((leg): Shape =>
    ({ ...pen(scene, leg), kind: 'cord', behind: false, ...bundle([to(pose.upperEnd(leg)), to(pose.leavePoint(leg))], cord, seen) }))
}

/** Strands over the pot's side: in a net two of each corner go to its uppermost knot, the next two to the outer knots of the rows below. */
export function strandsOnPot(scene: Scene, { ways: { strands: ways } }: PanelGeometry, to: Projection): readonly Shape[] {
  const { answers, cord, pose } = scene
  const strands = answers['panel.front']
  return ways.flatMap((way, i) => {
    const seen = ways.length === 1 ? strandsSeen(strands) : Math.max(1, Math.min(2, strands - 2 * i))
    return [0, 1].filter((leg) => !goneLeg(scene, leg)).map((leg): Shape => {
      const points = leg === 0 ? way : way.map(([x, y, z]): Vector => [0 - x, y, z])
      return { ...pen(scene, leg), link: 'seat', kind: 'cord', behind: false, ...bundle(points.map((v) => to(pose.place(v))), cord, seen) }
    })
  })
}

/** The net in front, from its first knot down to the base edge: strands between its knots, and the knots. */
export function netShapes(scene: Scene, { ways: { knots, runs } }: PanelGeometry, to: Projection): readonly Shape[] {
  const { answers, cord, pose, pencil } = scene
  const at = (v: Vector): Point => to(pose.place(v))
  const common = { link: 'seat', ink: 'cord', leg: null, pencil: pencil('cradle.kind', 'cradle.first', 'cord.diameter', ...(answers['panel.knots'] === null ? [] : ['panel.knotSpacing'] as const)), behind: false } as const
  return [
    ...runs.map(([from, down]): Shape => ({ ...common, kind: 'cord', ...bundle([at(from), at(down)], cord, 2) })),
    ...knots.map((knot): Shape => ({ ...common, kind: 'circle', centre: at(knot), radius: 1.5 * cord, width: 0 })),
  ]
}

/** Strands behind the pot, hidden from its widest level down to its base. */
export function strandsBehind(scene: Scene, panel: PanelGeometry, to: Projection): readonly Shape[] {
  const { pose } = scene
  const { baseRadius } = panel.side.side
  return [2, 3].filter((leg) => !goneLeg(scene, leg)).map((leg): Shape => {
    const x = panel.points.lower[leg]?.[0] ?? 0
    const foot: Vector = [x, 0 - Math.sqrt(Math.max(0, baseRadius * baseRadius - x * x)), 0]
    return { ...pen(scene, leg), kind: 'line', points: [to(pose.leavePoint(leg)), to(pose.place(foot))], width: 0, behind: true }
  })
}

/** Strands under the base from front and back to the gathering knot, from the side. */
export function panelUnderBase(scene: Scene, panel: PanelGeometry): readonly Shape[] {
  const { pose, view, cord, pencil, gathering: [x, z] } = scene
  const r = panel.side.side.baseRadius
  const half = 0.6 * r
  return [-half, half].map((aside): Shape => {
    const [ex, ez] = view.front(pose.place([aside, 0, 0]))
    return { kind: 'cord', link: 'gatheringTurn', ink: 'cord', leg: null, pencil: pencil('panel.front', 'panel.behind', 'cord.diameter'), behind: false, ...bundle([[ex, ez - cord / 2], [x, z - cord / 2]], cord, 2) }
  })
}
