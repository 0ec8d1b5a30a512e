import type { CompoundSymbol } from './compoundUnit'
import type { QuantityKind } from './quantityKind'
import type { UnitSymbol } from './units'

/**
 * Why a text could not be read as a quantity. `text` is what was typed, without the blanks at its
 * ends, or the part of it in question; at most 60 characters, so that it can be shown.
 */
export type QuantityProblem =
  | { readonly code: 'EMPTY' }
  /** Longer than any quantity: not read at all. */
  | { readonly code: 'TOO_LONG', readonly length: number, readonly limit: number }
  | { readonly code: 'NOT_A_NUMBER', readonly text: string }
  /** "1,250": a thousand and more, or one and a quarter. `readings`: the whole text written both ways. */
  | { readonly code: 'AMBIGUOUS_NUMBER', readonly text: string, readonly readings: readonly [string, string] }
  | { readonly code: 'DIVISION_BY_ZERO', readonly text: string }
  /** Too large for any number the machine can hold. */
  | { readonly code: 'NOT_FINITE', readonly text: string }
  | { readonly code: 'NOT_WHOLE', readonly text: string }
  | { readonly code: 'NO_UNIT', readonly number: string, readonly allowed: readonly UnitSymbol[] }
  /** `allowed` is empty where the field takes a plain number. */
  | { readonly code: 'UNKNOWN_UNIT', readonly unit: string, readonly allowed: readonly UnitSymbol[], readonly suggestion: UnitSymbol | null }
  | {
    readonly code: 'WRONG_KIND'
    readonly unit: UnitSymbol | CompoundSymbol
    readonly unitKind: QuantityKind
    readonly askedKind: QuantityKind
    readonly allowed: readonly UnitSymbol[]
    readonly hint: UnitSymbol | null
  }
  /** A quantity was read and something follows it. */
  | { readonly code: 'TRAILING_TEXT', readonly text: string }
  /** "5 ft 14 in": the second part must stay below one of the first. */
  | { readonly code: 'PART_TOO_LARGE', readonly text: string, readonly unit: UnitSymbol, readonly below: number }

export type QuantityProblemCode = QuantityProblem['code']
