import { exactRatio } from './exactRatio'
import { unitOf } from './findUnit'
import { divideRatios, ratio } from './ratio'
import { floorLog10, roundToDecimals, trimDecimal } from './roundRatio'
import { unitName } from './unitName'
import type { UnitSymbol } from './units'
import { writeDecimal } from './writeDecimal'

/** Digits of a value that was worked out, in the unit it is written in; whole numbers keep all of theirs. */
const DIGITS = 6

/**
 * An SI value that was worked out, not typed, as text in a unit that reads back through
 * readQuantity, without zeros at the end; '' writes a plain number. Throws RangeError for a value
 * that is not finite.
 *
 * @example formatSi(0.1800000000000001, 'mm') // '180 mm'
 */
export function formatSi(value: number, unit: UnitSymbol | ''): string {
  const exact = divideRatios(exactRatio(value), unit === '' ? ratio(1n, 1n) : unitOf(unit).size)
  const wholeDigits = exact.numerator === 0n ? 0 : floorLog10(exact) + 1
  const rounded = trimDecimal(roundToDecimals(exact, Math.max(DIGITS - wholeDigits, 0), 'nearest'))
  const text = writeDecimal(rounded, '.', false)
  return unit === '' ? text : `${text} ${unitName(unit, rounded)}`
}
