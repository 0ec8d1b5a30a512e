import type { CheckResult } from '../check/checkHanger'
import type { CaseCode } from '../load/loadCases'
import { anchorsOf } from './anchors'
import { boundsOf } from './bounds'
import { buildingShapes } from './building'
import { cradleShapes, underBase } from './cradle'
import { placeDimensions, potDimensions } from './dimensions'
import { fringeShapes, gatheringShapes } from './gathering'
import { hookShapes, ringShapes } from './hook'
import { legEnds, legLabels, legShapes } from './legs'
import { plantShapes } from './plant'
import { potShapes } from './pot'
import { sceneOf } from './scene'
import type { Drawing } from './shape'
import { swingShapes } from './swing'
import { tapeDimensions, tapeShapes } from './tape'

/**
 * The hanger from the front in one situation, to scale, m, with the origin at the middle of the pot's
 * base before any cord stretched; beside it one strand laid out straight, for its lengths are measured
 * along the cord. Null where the strands do not reach round the pot.
 */
export function frontView(check: CheckResult, code: CaseCode): Drawing | null {
  const scene = sceneOf(check, code)
  if (scene === null) return null
  const shapes = [
    ...buildingShapes(scene),
    ...hookShapes(scene),
    ...legShapes(scene, true),
    ...plantShapes(scene),
    ...potShapes(scene),
    ...cradleShapes(scene, true),
    ...fringeShapes(scene),
    ...underBase(scene),
    ...gatheringShapes(scene),
    ...cradleShapes(scene, false),
    ...legShapes(scene, false),
    ...ringShapes(scene),
    ...swingShapes(scene),
    ...legLabels(scene),
    ...tapeShapes(scene),
  ]
  const dimensions = [...tapeDimensions(scene), ...potDimensions(scene), ...placeDimensions(scene)]
  return { shapes, dimensions, anchors: anchorsOf(scene), bounds: boundsOf(shapes, dimensions, scene.unit), legs: legEnds(scene) }
}
