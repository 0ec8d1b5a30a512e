/** Points [x, y] of a published curve or table, rising in x. */
export type Points = readonly (readonly [number, number])[]

/**
 * The y of a curve at x, straight between its points; null before the first and beyond the last, since
 * a table says nothing outside itself.
 * @example readCurve([[1, 10], [3, 20]], 1.5) // 12.5
 */
export function readCurve(points: Points, x: number): number | null {
  const after = points.findIndex(([at]) => at >= x)
  const [right, left] = [points[after], points[Math.max(after - 1, 0)]]
  if (right === undefined || left === undefined) return null
  if (right[0] === x) return right[1]
  return after === 0 ? null : left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0])
}

/**
 * The y of the last step that begins at or below x; null below the first.
 * @example stepFrom([[0.29, 50], [0.43, 62]], 0.42) // 50
 */
export const stepFrom = (steps: Points, x: number): number | null => steps.findLast(([from]) => from <= x)?.[1] ?? null

/**
 * The y of the first step that reaches up to x; null beyond the last.
 * @example stepUpTo([[600, 1.6], [86400, 1.25]], 601) // 1.25
 */
export const stepUpTo = (steps: Points, x: number): number | null => steps.find(([upTo]) => x <= upTo)?.[1] ?? null
