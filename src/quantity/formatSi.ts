import { exactRatio } from './exactRatio'
import { findUnit } from './findUnit'
import type { QuantityKind } from './quantityKind'
import { divideRatios, ratio } from './ratio'
import { floorLog10, roundToDecimals, trimDecimal } from './roundRatio'
import { unitName } from './unitName'
import { writeDecimal } from './writeDecimal'

const FIGURES = 6

/**
 * A quantity in a unit as text for a field: six figures at most, whole numbers whole, no zeros left
 * at the end. `unit` in any spelling the reader takes, '' for a plain number. Throws RangeError for
 * a value that is not finite or a unit that is none of the kind.
 *
 * @example formatSi(0.9 * 0.2, 'length', 'mm') // '180 mm'
 */
export function formatSi(value: number, kind: QuantityKind, unit: string): string {
  const found = unit === '' ? undefined : findUnit(unit)
  if (unit !== '' && found?.kind !== kind) throw new RangeError(`${unit} is not a unit of ${kind}`)
  const exact = divideRatios(exactRatio(value), found?.size ?? ratio(1n, 1n))
  const whole = exact.numerator === 0n ? 0 : floorLog10(exact) + 1
  const rounded = trimDecimal(roundToDecimals(exact, Math.max(FIGURES - whole, 0), 'nearest'))
  const text = writeDecimal(rounded, '.', false)
  return found === undefined ? text : `${text} ${unitName(found.symbol, rounded)}`
}
