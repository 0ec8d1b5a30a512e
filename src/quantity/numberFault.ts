/** Why no number was found. For an ambiguous one: both readings, and the place just after it. */
export type NumberFault =
  | { readonly ok: false, readonly code: 'NOT_A_NUMBER' | 'DIVISION_BY_ZERO' }
  | { readonly ok: false, readonly code: 'AMBIGUOUS_NUMBER', readonly readings: readonly [string, string], readonly end: number }
