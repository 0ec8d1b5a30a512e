import type { Dimension, Point, Shape } from './shape'

/** A point moved across and up, m. */
export const movedPoint = ([x, y]: Point, [across, up]: Point): Point => [x + across, y + up]

/** The same shape elsewhere. */
export function movedShape(shape: Shape, by: Point): Shape {
  switch (shape.kind) {
    case 'label': return { ...shape, at: movedPoint(shape.at, by) }
    case 'circle': return { ...shape, centre: movedPoint(shape.centre, by) }
    case 'cord': return { ...shape, axis: shape.axis.map((p) => movedPoint(p, by)), strands: shape.strands.map((strand) => strand.map((p) => movedPoint(p, by))) }
    case 'line': case 'area': return { ...shape, points: shape.points.map((p) => movedPoint(p, by)) }
  }
}

/** The same dimension line elsewhere. */
export const movedDimension = (d: Dimension, by: Point): Dimension =>
  ({ ...d, from: movedPoint(d.from, by), to: movedPoint(d.to, by), feet: [movedPoint(d.feet[0], by), movedPoint(d.feet[1], by)], number: movedPoint(d.number, by) })

/** The same shape further to the right, m. */
export const shiftedShape = (shape: Shape, by: number): Shape => movedShape(shape, [by, 0])

/** The same dimension line further to the right, m. */
export const shiftedDimension = (d: Dimension, by: number): Dimension => movedDimension(d, [by, 0])
