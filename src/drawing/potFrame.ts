import type { Level } from '../load/outline'
import { edgeOf } from './pot'
import type { Stand } from './scene'
import type { Point } from './shape'

/** A point in the upright plane through the pot's axis that faces the viewer, seen from the front: aside and above the base. */
export function facing({ pose, view }: Stand, aside: number, height: number): Point {
  const turn = view.turn + pose.turned
  return view.front(pose.place([aside * Math.cos(turn), -aside * Math.sin(turn), height]))
}

/** The levels of the pot and of what it stands in. */
const levelsOf = ({ check }: Stand): readonly Level[] => Object.values(check.solved.geometry.outline).flatMap((levels: readonly Level[] | null) => levels ?? [])

/** How far the pot, and what it stands in, reach to the sides, from the front. */
export const potAside = (stand: Stand): readonly number[] => levelsOf(stand).flatMap((level) => edgeOf(stand, level).map((v) => stand.view.front(v)[0]))

/** How far they reach from the pot's axis at their widest. */
export const widestHalf = (stand: Stand): number => Math.max(...levelsOf(stand).map(({ round, across, along }) => (round ? across : Math.hypot(across, along))))
