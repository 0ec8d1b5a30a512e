import type { Value } from '../catalogue/basis'
import type { Term } from './linkResult'
import type { TermCode } from './termCodes'

/** A line of a worked sum that enters from the catalogue. */
export const fromCatalogue = (code: TermCode, symbol: string, v: Value): Term =>
  ({ code, symbol, value: v.value, unit: v.unit, basis: v.basis, source: v.source, formula: null })

/** A line that enters from the hanger file or from an earlier stage of the check. */
export const entering = (code: TermCode, symbol: string, value: number, unit: string, basis: Term['basis'], source: string): Term =>
  ({ code, symbol, value, unit, basis, source, formula: null })

/** A line worked out from other lines by their symbols. */
export const worked = (code: TermCode, symbol: string, value: number, unit: string, formula: string, source: string): Term =>
  ({ code, symbol, value, unit, basis: 'computed', source, formula })
