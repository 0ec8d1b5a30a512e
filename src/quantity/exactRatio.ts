import { ratio, type Ratio } from './ratio'

const scratch = new DataView(new ArrayBuffer(8))

/**
 * The exact value of a double as a ratio: 0.1 is 3602879701896397 / 2^55.
 * Throws RangeError for what is not finite: no quantity of ours is.
 */
export function exactRatio(value: number): Ratio {
  if (!Number.isFinite(value)) throw new RangeError(`not a finite number: ${value}`)
  if (Number.isSafeInteger(value)) return ratio(BigInt(value), 1n)
  scratch.setFloat64(0, value)
  const bits = scratch.getBigUint64(0)
  const biased = Number((bits >> 52n) & 0x7ffn)
  const fraction = bits & 0xfffffffffffffn
  const digits = biased === 0 ? fraction : fraction | 0x10000000000000n
  const exponent = Math.max(biased, 1) - 1075
  const signed = value < 0 ? -digits : digits
  return exponent < 0 ? ratio(signed, 1n << BigInt(-exponent)) : ratio(signed << BigInt(exponent), 1n)
}
