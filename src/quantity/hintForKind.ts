import type { QuantityKind } from './quantityKind'
import type { UnitSymbol } from './units'

/** Mass where force is asked and the other way about: the unit that says the same pull or burden. */
const HINTS: Readonly<Partial<Record<QuantityKind, Readonly<Partial<Record<string, UnitSymbol>>>>>> = {
  force: { 'kg': 'kgf', 'g': 'kgf', 'lb': 'lbf', 'oz': 'lbf', 'lb oz': 'lbf' },
  mass: { N: 'kg', daN: 'kg', kN: 'kg', kgf: 'kg', lbf: 'lb' },
  linearDensity: { kg: 'kg/m', g: 'g/m', lb: 'lb/100 ft', oz: 'oz/yd' },
}

/** What to write where a unit of another kind was typed: lb where a force is asked gives lbf. */
export function hintForKind(symbol: string, asked: QuantityKind): UnitSymbol | null {
  return HINTS[asked]?.[symbol] ?? null
}
