import type { Point } from '#core'

const MILLIMETRES = 1000

/** A length of the drawing in the picture's unit, mm. */
export const mm = (metres: number): number => metres * MILLIMETRES

/** A point of the drawing in the picture, mm: there y runs downwards. */
export const at = ([x, y]: Point): { readonly x: number, readonly y: number } => ({ x: mm(x), y: 0 - mm(y) })

/** Path data through points. */
export const pathThrough = (points: readonly Point[], closed: boolean): string =>
  points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point).x} ${at(point).y}`).join('') + (closed ? 'Z' : '')
