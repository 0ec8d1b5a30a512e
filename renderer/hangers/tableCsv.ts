import { BATCH_COLUMNS, batchCells, COLUMN_NAMES } from '#core'
import { nameOf, type TableHanger } from './tableRows'

/** The table as the command line writes it; a cell that begins like a formula is kept a text by an apostrophe. */
export async function tableCsv(hangers: readonly TableHanger[]): Promise<string> {
  const { stringify } = await import('csv-stringify/browser/esm/sync')
  const rows = hangers.map((hanger, i) => {
    const { file, card, heaviest } = hanger
    const facts = card?.facts ?? null
    const cells = batchCells({ line: i + 1, file: file.name, name: nameOf(hanger), facts: facts === null ? null : { ...facts, heaviest: heaviest ?? null }, problems: [] }, COLUMN_NAMES)
    return [...cells.slice(0, -1), card?.problem ?? '']
  })
  return stringify([[...BATCH_COLUMNS], ...rows], { escape_formulas: true })
}
