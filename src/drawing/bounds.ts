import type { Bounds, Dimension, Point, Shape } from './shape'

/** Every point that a shape reaches to; a cord by its strands. */
function pointsOf(shape: Exclude<Shape, { kind: 'cord' }>): readonly Point[] {
  switch (shape.kind) {
    case 'label': return [shape.at]
    case 'circle': {
      const [x, y] = shape.centre
      const reach = shape.radius + shape.width / 2
      return [[x - reach, y - reach], [x + reach, y + reach]]
    }
    case 'line': case 'area': return shape.points
    default: return shape satisfies never
  }
}

/** The room a view takes, with space for its numbers and a margin, m. */
export function boundsOf(shapes: readonly Shape[], dimensions: readonly Dimension[], captions: readonly Point[], unit: number): Bounds {
  const room = (d: Dimension): readonly Point[] => {
    const [left, right] = { left: [4, 0], middle: [2, 2], right: [0, 4] }[d.side] as [number, number]
    return [d.from, d.to, [d.number[0] - left * unit, d.number[1] - 0.6 * unit], [d.number[0] + right * unit, d.number[1] + 0.6 * unit]]
  }
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity]
  // Thousands of points, on every change: one pass and no lists.
  const take = (points: readonly Point[]): void => {
    for (const [x, y] of points) {
      if (x < left) left = x
      if (x > right) right = x
      if (y < bottom) bottom = y
      if (y > top) top = y
    }
  }
  for (const shape of shapes) {
    if (shape.kind === 'cord') shape.strands.forEach(take)
    else take(pointsOf(shape))
  }
  for (const d of dimensions) take(room(d))
  take(captions.map(([x, y]): Point => [x, y + 1.8 * unit]))
  const margin = 0.5 * unit
  return { left: left - margin, right: right + margin, bottom: bottom - margin, top: top + margin }
}
