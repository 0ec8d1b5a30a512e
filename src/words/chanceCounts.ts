import { numberText } from './amounts'

/**
 * A whole number with its thousands set apart by a thin space, which nobody reads as a decimal mark (ISO 80000-1).
 * @example countText(10000) // '10\u202f000'
 */
export const countText = (count: number): string => String(Math.round(count)).replace(/\B(?=(\d{3})+$)/g, '\u202f')

/** The most a chance is told out of. */
const MOST_ROUND = 1_000_000

/** The power of ten at or above a number. */
const tenfold = (x: number): number => Math.min(MOST_ROUND, 10 ** Math.max(0, Math.ceil(Math.log10(x) - 1e-9)))

/** Two figures, down or up, so that an interval never gets narrower than it is. */
function figures(value: number, round: (x: number) => number): string {
  const unit = 10 ** (Math.floor(Math.log10(Math.max(value, 1e-12)) + 1e-12) - 1)
  if (unit >= 1) return countText(round(value - (round === Math.ceil ? 1e-9 : -1e-9)))
  const digits = Math.max(0, -Math.round(Math.log10(unit)))
  return numberText(Number((round((value / unit) - (round === Math.ceil ? 1e-9 : -1e-9)) * unit).toFixed(digits)))
}

/**
 * Where a chance lies, as so many in a round number: in as many as were drawn, or fewer where that shows two figures as well.
 * @example intervalText({ low: 0.000069, high: 0.000882 }, 10000) // '0.69 and 8.9 in 10\u202f000'
 */
export function intervalText({ low, high }: { readonly low: number; readonly high: number }, draws: number): string {
  const outOf = Math.min(tenfold(draws), Math.max(100, tenfold(10 / high)))
  return `${low <= 0 ? '0' : figures(low * outOf, Math.floor)} and ${figures(high * outOf, Math.ceil)} in ${countText(outOf)}`
}

/**
 * A share of all, in whole per cent; what is less than one is told as such.
 * @example partText(0.004) // 'under 1 %'
 */
export const partText = (share: number): string => (share > 0 && share < 0.01 ? 'under 1 %' : `${Math.round(share * 100)} %`)
