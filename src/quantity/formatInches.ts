import { exactRatio } from './exactRatio'
import { unitOf } from './findUnit'
import { formatQuantity } from './formatQuantity'
import { divideRatios, multiplyRatios, ratio } from './ratio'
import { roundToDecimals } from './roundRatio'
import type { Metres } from './si'

/** The parts an inch is divided into on a tape. */
export type InchParts = 2 | 4 | 8 | 16 | 32 | 64

/**
 * A length as read off a tape in inches, to the nearest part of one, the fraction in lowest terms:
 * "5 3/16 in". What is not zero but would round to it is written in decimals: "0.02 in".
 *
 * @example formatInches(metres(0.1318), 16) // '5 3/16 in'
 */
export function formatInches(length: Metres, parts: InchParts): string {
  const count = partsOfInch(length, parts)
  if (count === 0n && length !== 0) return inDecimals(length)
  return `${count < 0n ? '-' : ''}${mixedNumber(count < 0n ? -count : count, BigInt(parts))} in`
}

/**
 * The same in feet and inches; below a foot in inches alone.
 * @example formatFeetInches(metres(1.6891), 16) // '5 ft 6 1/2 in'
 */
export function formatFeetInches(length: Metres, parts: InchParts): string {
  const count = partsOfInch(length, parts)
  const magnitude = count < 0n ? -count : count
  const perFoot = 12n * BigInt(parts)
  if (magnitude < perFoot) return formatInches(length, parts)
  return `${count < 0n ? '-' : ''}${magnitude / perFoot} ft ${mixedNumber(magnitude % perFoot, BigInt(parts))} in`
}

function partsOfInch(length: Metres, parts: InchParts): bigint {
  const inches = divideRatios(exactRatio(length), unitOf('in').size)
  return roundToDecimals(multiplyRatios(inches, ratio(BigInt(parts), 1n)), 0, 'nearest').digits
}

const inDecimals = (length: Metres): string =>
  formatQuantity({ value: length, unit: 'in', precision: { significant: 2 }, rounding: 'nearest', decimalMark: '.' })

function mixedNumber(count: bigint, parts: bigint): string {
  const whole = count / parts
  let [above, below] = [count % parts, parts]
  // Parts of an inch are powers of two.
  while (above > 0n && above % 2n === 0n) [above, below] = [above / 2n, below / 2n]
  if (above === 0n) return String(whole)
  return whole === 0n ? `${above}/${below}` : `${whole} ${above}/${below}`
}
