import type { Ratio } from './ratio'

/** A decimal number: digits x 10^-decimals. */
export interface Decimal {
  readonly digits: bigint
  readonly decimals: number
}

/** `down` and `up` are towards the smaller and the larger number. */
export type Rounding = 'nearest' | 'down' | 'up'

/**
 * A value that lies this little beside a round number, relative to itself, counts as that number:
 * 27 lb is a double a hair below, and must not be rounded down to 26.
 */
const SLACK = 10n ** 12n

/**
 * Rounds to so many decimals; below zero, to tens, hundreds and so on. Halves go away from zero.
 * @example roundToDecimals({ numerator: -5n, denominator: 2n }, 0, 'nearest') // { digits: -3n, decimals: 0 }
 */
export function roundToDecimals(value: Ratio, decimals: number, rounding: Rounding): Decimal {
  const above = decimals > 0 ? value.numerator * 10n ** BigInt(decimals) : value.numerator
  const below = decimals < 0 ? value.denominator * 10n ** BigInt(-decimals) : value.denominator
  if (rounding === 'nearest') {
    const magnitude = (2n * size(above) + below) / (2n * below)
    return { digits: above < 0n ? -magnitude : magnitude, decimals }
  }
  const leeway = rounding === 'down' ? size(above) : -size(above)
  const [shifted, scale] = [above * SLACK + leeway, below * SLACK]
  return { digits: rounding === 'down' ? floor(shifted, scale) : -floor(-shifted, scale), decimals }
}

/**
 * Rounds to so many significant digits, at least one.
 * @example roundToSignificant({ numerator: 996n, denominator: 100n }, 2, 'nearest') // { digits: 10n, decimals: 0 }
 */
export function roundToSignificant(value: Ratio, significant: number, rounding: Rounding): Decimal {
  if (value.numerator === 0n) return { digits: 0n, decimals: significant - 1 }
  const rounded = roundToDecimals(value, significant - 1 - floorLog10(value), rounding)
  // 9.96 to two digits is 10, not 10.0.
  return size(rounded.digits) === 10n ** BigInt(significant)
    ? { digits: rounded.digits / 10n, decimals: rounded.decimals - 1 }
    : rounded
}

/** The same number without zeros at the end of its decimals. */
export function trimDecimal({ digits, decimals }: Decimal): Decimal {
  let trimmed = digits
  let left = decimals
  while (left > 0 && trimmed % 10n === 0n) {
    trimmed /= 10n
    left--
  }
  return { digits: trimmed, decimals: left }
}

/** The largest k with 10^k <= |value|, for a value other than zero. */
export function floorLog10({ numerator, denominator }: Ratio): number {
  const above = size(numerator)
  const k = above.toString().length - denominator.toString().length
  const reaches = k < 0 ? above * 10n ** BigInt(-k) >= denominator : above >= denominator * 10n ** BigInt(k)
  return reaches ? k : k - 1
}

const size = (a: bigint): bigint => a < 0n ? -a : a

/** a / b towards minus infinity, for b above zero. */
function floor(a: bigint, b: bigint): bigint {
  const quotient = a / b
  return a < 0n && quotient * b !== a ? quotient - 1n : quotient
}
