import type { Ratio } from './ratio'

const LARGEST_EXACT = BigInt(Number.MAX_SAFE_INTEGER)
/** A double carries 53 binary digits, and none is worth less than 2^-1074. */
const LAST_OF_53 = 52
const SMALLEST_EXPONENT = -1074

/**
 * The double nearest to an exact ratio, ties to even, as IEEE 754 rounds: the only rounding between
 * the text a maker typed and the number computed with. Beyond the largest double it is an infinity;
 * zero is never negative.
 * @example nearestDouble({ numerator: 1n, denominator: 8n }) // 0.125
 */
export function nearestDouble({ numerator, denominator }: Ratio): number {
  const size = numerator < 0n ? -numerator : numerator
  // Both sides are exact as doubles, so the one division rounds correctly by itself.
  if (size <= LARGEST_EXACT && denominator <= LARGEST_EXACT) {
    return size === 0n ? 0 : Number(numerator) / Number(denominator)
  }
  const exponent = Math.max(floorLog2(size, denominator) - LAST_OF_53, SMALLEST_EXPONENT)
  const dividend = exponent < 0 ? size << BigInt(-exponent) : size
  const divisor = exponent < 0 ? denominator : denominator << BigInt(exponent)
  const digits = divideToEven(dividend, divisor)
  if (digits === 0n) return 0
  const magnitude = Number(digits) * 2 ** exponent
  return numerator < 0n ? -magnitude : magnitude
}

/** The largest k with 2^k <= a / b, for a and b above zero. */
function floorLog2(a: bigint, b: bigint): number {
  const k = bitLength(a) - bitLength(b)
  const reaches = k < 0 ? a << BigInt(-k) >= b : a >= b << BigInt(k)
  return reaches ? k : k - 1
}

function bitLength(a: bigint): number {
  const hex = a.toString(16)
  return 4 * hex.length - Math.clz32(Number.parseInt(hex.charAt(0), 16)) + 28
}

function divideToEven(a: bigint, b: bigint): bigint {
  const quotient = a / b
  const twice = 2n * (a - quotient * b)
  return twice > b || (twice === b && (quotient & 1n) === 1n) ? quotient + 1n : quotient
}
