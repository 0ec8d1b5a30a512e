import type { QuantityProblem } from '../quantity/quantityProblem'
import type { UnitSymbol } from '../quantity/units'
import type { FieldPath } from './fields'
import type { InspectionColumn } from './inspectionFields'
import type { PullTestColumn } from './pullTestFields'
import type { ScrewProblem } from './readScrew'

/** Why a hanger file, or one field of it, could not be read. Sentences: words/problems.ts. */
export type FileProblem =
  | { readonly code: 'NOT_JSON'; readonly detail: string }
  | { readonly code: 'NOT_A_HANGER_FILE'; readonly found: string }
  | { readonly code: 'NEWER_VERSION'; readonly version: number }
  | { readonly code: 'BAD_VERSION'; readonly found: string }
  | { readonly code: 'BAD_NAME'; readonly found: string }
  | { readonly code: 'NOT_A_LOG'; readonly log: 'pullTests' | 'inspections'; readonly found: string }
  | { readonly code: 'NOT_TEXT'; readonly path: string; readonly found: string }

/** What a quantity field allows, in SI, and a unit to say it in. */
export interface AllowedRange {
  readonly unit: UnitSymbol | ''
  readonly min: number
  readonly max: number
}

/** Why the text of one value could not be read; `path` names the field or the column. */
export type ValueProblem<Path extends string> =
  | { readonly code: 'BAD_QUANTITY'; readonly path: Path; readonly given: string; readonly why: QuantityProblem; readonly allowed: AllowedRange }
  | { readonly code: 'OUT_OF_RANGE'; readonly path: Path; readonly given: string; readonly allowed: AllowedRange }
  | { readonly code: 'NOT_A_CHOICE'; readonly path: Path; readonly given: string; readonly choices: readonly string[] }
  | { readonly code: 'BAD_DATE'; readonly path: Path; readonly given: string }
  | { readonly code: 'BAD_SCREW'; readonly path: Path; readonly given: string; readonly why: ScrewProblem }
  | { readonly code: 'TEXT_TOO_LONG'; readonly path: Path; readonly given: string; readonly max: number }

/** How one answer must stand to another. */
export type Relation = 'below' | 'atMost' | 'above' | 'atLeast'

export type FieldProblem =
  | ValueProblem<FieldPath>
  /** Two answers that cannot both be true: this one must stand in the relation to the other. */
  | { readonly code: 'CONFLICT'; readonly path: FieldPath; readonly given: string; readonly relation: Relation; readonly other: FieldPath; readonly otherText: string }

/** A value in a row of a log that cannot be read; rows count from 0. */
export type RecordProblem =
  | { readonly code: 'IN_PULL_TEST'; readonly row: number; readonly why: ValueProblem<PullTestColumn> }
  | { readonly code: 'IN_INSPECTION'; readonly row: number; readonly why: ValueProblem<InspectionColumn> }

export type AnswerProblem = FieldProblem | RecordProblem
export type InputProblem = FileProblem | AnswerProblem
