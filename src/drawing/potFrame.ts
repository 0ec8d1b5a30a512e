import { potCircle } from './pot'
import type { Stand } from './scene'
import type { Point } from './shape'

/** A point in the upright plane through the pot's axis that faces the viewer, seen from the front: aside and above the base. */
export const facing = ({ pose, view }: Stand, aside: number, height: number): Point =>
  view.front(pose.place([aside * Math.cos(view.turn), -aside * Math.sin(view.turn), height]))

/** How far the pot's rim and base reach to the sides, from the front. */
export const potAside = (stand: Stand): readonly number[] =>
  [...potCircle(stand, stand.answers['pot.rim'] / 2, stand.answers['pot.height']), ...potCircle(stand, stand.answers['pot.base'] / 2, 0)].map((v) => stand.view.front(v)[0])
