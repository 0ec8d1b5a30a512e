import type { Point } from './shape'

/** Convex hull of points, counter-clockwise, by the monotone chain (Andrew, 1979). */
export function hull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  const chain = (ordered: readonly Point[]): Point[] => {
    const kept: Point[] = []
    for (const point of ordered) {
      while (kept.length > 1 && turnsRight(kept[kept.length - 2] as Point, kept[kept.length - 1] as Point, point)) kept.pop()
      kept.push(point)
    }
    return kept.slice(0, -1)
  }
  return [...chain(sorted), ...chain([...sorted].reverse())]
}

const turnsRight = (a: Point, b: Point, c: Point): boolean => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) <= 0
