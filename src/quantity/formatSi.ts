import { UNITS, type UnitSymbol } from './units'

/** Digits shown of a value that was worked out; enough to read back as the same to a millionth. */
const DIGITS = 6

/**
 * An SI value as text in a unit that reads back through readQuantity; '' writes a plain number.
 * @example formatSi(0.0254, 'in') // '1 in'
 */
export function formatSi(value: number, unit: UnitSymbol | ''): string {
  const [numerator, denominator] = UNITS.find((u) => u.symbol === unit)?.size ?? [1n, 1n]
  const number = (value * Number(denominator)) / Number(numerator)
  const text = plain(Number(number.toPrecision(DIGITS)))
  return unit === '' ? text : `${text} ${plural(unit, text)}`
}

/** A number without an exponent. */
const plain = (number: number): string => (Math.abs(number) < 1e-6 && number !== 0 ? number.toFixed(12).replace(/0+$/, '') : String(number))

const plural = (unit: UnitSymbol, text: string): string => (['day', 'week', 'month', 'year'].includes(unit) && text !== '1' ? `${unit}s` : unit)
