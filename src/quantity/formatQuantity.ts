import { COMPOUND_UNITS, type CompoundSymbol, type CompoundUnit } from './compoundUnit'
import { exactRatio } from './exactRatio'
import { unitOf } from './findUnit'
import { nearestDouble } from './nearestDouble'
import { divideRatios, multiplyRatios, powerOfTen, ratio, type Ratio } from './ratio'
import { floorLog10, roundToDecimals, roundToSignificant, trimDecimal, type Decimal, type Rounding } from './roundRatio'
import { unitName } from './unitName'
import type { UnitSymbol } from './units'
import { writeDecimal, type DecimalMark } from './writeDecimal'

/** `shortest`: as few digits as give the very same value when read again, at most 17. */
export type Precision = { readonly decimals: number } | { readonly significant: number } | 'shortest'

export interface QuantityToWrite {
  /** In SI, finite. */
  readonly value: number
  /** '' for a plain number. In a compound unit the decimals are those of its second part. */
  readonly unit: UnitSymbol | CompoundSymbol | ''
  readonly precision: Precision
  readonly rounding: Rounding
  readonly decimalMark: DecimalMark
}

const ONE: Ratio = ratio(1n, 1n)

/**
 * Writes a quantity in a unit, as text that readQuantity takes back: correctly rounded from the
 * exact value of the double, never in powers of ten unless the shortest text is asked of something
 * far from human size. Throws RangeError for a value that is not finite.
 *
 * @example formatQuantity({ value: 1.6764, unit: 'ft in', precision: 'shortest', rounding: 'nearest', decimalMark: '.' }) // '5 ft 6 in'
 */
export function formatQuantity({ value, unit, precision, rounding, decimalMark }: QuantityToWrite): string {
  const compound = COMPOUND_UNITS.find(({ symbol }) => symbol === unit)
  if (compound !== undefined) {
    const { size } = unitOf(compound.minor)
    return writeParts(round(value, size, precision, rounding), compound, decimalMark)
  }
  const size = unit === '' ? ONE : unitOf(unit as UnitSymbol).size
  const rounded = round(value, size, precision, rounding)
  const text = precision === 'shortest' ? writeShortest(rounded, decimalMark) : writeDecimal(rounded, decimalMark, false)
  return unit === '' ? text : `${text} ${unitName(unit as UnitSymbol, rounded)}`
}

function round(value: number, size: Ratio, precision: Precision, rounding: Rounding): Decimal {
  const exact = divideRatios(exactRatio(value), size)
  if (precision === 'shortest') return shortest(value, exact, size)
  return 'decimals' in precision
    ? roundToDecimals(exact, precision.decimals, rounding)
    : roundToSignificant(exact, precision.significant, rounding)
}

/** 15 digits always suffice for what was typed with 15 or fewer, and 17 for every double. */
function shortest(value: number, exact: Ratio, size: Ratio): Decimal {
  for (const significant of [15, 16]) {
    const rounded = roundToSignificant(exact, significant, 'nearest')
    const again = multiplyRatios(multiplyRatios(ratio(rounded.digits, 1n), powerOfTen(-rounded.decimals)), size)
    if (nearestDouble(again) === value) return trimDecimal(rounded)
  }
  return trimDecimal(roundToSignificant(exact, 17, 'nearest'))
}

function writeShortest(decimal: Decimal, mark: DecimalMark): string {
  const { digits, decimals } = decimal
  if (digits === 0n) return '0'
  const exponent = floorLog10(multiplyRatios(ratio(digits, 1n), powerOfTen(-decimals)))
  if (exponent >= -7 && exponent <= 21) return writeDecimal(decimal, mark, false)
  const mantissa = trimDecimal({ digits, decimals: decimals + exponent })
  return `${writeDecimal(mantissa, mark, false)}e${exponent}`
}

function writeParts(decimal: Decimal, { major, minor, minorsInMajor }: CompoundUnit, mark: DecimalMark): string {
  const digits = decimal.decimals < 0 ? decimal.digits * 10n ** BigInt(-decimal.decimals) : decimal.digits
  const decimals = Math.max(decimal.decimals, 0)
  const magnitude = digits < 0n ? -digits : digits
  const perMajor = minorsInMajor * 10n ** BigInt(decimals)
  const rest = writeDecimal({ digits: magnitude % perMajor, decimals }, mark, false)
  return `${digits < 0n ? '-' : ''}${magnitude / perMajor} ${major} ${rest} ${minor}`
}
