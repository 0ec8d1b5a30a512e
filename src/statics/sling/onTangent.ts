const basis = Array.from({ length: 6 }, () => new Float64Array(6))
const projected = new Float64Array(36)

/**
 * A 6 x 6 symmetric matrix seen only on the motions along which none of the given directions is
 * followed: Z' H Z with Z an orthonormal basis of their complement.
 *
 * @returns the size left, and the matrix row by row (scratch, or H itself if no direction is barred)
 */
export function onTangent(H: Float64Array, barred: readonly Float64Array[]): { readonly size: number; readonly matrix: Float64Array } {
  if (barred.length === 0) return { size: 6, matrix: H }
  let count = 0
  for (const direction of barred) if (count < 6 && addDirection(direction, count)) count++
  const first = count
  // The unit motions that stand out most from what is there already complete the basis.
  while (count < 6) addDirection(mostOutstanding(count), count++)
  const size = 6 - first
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) projected[size * i + j] = product(H, basis[first + i]!, basis[first + j]!)
  }
  return { size, matrix: projected }
}

/** Puts the part of v that is square to the first `count` basis vectors after them; false if nothing of it is left. */
function addDirection(v: Float64Array, count: number): boolean {
  const to = basis[count]!
  to.set(v)
  const length = Math.sqrt(dot(v, v))
  // Twice is enough: the second round removes what rounding left in the first.
  for (let round = 0; round < 2; round++) {
    for (let i = 0; i < count; i++) {
      const along = dot(to, basis[i]!)
      for (let a = 0; a < 6; a++) to[a]! -= along * basis[i]![a]!
    }
  }
  const left = Math.sqrt(dot(to, to))
  if (!(left > 1e-9 * length)) return false
  for (let a = 0; a < 6; a++) to[a]! /= left
  return true
}

function mostOutstanding(count: number): Float64Array {
  let best = 0
  let most = -1
  for (let a = 0; a < 6; a++) {
    let left = 1
    for (let i = 0; i < count; i++) left -= basis[i]![a]! ** 2
    if (left > most) {
      most = left
      best = a
    }
  }
  const unit = new Float64Array(6)
  unit[best] = 1
  return unit
}

function dot(v: Float64Array, w: Float64Array): number {
  let sum = 0
  for (let a = 0; a < 6; a++) sum += v[a]! * w[a]!
  return sum
}

function product(H: Float64Array, v: Float64Array, w: Float64Array): number {
  let sum = 0
  for (let a = 0; a < 6; a++) for (let b = 0; b < 6; b++) sum += v[a]! * H[6 * a + b]! * w[b]!
  return sum
}
