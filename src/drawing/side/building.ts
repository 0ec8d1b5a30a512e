import { ceilingShapes } from '../building'
import { hookOnEdge } from '../hook'
import { beamAlong } from '../support'
import type { Shape } from '../shape'
import type { SideScene } from './sideScene'
import { wallShapes } from './wall'

/** Wall or ceiling cut through where the hanger is fixed, with its hook or bracket; or a beam along its length. */
export function sideBuilding(scene: SideScene): readonly Shape[] {
  const { wall, hookAt, answers } = scene
  if (wall !== null) return wallShapes(scene, wall)
  if (answers['place.support'] === 'overBeam') return beamAlong(scene, hookAt)
  return [...ceilingShapes(scene, [hookAt], [hookAt], []), ...hookOnEdge(scene, hookAt)]
}
