import { formatQuantity } from '../quantity/formatQuantity'
import type { QuantityKind } from '../quantity/quantityKind'
import { readQuantity } from '../quantity/readQuantity'
import type { UnitSymbol } from '../quantity/units'
import { plainLengthText } from './amounts'
import { writingHabits } from './writing'

/** Further units of those who read no metric ones; lengths are written as on a tape. */
const IMPERIAL: Readonly<Partial<Record<QuantityKind, UnitSymbol>>> = { mass: 'lb', volume: 'US gal', linearDensity: 'oz/yd', density: 'lb/ft3' }
const METRIC: ReadonlySet<string> = new Set(['mm', 'cm', 'm', 'kg', 'g', 'l', 'ml', 'g/m', 'kg/m3', 'kg/l', 'g/l'])

/**
 * A quantity that nobody typed, such as what is assumed, as the reader would type it: in their units and with their
 * decimal mark. Reads back as the same, but for the rounding to a part of an inch. What cannot be read stays as it is;
 * what somebody typed must not come here.
 * @example preferredText('4.5 kg', 'mass') // '4.5 kg'
 */
export function preferredText(text: string, kind: QuantityKind): string {
  const read = readQuantity(text, kind)
  if (!read.ok) return text
  const { units, decimalMark } = writingHabits()
  if (units !== 'imperial' || !METRIC.has(read.unit)) return markedText(text, kind)
  const value: number = read.value
  if (kind === 'length') return plainLengthText(value)
  const unit = IMPERIAL[kind]
  return unit === undefined ? text : formatQuantity({ value, unit, precision: { significant: 3 }, rounding: 'nearest', decimalMark })
}

/**
 * A quantity that nobody typed with the reader's decimal mark, in the unit it has; so that it reads back as the very same.
 * @example markedText('131.937 in', 'length') // '131.937 in'
 */
export function markedText(text: string, kind: QuantityKind): string {
  const read = readQuantity(text, kind)
  const { decimalMark } = writingHabits()
  if (!read.ok || decimalMark === '.' || read.unit.includes(' ')) return text
  return formatQuantity({ value: read.value, unit: read.unit, precision: 'shortest', rounding: 'nearest', decimalMark })
}

/** A group of three digits behind a point: a thousand to those who write a decimal comma, yet read as a decimal. */
const LOOKS_GROUPED = /^\s*[1-9]\d{0,2}\.\d{3}(?!\d)/

/**
 * Where a typed number is read otherwise than somebody with a decimal comma may mean it ("1.250 mm"), the same in their
 * way of writing; else null. A point alone is always the decimal mark.
 * @example otherwiseMeant('1.250 mm', 'length') // null
 */
export function otherwiseMeant(text: string, kind: QuantityKind): string | null {
  if (writingHabits().decimalMark === '.' || !LOOKS_GROUPED.test(text)) return null
  const read = readQuantity(text, kind)
  return read.ok && !read.unit.includes(' ') ? formatQuantity({ value: read.value, unit: read.unit, precision: 'shortest', rounding: 'nearest', decimalMark: ',' }) : null
}
