import type { Bounds, Dimension, Point, Shape } from './shape'

/** Every point that a shape reaches to. */
function pointsOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'label': return [shape.at]
    case 'circle': {
      const [x, y] = shape.centre
      const reach = shape.radius + shape.width / 2
      return [[x - reach, y - reach], [x + reach, y + reach]]
    }
    case 'cord': return shape.strands.flat()
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
  const points = [...shapes.flatMap(pointsOf), ...dimensions.flatMap(room), ...captions.map(([x, y]): Point => [x, y + 1.8 * unit])]
  const reach = (k: 0 | 1, pick: (a: number, b: number) => number, start: number): number => points.reduce((best, p) => pick(best, p[k]), start)
  const margin = 0.5 * unit
  return {
    left: reach(0, Math.min, Infinity) - margin,
    right: reach(0, Math.max, -Infinity) + margin,
    bottom: reach(1, Math.min, Infinity) - margin,
    top: reach(1, Math.max, -Infinity) + margin,
  }
}
