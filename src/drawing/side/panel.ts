import type { PanelGeometry } from '../../check/panel/panelGeometry'
import { bundle } from '../bundle'
import { fringeShapes, gatheringShapes } from '../gathering'
import { freeStrands, netShapes, strandsBehind, strandsOnPot } from '../panel/strands'
import { plantShapes } from '../plant'
import { potShapes } from '../pot'
import type { Point, Shape } from '../shape'
import type { SideScene } from './sideScene'
import { sideTop } from './top'

/** A wall planter from its side: the knotted panel on edge, strands behind the pot and round its front. */
export function sidePanel(scene: SideScene, panel: PanelGeometry): readonly Shape[] {
  const to = scene.view.front
  return [
    ...panelOnEdge(scene, panel),
    ...freeStrands(scene, to, 'back'),
    ...plantShapes(scene),
    ...potShapes(scene),
    ...strandsBehind(scene, panel, to).map((shape): Shape => (shape.kind === 'line' ? { ...shape, width: scene.cord, behind: false } : shape)),
    ...fringeShapes(scene),
    ...underBase(scene, panel),
    ...gatheringShapes(scene),
    ...netShapes(scene, panel, to),
    ...strandsOnPot(scene, panel, to),
    ...freeStrands(scene, to, 'front'),
    ...sideTop(scene),
  ]
}

/** From the stick to the panel's lower edge, two cords thick where it is knotted. */
function panelOnEdge({ answers, view, cord, pencil, pose }: SideScene, { edgeFromAxis, edgeHeight }: PanelGeometry): readonly Shape[] {
  const pen = { link: 'leg', ink: 'cord', leg: null, pencil: pencil('panel.height', 'panel.cords', 'panel.thickness', 'cord.diameter'), behind: false } as const
  const [from, to] = [view.front(pose.hangingPoint), view.front([0, edgeFromAxis, edgeHeight])]
  const rows = Math.max(1, Math.floor(answers['panel.height'] / (6 * cord)))
  const at = (share: number): Point => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
  return [
    { ...pen, kind: 'cord', ...bundle([from, to], cord, 2) },
    ...Array.from({ length: rows }, (_, i): Shape => {
      const [x, z] = at((i + 0.5) / rows)
      return { ...pen, kind: 'line', width: 0, points: [[x - 1.5 * cord, z + 0.5 * cord], [x, z - 0.5 * cord], [x + 1.5 * cord, z + 0.5 * cord]] }
    }),
  ]
}

/** Strands under the base from its front and back edge to the gathering knot. */
function underBase({ pose, view, cord, pencil, gathering: [x, z] }: SideScene, panel: PanelGeometry): readonly Shape[] {
  const r = panel.side.side.baseRadius
  return [0 - r, r].map((out): Shape => {
    const [ex, ez] = view.front(pose.place([0, out, 0]))
    return { kind: 'cord', link: 'gatheringTurn', ink: 'cord', leg: null, pencil: pencil('panel.front', 'panel.behind', 'cord.diameter'), behind: false, ...bundle([[ex, ez - cord / 2], [x, z - cord / 2]], cord, 2) }
  })
}
