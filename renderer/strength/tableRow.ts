/** A row of a table on a card: what it is of, and what is told of it, column by column. */
export interface TableRow {
  readonly name: string
  readonly cells: readonly string[]
  /** Whether it is the one that matters most; its name says so too. */
  readonly isMarked: boolean
}
