import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import { anchorsOf } from './anchors'
import { boundsOf } from './bounds'
import { cradleShapes, underBase } from './cradle'
import { fringeShapes, gatheringShapes } from './gathering'
import { legEnds, legLabels, legShapes } from './legs'
import { panelOf } from './panel/strands'
import { plantShapes } from './plant'
import { facing } from './potFrame'
import { potShapes } from './pot'
import { sceneOf, standOf, type Stand } from './scene'
import type { Dimension, Drawing, Point, Shape } from './shape'
import { mappedShape, turnedPoint } from './shifted'
import { sideBuilding } from './side/building'
import { leanOf } from './side/lean'
import { sidePanel } from './side/panel'
import { sideScene, type SideScene } from './side/sideScene'
import { sideConnector, sideTop, sideTopCord } from './side/top'
import { swingShapes } from './swing'
import { hasFringe, lowerAnchors, lowerScenes, lowerShapes } from './tiers'
import { sideways } from './view'

/**
 * The hanger from its right side in one situation, to the scale and heights of the view from the front: x is the depth,
 * m, 0 at the middle of the pot's base before any cord stretched, positive away from whoever stands in front, where the
 * wall is. A pot that a wall keeps from hanging plumb leans on it. Where the strands do not reach round the pot it
 * stands alone.
 */
export function sideView(check: CheckResult, code: CaseCode): Drawing {
  const front = sceneOf(check, code)
  if (front === null) return standing(standOf(check, code))
  const scene = sideScene(front)
  const lower = lowerScenes(scene, sideScene)
  const lean = leanOf(scene, lower)
  const turned = (at: Point): Point => turnedPoint(at, [scene.hookAt, scene.bowl], lean)
  const hung = [...lowerShapes(lower), ...hungShapes(scene), ...swingShapes(scene), ...legLabels(scene)]
  const shapes = [...sideBuilding(scene), ...[...sideConnector(scene), ...sideTopCord(scene), ...hung].map((shape) => mappedShape(shape, turned))]
  const anchors = Object.entries({ ...anchorsOf(scene), ...lowerAnchors(lower) })
  return {
    ...framed(scene, shapes, []),
    anchors: Object.fromEntries(anchors.map(([key, at]) => [key, turned(at)])),
    legs: legEnds(scene).map((ends) => (ends === null ? null : [turned(ends[0]), turned(ends[1])] as const)),
  }
}

/** One hanger with its pot, those behind first. */
function hungShapes(scene: SideScene): readonly Shape[] {
  const panel = panelOf(scene)
  if (panel !== null) return sidePanel(scene, panel)
  return [
    ...legShapes(scene, true),
    ...plantShapes(scene),
    ...potShapes(scene),
    ...cradleShapes(scene, true),
    ...(hasFringe(scene) ? fringeShapes(scene) : []),
    ...underBase(scene),
    ...gatheringShapes(scene),
    ...cradleShapes(scene, false),
    ...legShapes(scene, false),
    ...sideTop(scene),
  ]
}

function standing(front: Stand): Drawing {
  const stand: Stand = { ...front, view: sideways(front.view) }
  return {
    ...framed(stand, [...plantShapes(stand), ...potShapes(stand)], []),
    anchors: { load: facing(stand, 0, stand.answers['pot.height'] / 2) },
    legs: Array.from({ length: stand.answers['make.legs'] }, () => null),
  }
}

/** With room above for a name. */
function framed({ unit }: Stand, shapes: readonly Shape[], dimensions: readonly Dimension[]): Omit<Drawing, 'anchors' | 'legs'> {
  const bounds = boundsOf(shapes, dimensions, [], unit)
  return { shapes, dimensions, captions: { side: [(bounds.left + bounds.right) / 2, bounds.top + unit] }, corner: null, bounds: { ...bounds, top: bounds.top + 2.8 * unit } }
}
