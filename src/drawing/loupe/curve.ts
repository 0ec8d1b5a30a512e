import type { Point } from '../shape'

const STEPS = 6

/** A smooth line through points (Catmull and Rom's spline): straight through none, sharp at none. */
export function curve(points: readonly Point[]): readonly Point[] {
  const at = (i: number): Point => points[Math.max(0, Math.min(points.length - 1, i))] as Point
  const last = points.at(-1)
  if (last === undefined) return []
  const along = points.slice(0, -1).flatMap((_, i) => Array.from({ length: STEPS }, (__, k): Point => {
    const t = k / STEPS
    const on = (axis: 0 | 1): number => {
      const [a, b, c, d] = [at(i - 1)[axis], at(i)[axis], at(i + 1)[axis], at(i + 2)[axis]]
      return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t)
    }
    return [on(0), on(1)]
  }))
  return [...along, last]
}
