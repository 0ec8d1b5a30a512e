import type { CompoundSymbol } from './compoundUnit'
import { unitOf } from './findUnit'
import { nearestDouble } from './nearestDouble'
import { parseQuantity, type ParsedQuantity, type UnreadQuantity } from './parseQuantity'
import type { QuantityKind, SiValue } from './quantityKind'
import { addRatios, multiplyRatios, negateRatio, type Ratio } from './ratio'
import type { UnitSymbol } from './units'

/** A quantity as typed: its value in SI, and the unit it was typed in ('' for a plain number). */
export interface ReadQuantity<K extends QuantityKind> {
  readonly ok: true
  readonly kind: K
  readonly value: SiValue[K]
  readonly unit: UnitSymbol | CompoundSymbol | ''
}

export type ReadResult<K extends QuantityKind> = ReadQuantity<K> | UnreadQuantity

/**
 * Reads a quantity as a maker types it: an optional sign, a number (readNumber tells which forms),
 * and a unit of the kind asked, which is never guessed. Feet and inches, and pounds and ounces, may
 * stand one after the other: 5 ft 6 1/2 in, 5'6", 12 lb 4 oz. The value is computed exactly and
 * rounded once: "64 in" is the double nearest to 1.6256. A negative quantity is read as such;
 * what range is allowed is the field's affair.
 *
 * @example readQuantity('3/16 in', 'length') // { ok: true, kind: 'length', value: 0.0047625, unit: 'in' }
 */
export function readQuantity<K extends QuantityKind>(text: string, kind: K): ReadResult<K> {
  const parsed = parseQuantity(text, kind)
  if (!parsed.ok) return parsed
  const exact = exactValue(parsed)
  if (kind === 'count' && exact.numerator % exact.denominator !== 0n) {
    return { ok: false, problem: { code: 'NOT_WHOLE', text: parsed.text } }
  }
  const value = nearestDouble(exact)
  if (!Number.isFinite(value)) return { ok: false, problem: { code: 'NOT_FINITE', text: parsed.text } }
  const unit = parsed.minor?.compound.symbol ?? parsed.unit?.symbol ?? ''
  return { ok: true, kind, value: value as SiValue[K], unit }
}

/** The value in SI, exactly. */
function exactValue({ negative, number, unit, minor }: ParsedQuantity): Ratio {
  let size = number.found.value
  if (unit !== null) size = multiplyRatios(size, unit.size)
  if (minor !== null) {
    size = addRatios(size, multiplyRatios(minor.number.found.value, unitOf(minor.compound.minor).size))
  }
  return negative ? negateRatio(size) : size
}
