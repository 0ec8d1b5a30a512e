/** A length known as a range, m; the low and the high end are what it may be, not what is certain. */
export interface LengthRange {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/** A length that is told. */
export const exactly = (length: number): LengthRange => ({ low: length, likely: length, high: length })

/** A length times a number that is itself a range: low with low, high with high. */
export const times = (by: LengthRange, length: number): LengthRange => ({ low: by.low * length, likely: by.likely * length, high: by.high * length })

/**
 * Lengths laid end to end: low with low and high with high, for all are off the same way in the same hands.
 * @example sumOf([{ low: 1, likely: 2, high: 3 }, { low: 0.5, likely: 0.5, high: 0.5 }]) // { low: 1.5, likely: 2.5, high: 3.5 }
 */
export const sumOf = (lengths: readonly LengthRange[]): LengthRange =>
  lengths.reduce((sum, l) => ({ low: sum.low + l.low, likely: sum.likely + l.likely, high: sum.high + l.high }), exactly(0))
