let factor = new Float64Array(36)

/**
 * Solves (M + shift I) x = -b for a symmetric matrix by Cholesky's factorisation M + shift I = L L'.
 *
 * The negated right-hand side makes x the Newton step of a function with Hessian M and gradient b.
 * Only the lower triangle of M is read. M, b and x are scratch of the caller.
 *
 * @param n number of unknowns
 * @param M row by row, n x n
 * @returns false, with x untouched, if M + shift I is not positive definite
 */
export function newtonStep(n: number, M: Float64Array, shift: number, b: Float64Array, x: Float64Array): boolean {
  if (factor.length < n * n) factor = new Float64Array(n * n)
  const L = factor
  for (let j = 0; j < n; j++) {
    let pivot = M[j * n + j]! + shift
    for (let k = 0; k < j; k++) pivot -= L[j * n + k]! * L[j * n + k]!
    if (!(pivot > 0)) return false
    const root = Math.sqrt(pivot)
    L[j * n + j] = root
    for (let i = j + 1; i < n; i++) {
      let entry = M[i * n + j]!
      for (let k = 0; k < j; k++) entry -= L[i * n + k]! * L[j * n + k]!
      L[i * n + j] = entry / root
    }
  }
  for (let i = 0; i < n; i++) {
    let sum = -b[i]!
    for (let k = 0; k < i; k++) sum -= L[i * n + k]! * x[k]!
    x[i] = sum / L[i * n + i]!
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!
    for (let k = i + 1; k < n; k++) sum -= L[k * n + i]! * x[k]!
    x[i] = sum / L[i * n + i]!
  }
  return true
}
