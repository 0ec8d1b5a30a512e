import type { Decimal } from './roundRatio'
import type { UnitSymbol } from './units'

const PLURAL: Readonly<Partial<Record<UnitSymbol, string>>> = { day: 'days', week: 'weeks', month: 'months', year: 'years' }

/** How a unit is written behind a number: its symbol, or, where that is a word, its plural if due. */
export function unitName(symbol: UnitSymbol, { digits, decimals }: Decimal): string {
  const isOne = decimals === 0 && (digits === 1n || digits === -1n)
  return isOne ? symbol : PLURAL[symbol] ?? symbol
}
