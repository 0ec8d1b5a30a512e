import { readCurve, type Points } from '../catalogue/readCurve'

/**
 * A factor of a table by number of tests, straight between its rows (k_n bends the other way, so this
 * errs on the safe side); beyond the last row, that row.
 * @example factorForTests([[6, 2.18], [8, 2]], 7) // 2.09
 */
export function factorForTests(points: Points, tests: number): number {
  const [last, factor] = points.at(-1) ?? [0, Number.NaN]
  return tests >= last ? factor : readCurve(points, tests) ?? Number.NaN
}
