/**
 * How a number that decides something is known. `published`: a source is named (publication,
 * edition, table). `common practice`: the trade does it so, no source. `from memory`: not looked
 * up again, to be treated as a starting value. `computed`: worked out here from other values.
 * `your own`: weighed, measured, tested or typed by the maker. `told by customer`: better than
 * assumed, worse than measured.
 */
export type Basis = 'published' | 'common practice' | 'from memory' | 'computed' | 'your own' | 'told by customer'

/**
 * The quality of the evidence behind a link's capacity, best first; the weakest one in a link sets
 * how much of what it may carry counts as "holds" (HOLDS_LIMIT in reserves.ts).
 */
export type Grade = 'tested' | 'rated' | 'weighed' | 'table' | 'diameter' | 'model' | 'fit'

/** A single catalogue value with its birth certificate. `unit` is SI; '1' is a plain ratio. */
export interface Value {
  readonly value: number
  readonly unit: string
  readonly basis: Basis
  readonly source: string
}

/** A catalogue value known as a range; `low <= likely <= high`. */
export interface Range {
  readonly low: number
  readonly likely: number
  readonly high: number
  readonly unit: string
  readonly basis: Basis
  readonly source: string
}

export const value = (value: number, unit: string, basis: Basis, source: string): Value => ({ value, unit, basis, source })

export const range = (low: number, likely: number, high: number, unit: string, basis: Basis, source: string): Range =>
  ({ low, likely, high, unit, basis, source })
