import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import { anchorsOf } from './anchors'
import { boundsOf } from './bounds'
import { buildingShapes } from './building'
import { connectorShapes } from './connector'
import { lowerDimensions, lowerTapes } from './dimension/lower'
import { placeDimensions } from './dimension/place'
import { potDimensions } from './dimension/pot'
import { topDimensions } from './dimension/top'
import { fringeShapes, gatheredHalf, gatheringShapes } from './gathering'
import { hookBeforeRing, hookShapes, larksHeads, ringShapes } from './hook'
import { legEnds, legLabels } from './legs'
import type { PanelGeometry } from '../check/panel/panelGeometry'
import { panelDimensions, panelShapes } from './panel/panel'
import { freeStrands, netShapes, panelOf, panelUnderBase, strandsBehind, strandsOnPot } from './panel/strands'
import { plantShapes } from './plant'
import { facing, potAside } from './potFrame'
import { potShapes } from './pot'
import { potInCords } from './potInCords'
import { neighbours, neighbourShapes } from './row'
import { sceneOf, standOf, type Scene, type Stand } from './scene'
import type { Dimension, Drawing, Shape } from './shape'
import { shiftedDimension, shiftedShape } from './shifted'
import { hookPlaces, stickHeads, stickShapes, topCordShapes } from './stick'
import { swingShapes } from './swing'
import { topCordDimensions, topCordTapeShapes } from './topCordTape'
import { fromFront, lowerAnchors, lowerScenes, lowerShapes } from './tiers'
import { tapeCaption, tapeDimensions, tapeShapes } from './tape'

/**
 * The hanger from the front in one situation, to scale, m, with the origin at the middle of the pot's
 * base before any cord stretched; beside it one strand laid out straight, for its lengths are measured
 * along the cord. Where the
 * strands do not reach round the pot it stands beside them, and no leg is drawn.
 */
export function frontView(check: CheckResult, code: CaseCode): Drawing {
  const scene = sceneOf(check, code)
  if (scene === null) return unhung(standOf(check, code))
  const building = buildingShapes(scene)
  const hung = hangerShapes(scene)
  const others = neighbours(scene.answers, code)
  const lower = lowerScenes(scene, fromFront)
  const shapes = [
    ...aside(scene, [
      ...building,
      ...hookPlaces(scene).flatMap((x) => [...hookShapes(scene, x), ...connectorShapes(scene, x)]),
      ...topCordShapes(scene),
    ]),
    ...(scene.hasStick ? [] : neighbourShapes(others, building)),
    ...neighbourShapes(others, hung),
    ...lowerShapes(lower),
    ...hung,
    ...lowerTapes(scene, lower),
    ...swingShapes(scene, 0, false),
    ...legLabels(scene),
    ...tapeShapes(scene),
    ...topCordTapeShapes(scene),
  ]
  const dimensions = [...tapeDimensions(scene), ...topCordDimensions(scene), ...potDimensions(scene), ...lowerDimensions(scene, lower), ...panelMeasures(scene), ...placeDimensions(scene).map((d) => shiftedDimension(d, scene.stickAt)), ...topDimensions(scene)]
  const frame = framed(scene, shapes, dimensions, gatheredHalf(scene) + scene.gathering[0])
  return { ...frame, corner: lower.length > 0 ? null : frame.corner, anchors: { ...anchorsOf(scene), ...lowerAnchors(lower) }, legs: legEnds(scene) }
}

const aside = ({ stickAt, hasStick }: Scene, shapes: readonly Shape[]): readonly Shape[] => (hasStick && stickAt !== 0 ? shapes.map((shape) => shiftedShape(shape, stickAt)) : shapes)

const panelMeasures = (scene: Scene): readonly Dimension[] => {
  const panel = panelOf(scene)
  return panel === null ? [] : panelDimensions(scene, panel)
}

/** One hanger with its pot, and the stick it hangs from, those behind first. */
function hangerShapes(scene: Scene): readonly Shape[] {
  const panel = panelOf(scene)
  if (panel !== null) return planterShapes(scene, panel)
  return [
    ...potInCords(scene),
    ...aside(scene, stickShapes(scene)),
    ...stickHeads(scene),
    ...ringShapes(scene),
    ...hookBeforeRing(scene),
    ...larksHeads(scene),
  ]
}

/** A pot in its panel; what runs behind the pot is drawn again over it, hidden. */
function planterShapes(scene: Scene, panel: PanelGeometry): readonly Shape[] {
  const { front } = scene.view
  return [
    ...stickShapes(scene),
    ...panelShapes(scene, panel),
    ...freeStrands(scene, front, 'back'),
    ...plantShapes(scene),
    ...potShapes(scene),
    ...strandsBehind(scene, panel, front),
    ...fringeShapes(scene),
    ...panelUnderBase(scene, panel),
    ...gatheringShapes(scene),
    ...netShapes(scene, panel, front),
    ...strandsOnPot(scene, panel, front),
    ...freeStrands(scene, front, 'front'),
  ]
}

function unhung(stand: Stand): Drawing {
  const shapes = [...plantShapes(stand), ...potShapes(stand), ...tapeShapes(stand)]
  const dimensions = [...tapeDimensions(stand), ...potDimensions(stand)]
  return {
    ...framed(stand, shapes, dimensions, Math.min(...potAside(stand))),
    anchors: { load: facing(stand, 0, stand.answers['pot.height'] / 2) },
    legs: Array.from({ length: stand.answers['make.legs'] }, () => null),
  }
}

/** `clear`: below the pot nothing but the fringe is drawn, and it hangs left of this. */
function framed(stand: Stand, shapes: readonly Shape[], dimensions: readonly Dimension[], clear: number): Omit<Drawing, 'anchors' | 'legs'> {
  const laidOut = tapeCaption(stand)
  const underPot = dimensions.filter((d) => d.path === 'pot.rim' || d.path === 'pot.belly' || d.path === 'pot.length' || d.path === 'panel.width').flatMap((d) => [d.from[1], d.to[1], d.number[1]])
  return {
    shapes, dimensions,
    captions: { laidOut },
    bounds: boundsOf(shapes, dimensions, [laidOut], stand.unit),
    corner: [clear + 2 * stand.unit, Math.min(...underPot) - 0.8 * stand.unit],
  }
}
