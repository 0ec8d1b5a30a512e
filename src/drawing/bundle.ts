import type { Point } from './shape'

/** Strands of a bundle that are seen side by side: all of a few, twice the root of many, as in a flat round bundle. */
export const strandsSeen = (strands: number): number => (strands <= 4 ? strands : Math.round(2 * Math.sqrt(strands)))

/** A line moved sideways, to the left of its direction, by a distance; corners are mitred. */
export function beside(points: readonly Point[], distance: number): readonly Point[] {
  return points.map((point, i) => {
    const before = normal(points[i - 1] ?? null, point)
    const after = normal(point, points[i + 1] ?? null)
    const [a, b] = [before ?? after, after ?? before]
    if (a === null || b === null) return point
    const sum: Point = [a[0] + b[0], a[1] + b[1]]
    // Mitre length grows without end as a line turns back on itself; beyond a sharp turn it is cut.
    const scale = distance / Math.max(0.5, (sum[0] * sum[0] + sum[1] * sum[1]) / 2)
    return [point[0] + sum[0] * scale, point[1] + sum[1] * scale]
  })
}

function normal(from: Point | null, to: Point | null): Point | null {
  if (from === null || to === null) return null
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  return length < 1e-9 ? null : [-(to[1] - from[1]) / length, (to[0] - from[0]) / length]
}

export interface Bundle {
  readonly axis: readonly Point[]
  readonly strands: readonly (readonly Point[])[]
  readonly thickness: number
  readonly width: number
}

/** So many strands side by side along an axis, each of the cord's true thickness. */
export const bundle = (axis: readonly Point[], thickness: number, seen: number): Bundle => ({
  axis,
  thickness,
  width: seen * thickness,
  strands: Array.from({ length: seen }, (_, i) => beside(axis, (i - (seen - 1) / 2) * thickness)),
})

/** The point a share of the way from one to another. */
export const between = (from: Point, to: Point, share: number): Point => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
