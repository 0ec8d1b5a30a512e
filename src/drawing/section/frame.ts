import type { Point } from '../shape'

/** Puts a point of a section on the page: how deep it lies in the building from its surface, negative before it, and where along that surface; m. */
export type Frame = (deep: number, along: number) => Point

/** A ceiling cut through; `along`: x of the view. */
export const ceilingFrame = (ceiling: number): Frame => (deep, along) => [along, ceiling + deep]

/** A wall to the right cut through; `along`: height. */
export const wallFrame = (wall: number): Frame => (deep, along) => [wall + deep, along]

/** A rectangle of the section. */
export const slab = (at: Frame, [shallow, deep]: readonly [number, number], [from, to]: readonly [number, number]): readonly Point[] =>
  [at(shallow, from), at(shallow, to), at(deep, to), at(deep, from)]
