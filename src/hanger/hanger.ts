import type { Basis } from '../catalogue/basis'
import type { Answers, FieldPath } from './fields'
import type { Inspection } from './inspection'
import type { PullTest } from './pullTest'

/** A value that was not given and had to be assumed. `text` reads back through the reader. */
export interface Assumed {
  readonly path: FieldPath
  readonly text: string
  readonly basis: Basis
  readonly source: string
  /** What nobody mentions: taken, but not listed. */
  readonly tacit: boolean
}

/** A hanger file read into SI: every field has a value, and it is known which were given. */
export interface Hanger {
  readonly name: string
  readonly answers: Answers
  readonly given: ReadonlySet<FieldPath>
  readonly assumed: readonly Assumed[]
  /** Forces that were given as masses and taken as their pull. */
  readonly asMass: readonly FieldPath[]
  /** The pull tests whose load is written, in the order of the log. */
  readonly pullTests: readonly PullTest[]
  /** What was found and done when it was looked at, in the order of the log. */
  readonly inspections: readonly Inspection[]
}
