import { buildingShapes } from '../building'
import type { Shape } from '../shape'
import type { SideScene } from './sideScene'

/** Wall, ceiling or beam from the side, cut through where the hanger is fixed. */
export const sideBuilding = (scene: SideScene): readonly Shape[] => buildingShapes(scene)
