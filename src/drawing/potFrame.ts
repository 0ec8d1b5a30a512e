import { potCircle } from './pot'
import type { Scene } from './scene'
import type { Point } from './shape'

/** A point in the upright plane through the pot's axis that faces the viewer, seen from the front: aside and above the base. */
export const facing = ({ pose, view }: Scene, aside: number, height: number): Point =>
  view.front(pose.place([aside * Math.cos(view.turn), -aside * Math.sin(view.turn), height]))

/** How far the pot's rim and base reach to the sides, from the front. */
export const potAside = (scene: Scene): readonly number[] =>
  [...potCircle(scene, scene.answers['pot.rim'] / 2, scene.answers['pot.height']), ...potCircle(scene, scene.answers['pot.base'] / 2, 0)].map((v) => scene.view.front(v)[0])
