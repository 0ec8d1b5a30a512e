/** The states a potted plant is weighed and checked in. */
export const STATES = ['dry', 'watered', 'flooded'] as const
export type State = (typeof STATES)[number]

/** A mass known as a range, kg. */
export interface MassRange {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/**
 * A mass range whose ends may come in either order.
 * @example massRange(3, 2, 1) // { low: 1, likely: 2, high: 3 }
 */
export const massRange = (low: number, likely: number, high: number): MassRange => {
  const sorted = [low, likely, high].sort((a, b) => a - b)
  return { low: sorted[0] as number, likely, high: sorted[2] as number }
}
/** Two masses hung together: low with low, high with high, for both may be off the same way. */
export const addMass = (a: MassRange, b: MassRange): MassRange => ({ low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high })
export const NO_MASS: MassRange = { low: 0, likely: 0, high: 0 }

/** A mass times a plain number, and times a ratio that is itself a range: low with low, high with high. */
export const scaleMass = (r: MassRange, by: number): MassRange => ({ low: r.low * by, likely: r.likely * by, high: r.high * by })
export const timesRange = (a: MassRange, b: MassRange): MassRange => ({ low: a.low * b.low, likely: a.likely * b.likely, high: a.high * b.high })
/** What one state weighs more than another, end by end, in order. */
export const gainOf = (before: MassRange, after: MassRange): MassRange => {
  const gains = [after.low - before.low, after.likely - before.likely, after.high - before.high] as const
  return { low: Math.min(...gains), likely: gains[1], high: Math.max(...gains) }
}
