import type { Dimension, Point, Shape } from './shape'

/** A point moved across and up, m. */
export const movedPoint = ([x, y]: Point, [across, up]: Point): Point => [x + across, y + up]

/** A point turned about another, rad, clockwise as seen: what hangs below it goes to the left. */
export function turnedPoint([x, y]: Point, [px, py]: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const [dx, dy] = [x - px, y - py]
  return [px + dx * cos + dy * sin, py + dy * cos - dx * sin]
}

/** The same shape with each of its points put elsewhere. */
export function mappedShape(shape: Shape, put: (at: Point) => Point): Shape {
  switch (shape.kind) {
    case 'label': return { ...shape, at: put(shape.at) }
    case 'circle': return { ...shape, centre: put(shape.centre) }
    case 'cord': return { ...shape, axis: shape.axis.map(put), strands: shape.strands.map((strand) => strand.map(put)) }
    case 'line': case 'area': return { ...shape, points: shape.points.map(put) }
  }
}

/** The same dimension line with each of its points put elsewhere. */
export const mappedDimension = (d: Dimension, put: (at: Point) => Point): Dimension =>
  ({ ...d, from: put(d.from), to: put(d.to), feet: [put(d.feet[0]), put(d.feet[1])], number: put(d.number) })

/** The same shape, and the same dimension line, elsewhere. */
export const movedShape = (shape: Shape, by: Point): Shape => mappedShape(shape, (at) => movedPoint(at, by))
export const movedDimension = (d: Dimension, by: Point): Dimension => mappedDimension(d, (at) => movedPoint(at, by))

/** The same shape further to the right, m. */
export const shiftedShape = (shape: Shape, by: number): Shape => movedShape(shape, [by, 0])

/** The same dimension line further to the right, m. */
export const shiftedDimension = (d: Dimension, by: number): Dimension => movedDimension(d, [by, 0])
