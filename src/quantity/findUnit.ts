import type { QuantityKind } from './quantityKind'
import { ratio, type Ratio } from './ratio'
import { UNITS, type UnitSymbol } from './units'

/** One unit of the table, ready to compute with. */
export interface Unit {
  readonly symbol: UnitSymbol
  readonly kind: QuantityKind
  /** The unit in SI, exactly. */
  readonly size: Ratio
}

const bySymbol = new Map<UnitSymbol, Unit>()
const byExact = new Map<string, Unit>()
const byWord = new Map<string, Unit>()
for (const { symbol, kind, size, exact, words } of UNITS) {
  const unit = { symbol, kind, size: ratio(size[0], size[1]) }
  bySymbol.set(symbol, unit)
  for (const spelling of [symbol, ...exact]) byExact.set(spelling, unit)
  for (const word of words) byWord.set(word, unit)
}

/**
 * The unit a text spells, of whatever kind, or undefined. The text holds no blanks at its ends and
 * none doubled. Case counts in SI symbols and not in words and customary units: "Inches" and "LBS"
 * are read, "mM" is not. "m³", "m^3" and "m3" are one; so are "kg / m" and "kg/m".
 * @example findUnit('Inches').symbol // 'in'
 */
export function findUnit(text: string): Unit | undefined {
  const typed = byExact.get(text)
  if (typed !== undefined) return typed
  const plain = text.replaceAll('³', '3').replaceAll('²', '2').replaceAll('^', '').replaceAll(' /', '/').replaceAll('/ ', '/')
  return byExact.get(plain) ?? byWord.get(plain.toLowerCase())
}

/** The unit with that symbol. Throws for a symbol that is not in the table: a programmer's slip. */
export function unitOf(symbol: UnitSymbol): Unit {
  const unit = bySymbol.get(symbol)
  if (unit === undefined) throw new Error(`no unit has the symbol ${symbol}`)
  return unit
}

/**
 * The symbols of the units a kind of quantity may be given in, in the order of the table.
 * @example unitsOf('angle') // ['deg', 'rad']
 */
export function unitsOf(kind: QuantityKind): readonly UnitSymbol[] {
  return UNITS.filter(unit => unit.kind === kind).map(unit => unit.symbol)
}
