import type { PickFreezeSums } from './tally'

/** Shares of the variance of an answer that one input decides. */
export interface Indices {
  /** With all that it does together with others. */
  readonly total: number
  /** By itself. */
  readonly alone: number
}

/** Sums still empty, for so many inputs. */
export const newSums = (inputs: number): MutableSums => ({ pairs: 0, sum: 0, squares: 0, own: new Array<number>(inputs).fill(0), others: new Array<number>(inputs).fill(0) })

export interface MutableSums {
  pairs: number
  sum: number
  squares: number
  own: number[]
  others: number[]
}

/**
 * One pick-freeze pair: two independent draws a and b, and for each input a with that input alone from b. Its numbers are put
 * into `mixed`. The order is a, the inputs in theirs, b: whoever answers may keep what an input left as it was.
 */
export function addPair(sums: MutableSums, answer: (z: Float64Array) => number, a: Float64Array, b: Float64Array, mixed: Float64Array, places: readonly (readonly number[])[]): void {
  const atA = answer(a)
  mixed.set(a)
  const changed = places.map((own) => {
    for (const place of own) mixed[place] = b[place]!
    const at = answer(mixed)
    for (const place of own) mixed[place] = a[place]!
    return at
  })
  const atB = answer(b)
  sums.pairs += 1
  sums.sum += atA + atB
  sums.squares += atA * atA + atB * atB
  changed.forEach((at, i) => {
    sums.own[i]! += (atA - at) ** 2
    sums.others[i]! += (atB - at) ** 2
  })
}

/**
 * Sobol indices of each input by the estimators of M. J. W. Jansen (Comput. Phys. Commun. 117, 1999): total sum((a - ab)^2) / (2 n V),
 * alone 1 - sum((b - ab)^2) / (2 n V), which chance may bring below nought, told as nought. An input may be a group of numbers. All nought where nothing varies.
 */
export function indicesOf({ pairs, sum, squares, own, others }: PickFreezeSums): readonly Indices[] {
  const count = 2 * pairs
  const variance = count > 1 ? (squares - (sum * sum) / count) / (count - 1) : 0
  // What rounding leaves of a variance of nothing is nothing.
  if (!(variance > 1e-12 * Math.max(1, (sum / count) ** 2))) return own.map(() => ({ total: 0, alone: 0 }))
  return own.map((changed, i) => ({ total: changed / (2 * pairs * variance), alone: Math.max(0, 1 - (others[i] ?? 0) / (2 * pairs * variance)) }))
}
