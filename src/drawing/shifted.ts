import type { Dimension, Point, Shape } from './shape'

const moved = ([x, y]: Point, by: number): Point => [x + by, y]

/** The same shape further to the right, m. */
export function shiftedShape(shape: Shape, by: number): Shape {
  switch (shape.kind) {
    case 'label': return { ...shape, at: moved(shape.at, by) }
    case 'circle': return { ...shape, centre: moved(shape.centre, by) }
    case 'cord': return { ...shape, axis: shape.axis.map((p) => moved(p, by)), strands: shape.strands.map((strand) => strand.map((p) => moved(p, by))) }
    case 'line': case 'area': return { ...shape, points: shape.points.map((p) => moved(p, by)) }
  }
}

/** The same dimension line further to the right, m. */
export const shiftedDimension = (d: Dimension, by: number): Dimension =>
  ({ ...d, from: moved(d.from, by), to: moved(d.to, by), feet: [moved(d.feet[0], by), moved(d.feet[1], by)], number: moved(d.number, by) })
