import type { Point } from '../../drawing/shape'

const MILLIMETRES = 1000

/** A number of a picture, written short: a hundredth of its unit is finer than any pen. */
export const svgNumber = (value: number): string => String(Math.round(value * 100) / 100 + 0)

/** A length of a drawing, m, in the picture's unit, mm. */
export const mm = (metres: number): number => metres * MILLIMETRES

/** A point of a drawing in the picture: there y runs downwards. */
export const at = ([x, y]: Point): readonly [number, number] => [mm(x), 0 - mm(y)]

/** Path data through points. */
export const pathThrough = (points: readonly Point[], closed: boolean): string =>
  points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point).map(svgNumber).join(' ')}`).join('') + (closed ? 'Z' : '')
