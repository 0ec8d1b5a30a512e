import type { QuantityKind } from './quantityKind'
import { UNITS, type UnitSymbol } from './units'

/** Names that are in use but not read, because they are loose, and the unit that may have been meant. */
const MEANT: Readonly<Record<string, UnitSymbol>> = {
  'gal': 'US gal',
  'gallon': 'US gal',
  'gallons': 'US gal',
  'kilo': 'kg',
  'kilos': 'kg',
  'lbm': 'lb',
  '#': 'lb',
  'kp': 'kgf',
  'cc': 'ml',
  'kph': 'km/h',
  'kmh': 'km/h',
  'sec': 's',
  'hr': 'h',
  'hrs': 'h',
  'wk': 'week',
  'yr': 'year',
}

/**
 * The unit of the asked kind that an unknown one may have been meant for: the same letters in
 * another case ("mM" for mm, "KN" for kN), or a loose name. Only ever shown, never computed with.
 * @example suggestUnit('KN', 'force') // 'kN'
 */
export function suggestUnit(text: string, kind: QuantityKind): UnitSymbol | null {
  const lower = text.toLowerCase()
  const slip = UNITS.find(unit => unit.kind === kind
    && (unit.symbol.toLowerCase() === lower || unit.symbol === MEANT[lower]))
  return slip?.symbol ?? null
}
