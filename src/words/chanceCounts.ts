/**
 * A whole number with its thousands set apart by a thin space, which nobody reads as a decimal mark (ISO 80000-1).
 * @example countText(10000) // '10\u202f000'
 */
export const countText = (count: number): string => String(Math.round(count)).replace(/\B(?=(\d{3})+$)/g, '\u202f')

const ROUND = [10, 100, 1000, 10_000, 100_000, 1_000_000] as const

/**
 * A chance as so many in a round number, of which as few as still show it; rounded up, so that it never looks better than it is.
 * @example chanceText(0.0012, 10000) // '12 in 10\u202f000'
 */
export function chanceText(chance: number, outOf: number): string {
  return `${countText(Math.ceil(chance * outOf - 1e-9))} in ${countText(outOf)}`
}

/**
 * The round number to tell chances out of: the least in which the smallest of them is at least one.
 * @example roundFor(0.0012) // 1000
 */
export const roundFor = (chance: number): number => ROUND.find((outOf) => chance * outOf >= 0.9995) ?? 1_000_000
