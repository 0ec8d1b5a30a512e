import { bestFirst, type PotTaken } from '../advice/hangersForPot'
import type { HangerDocument } from '../hanger/document'
import { onPaper } from '../words/onPaper'
import { sheetName } from '../words/sheetCustomer'
import { AID_TEXT, footFacts } from '../words/sheetFoot'
import { chartCellText, chartHangerName, listingWeightText, NO_ROWS_TEXT, POT_TAKEN_COLUMNS, POT_TAKEN_NOTE, POT_TAKEN_TITLE, potTakenRestText, potTakenText } from '../words/sizeChart'
import type { Block } from './block'
import type { SheetOptions } from './options'
import type { Sheet } from './sheet'

/** Rows of the table, the best first; further ones are told by their number. */
const MOST_ROWS = 300

/** Which of several hangers take the pot of a document, the best first, and why the others do not. Pure. */
export const potTakenSheet = (tried: readonly PotTaken[], pot: HangerDocument, { format, today }: Pick<SheetOptions, 'format' | 'today'>): Sheet => onPaper((): Sheet => {
  const rows = bestFirst(tried)
  const table: Block = {
    kind: 'table', caption: pot.name.trim() === '' ? POT_TAKEN_TITLE : sheetName(pot.name), columns: POT_TAKEN_COLUMNS,
    rows: rows.slice(0, MOST_ROWS).map((row) => ({ head: chartHangerName(row), cells: [chartCellText(row), potTakenText(row), listingWeightText(row.isTold ? row.heaviest : null)] })),
  }
  const rest = rows.length - MOST_ROWS
  const blocks: readonly Block[] = rows.length === 0
    ? [{ kind: 'paragraph', weight: 'strong', text: NO_ROWS_TEXT }]
    : [table, ...(rest > 0 ? [{ kind: 'paragraph', weight: 'plain', text: potTakenRestText(rest) } as const] : []), { kind: 'paragraph', weight: 'small', text: POT_TAKEN_NOTE }]
  return {
    kind: 'chart', title: POT_TAKEN_TITLE, language: 'en', format, draft: null, notices: [],
    pages: [{
      side: 'front',
      blocks: [{ kind: 'heading', level: 1, text: POT_TAKEN_TITLE }, ...blocks],
      foot: [
        { kind: 'facts', items: footFacts({ 'make.maker': pot.typed['make.maker'] ?? null, 'make.contact': null, 'make.date': null, 'make.code': null }, today) },
        { kind: 'paragraph', weight: 'small', text: AID_TEXT },
      ],
    }],
  }
})
