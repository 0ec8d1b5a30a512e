import type { Point } from './shape'
import type { Vector } from './pose'

/** Looks at the hanger from the front (or the side, see sideways()) and from above; x is the same in both. */
export interface View {
  readonly front: (v: Vector) => Point
  readonly above: (v: Vector) => Point
  /** How far behind the hanger's middle a point lies, m; negative in front. */
  readonly depth: (v: Vector) => number
  /** Angle of the hanger's x axis from the view's, rad. */
  readonly turn: number
}

/** The view of a hanger turned by an angle, rad. */
export function viewOf(turn: number): View {
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  const across = ([x, y]: Vector): number => x * cos - y * sin
  const depth = ([x, y]: Vector): number => x * sin + y * cos
  return { turn, depth, front: (v) => [across(v), v[2]], above: (v) => [across(v), depth(v)] }
}

/**
 * The same hanger seen from its right: what lay behind is now to the right (x is the depth of the view from the front,
 * positive behind the hanger's middle), what lay to the left is now behind.
 */
export const sideways = (view: View): View => ({
  turn: view.turn - Math.PI / 2,
  depth: (v) => 0 - view.front(v)[0],
  front: (v) => [view.depth(v), v[2]],
  above: (v) => [view.depth(v), 0 - view.front(v)[0]],
})
