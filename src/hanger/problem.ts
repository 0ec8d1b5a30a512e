import type { QuantityProblem } from '../quantity/quantityProblem'
import type { UnitSymbol } from '../quantity/units'
import type { FieldPath } from './fields'

/** Why a hanger file, or one field of it, could not be read. Sentences: words/problems.ts. */
export type FileProblem =
  | { readonly code: 'NOT_JSON'; readonly detail: string }
  | { readonly code: 'NOT_A_HANGER_FILE'; readonly found: string }
  | { readonly code: 'NEWER_VERSION'; readonly version: number }
  | { readonly code: 'BAD_VERSION'; readonly found: string }
  | { readonly code: 'BAD_NAME'; readonly found: string }
  | { readonly code: 'NOT_TEXT'; readonly path: string; readonly found: string }

/** What a quantity field allows, in SI, and a unit to say it in. */
export interface AllowedRange {
  readonly unit: UnitSymbol | ''
  readonly min: number
  readonly max: number
}

export type FieldProblem =
  | { readonly code: 'BAD_QUANTITY'; readonly path: FieldPath; readonly given: string; readonly why: QuantityProblem; readonly allowed: AllowedRange }
  | { readonly code: 'OUT_OF_RANGE'; readonly path: FieldPath; readonly given: string; readonly allowed: AllowedRange }
  | { readonly code: 'NOT_A_CHOICE'; readonly path: FieldPath; readonly given: string; readonly choices: readonly string[] }
  /** Two answers that cannot both be true: this one must stay below the other. */
  | { readonly code: 'CONFLICT'; readonly path: FieldPath; readonly given: string; readonly other: FieldPath; readonly otherText: string }

export type InputProblem = FileProblem | FieldProblem
