import { cradleShapes, underBase } from './cradle'
import { fringeShapes, gatheringShapes } from './gathering'
import { legShapes } from './legs'
import { plantShapes } from './plant'
import { potShapes } from './pot'
import type { Scene } from './scene'
import type { Shape } from './shape'
import { hasFringe } from './tiers'

/** A pot with its plant in its legs, cradle and gathering knot, from the front as from the side, those behind first. */
export const potInCords = (scene: Scene): readonly Shape[] => [
  ...legShapes(scene, true),
  ...plantShapes(scene),
  ...potShapes(scene),
  ...cradleShapes(scene, true),
  ...(hasFringe(scene) ? fringeShapes(scene) : []),
  ...underBase(scene),
  ...gatheringShapes(scene),
  ...cradleShapes(scene, false),
  ...legShapes(scene, false),
]
