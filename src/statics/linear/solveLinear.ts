/** A pivot this much smaller than the largest entry its row began with makes the matrix singular. */
const SINGULAR_PIVOT = 1e-13
/** Largest residual of a row, as a share of the sizes that met in it, that counts as solved. */
const SOLVED_RESIDUAL = 1e-10

export type LinearOutcome =
  /** `residual`: largest |M x - b| of a row over the sum of the sizes of its terms. */
  | { readonly ok: true; readonly x: readonly number[]; readonly residual: number }
  /** `rank`: number of usable pivots found; a singular system is refused even if some x would satisfy it. */
  | { readonly ok: false; readonly reason: 'singular'; readonly rank: number }
  | { readonly ok: false; readonly reason: 'inexact'; readonly residual: number }
  | { readonly ok: false; readonly reason: 'not finite' }

/**
 * Solves M x = b by LU factorisation with scaled partial pivoting (rows are compared by their pivot as
 * a share of the row's own largest entry, so units do not matter), one step of refinement, and a check
 * of the residual with the given matrix.
 *
 * A structure that is a mechanism has a singular matrix and may still satisfy its equations under one
 * particular load; that must not pass as a solution, hence the pivot test.
 *
 * @param M square, row by row
 * @example solveLinear([[1, 2], [3, 4]], [5, 11]).x // [1, 2]
 */
export function solveLinear(M: readonly (readonly number[])[], b: readonly number[]): LinearOutcome {
  const n = b.length
  if (M.length !== n || M.some((row) => row.length !== n)) throw new RangeError('solveLinear asks a square matrix and as many right-hand sides')
  if (!b.every(Number.isFinite) || !M.every((row) => row.every(Number.isFinite))) return { ok: false, reason: 'not finite' }
  const lu = M.map((row) => [...row])
  const scale = M.map((row) => Math.max(...row.map(Math.abs)))
  const order = b.map((_, i) => i)
  for (let j = 0; j < n; j++) {
    let best = j
    for (let i = j + 1; i < n; i++) if (share(lu, scale, i, j) > share(lu, scale, best, j)) best = i
    if (!(share(lu, scale, best, j) > SINGULAR_PIVOT)) return { ok: false, reason: 'singular', rank: j }
    swap(lu, j, best)
    swap(scale, j, best)
    swap(order, j, best)
    const pivotRow = lu[j]!
    for (let i = j + 1; i < n; i++) {
      const row = lu[i]!
      const factor = row[j]! / pivotRow[j]!
      row[j] = factor
      for (let k = j + 1; k < n; k++) row[k]! -= factor * pivotRow[k]!
    }
  }
  const x = substitute(lu, order, b)
  const rest = b.map((value, i) => value - dot(M[i]!, x))
  substitute(lu, order, rest).forEach((dx, i) => (x[i]! += dx))
  const residual = Math.max(0, ...b.map((value, i) => relativeMiss(M[i]!, x, value)))
  if (!Number.isFinite(residual)) return { ok: false, reason: 'not finite' }
  return residual <= SOLVED_RESIDUAL ? { ok: true, x, residual } : { ok: false, reason: 'inexact', residual }
}

const dot = (row: readonly number[], x: readonly number[]): number => row.reduce((sum, entry, i) => sum + entry * x[i]!, 0)

const share = (lu: number[][], scale: number[], i: number, j: number): number => Math.abs(lu[i]![j]!) / scale[i]!

function swap<T>(list: T[], i: number, j: number): void {
  const kept = list[i]!
  list[i] = list[j]!
  list[j] = kept
}

function substitute(lu: number[][], order: readonly number[], b: readonly number[]): number[] {
  const x = order.map((i) => b[i]!)
  const n = x.length
  for (let i = 0; i < n; i++) for (let k = 0; k < i; k++) x[i]! -= lu[i]![k]! * x[k]!
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= lu[i]![k]! * x[k]!
    x[i]! /= lu[i]![i]!
  }
  return x
}

function relativeMiss(row: readonly number[], x: readonly number[], b: number): number {
  const size = row.reduce((sum, entry, i) => sum + Math.abs(entry * x[i]!), Math.abs(b))
  return size === 0 ? 0 : Math.abs(dot(row, x) - b) / size
}
