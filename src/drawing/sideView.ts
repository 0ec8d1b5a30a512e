import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import { boundsOf } from './bounds'
import { legEnds, legLabels } from './legs'
import { panelOf } from './panel/strands'
import { plantShapes } from './plant'
import { facing } from './potFrame'
import { potShapes } from './pot'
import { potInCords } from './potInCords'
import { sceneOf, standOf, type Stand } from './scene'
import type { Dimension, Drawing, Point, Shape } from './shape'
import { mappedDimension, mappedShape, movedShape, turnedPoint } from './shifted'
import { sideHungAnchors, sidePlaceAnchors } from './side/anchors'
import { sideBuilding } from './side/building'
import { sidePotDimensions, wallDimensions } from './side/dimensions'
import { leanOf } from './side/lean'
import { sidePanel } from './side/panel'
import { sideScene, type SideScene } from './side/sideScene'
import { sideConnector, sideTop, sideTopCord } from './side/top'
import { swingShapes } from './swing'
import { lowerAnchors, lowerScenes, lowerShapes } from './tiers'
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
  const turned = (at: Point): Point => (lean === 0 ? at : turnedPoint(at, [scene.hookAt, scene.bowl], lean))
  const turnedShape = (shape: Shape): Shape => (lean === 0 ? shape : mappedShape(shape, turned))
  // A fringe hangs plumb, wherever what it hangs from has gone.
  const plumb = (shape: Shape, by: Point): Shape => {
    if (lean === 0) return shape
    const [x, z] = turned(by)
    return movedShape(shape, [x - by[0], z - by[1]])
  }
  const hung = [...lowerShapes(lower), ...hungShapes(scene)].map((shape) => (isFringe(shape) ? plumb(shape, topOf(shape)) : turnedShape(shape)))
  const shapes = [
    ...sideBuilding(scene),
    ...[...sideConnector(scene), ...sideTopCord(scene)].map(turnedShape),
    ...hung,
    ...swingShapes(scene, scene.hookAt, scene.wall !== null),
    ...legLabels(scene).map(turnedShape),
  ]
  const hungAt = Object.entries({ ...sideHungAnchors(scene), ...lowerAnchors(lower) })
  return {
    ...framed(scene, shapes, [...sidePotDimensions(scene).map((d) => mappedDimension(d, turned)), ...wallDimensions(scene)]),
    anchors: { ...Object.fromEntries(hungAt.map(([key, at]) => [key, turned(at)])), ...sidePlaceAnchors(scene) },
    legs: legEnds(scene).map((ends) => (ends === null ? null : [turned(ends[0]), turned(ends[1])] as const)),
  }
}

const isFringe = (shape: Shape): boolean => shape.kind === 'line' && shape.link === null && shape.ink === 'cord'
const topOf = (shape: Shape): Point => (shape.kind === 'line' ? shape.points[0] : undefined) ?? [0, 0]

/** One hanger with its pot, those behind first. */
function hungShapes(scene: SideScene): readonly Shape[] {
  const panel = panelOf(scene)
  if (panel !== null) return sidePanel(scene, panel)
  return [
    ...potInCords(scene),
    ...sideTop(scene),
  ]
}

function standing(front: Stand): Drawing {
  const stand: Stand = { ...front, view: sideways(front.view) }
  return {
    ...framed(stand, [...plantShapes(stand), ...potShapes(stand)], sidePotDimensions(stand)),
    anchors: { load: facing(stand, 0, stand.answers['pot.height'] / 2) },
    legs: Array.from({ length: stand.answers['make.legs'] }, () => null),
  }
}

/** With room above for a name. */
function framed({ unit }: Stand, shapes: readonly Shape[], dimensions: readonly Dimension[]): Omit<Drawing, 'anchors' | 'legs'> {
  const bounds = boundsOf(shapes, dimensions, [], unit)
  return { shapes, dimensions, captions: { side: [(bounds.left + bounds.right) / 2, bounds.top + unit] }, corner: null, bounds: { ...bounds, top: bounds.top + 2.8 * unit } }
}
