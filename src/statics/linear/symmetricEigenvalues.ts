const MOST_SWEEPS = 30
/** An off-diagonal entry of this share of the whole moves an eigenvalue by less than rounding does. */
const SETTLED = 1e-16
let work = new Float64Array(36)

/**
 * Eigenvalues of a symmetric matrix by Jacobi's cyclic rotations (Golub and Van Loan, Matrix
 * Computations, "Jacobi methods"), which finds small eigenvalues beside large ones well.
 *
 * @param n size of the matrix
 * @param M row by row, n x n, left unchanged; its upper triangle is read
 * @returns n eigenvalues in rising order; NaN in, NaN out
 * @example symmetricEigenvalues(2, Float64Array.of(2, 1, 1, 2)) // [1, 3]
 */
export function symmetricEigenvalues(n: number, M: Float64Array): number[] {
  if (work.length < n * n) work = new Float64Array(n * n)
  const a = work
  let square = 0
  for (let i = 0; i < n * n; i++) {
    a[i] = M[i]!
    square += a[i]! * a[i]!
  }
  const settled = SETTLED * Math.sqrt(square)
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let turned = false
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) {
        const apq = a[p * n + q]!
        const app = a[p * n + p]!
        const aqq = a[q * n + q]!
        if (Math.abs(apq) <= settled) continue
        turned = true
        const ratio = (aqq - app) / (2 * apq)
        const t = (ratio >= 0 ? 1 : -1) / (Math.abs(ratio) + Math.sqrt(1 + ratio * ratio))
        const c = 1 / Math.sqrt(1 + t * t)
        const s = t * c
        a[p * n + p] = app - t * apq
        a[q * n + q] = aqq + t * apq
        a[p * n + q] = 0
        for (let k = 0; k < p; k++) turn(a, k * n + p, k * n + q, c, s)
        for (let k = p + 1; k < q; k++) turn(a, p * n + k, k * n + q, c, s)
        for (let k = q + 1; k < n; k++) turn(a, p * n + k, q * n + k, c, s)
      }
    }
    if (!turned) break
  }
  const values = new Array<number>(n)
  for (let i = 0; i < n; i++) values[i] = a[i * n + i]!
  return values.sort((x, y) => x - y)
}

function turn(a: Float64Array, i: number, j: number, c: number, s: number): void {
  const x = a[i]!
  const y = a[j]!
  a[i] = c * x - s * y
  a[j] = s * x + c * y
}
