import { asSold } from '../../advice/freezeAsSold'
import type { HangerDocument } from '../../hanger/document'
import { FIELD_PATHS } from '../../hanger/fields'
import { careSentences } from '../../words/care'
import { FIELD_WORDS } from '../../words/fields'
import { onPaper } from '../../words/onPaper'
import { answerText, CARE_TITLE, CHANGED_COLUMNS, CHANGED_TITLE, NOT_SAID, NOTHING_RECORDED, recordTitle } from '../../words/sheetWorkshop'
import { verdictSentence } from '../../words/verdictSentence'
import type { Block, TableRow } from '../block'
import type { SheetFacts } from '../facts'
import { footBlocks, noticesOf } from '../foot'
import type { SheetOptions } from '../options'
import type { Sheet } from '../sheet'
import { recordBlocks, testBlocks } from './records'

/** Answers that are no longer as they were sold, side by side. */
function changesTable(document: HangerDocument): readonly Block[] {
  const sold = asSold(document)
  if (sold === null || !sold.ok) return []
  const before = sold.document.typed
  const rows = FIELD_PATHS.filter((path) => before[path] !== document.typed[path]).map((path): TableRow => {
    const [then, now] = [before[path], document.typed[path]].map((text) => (text === undefined ? NOT_SAID : answerText(path, text)))
    return { head: FIELD_WORDS[path].label, cells: [then ?? NOT_SAID, now ?? NOT_SAID] }
  })
  return rows.length === 0 ? [] : [{ kind: 'table', caption: CHANGED_TITLE, columns: CHANGED_COLUMNS, rows }]
}

/** The record of one hanger for the maker's folder: made, sold, looked at and mended, what changed since, its tests and its care. Pure. */
export const recordSheet = ({ document, answer: { check } }: SheetFacts, { format, today }: SheetOptions): Sheet => onPaper((): Sheet => {
  const title = recordTitle(document.name)
  const record = recordBlocks(document, check)
  const care = careSentences(check.care)
  return {
    kind: 'record', title, language: 'en', format, draft: null, notices: noticesOf(check),
    pages: [{
      side: 'front',
      blocks: [
        { kind: 'heading', level: 1, text: title },
        { kind: 'paragraph', weight: 'strong', text: verdictSentence(check) },
        ...(record.length === 0 ? [{ kind: 'paragraph', weight: 'plain', text: NOTHING_RECORDED } as const] : record),
        ...changesTable(document),
        ...testBlocks(document, check),
        { kind: 'heading', level: 2, text: CARE_TITLE },
        { kind: 'list', items: [care.replace, ...care.reasons, care.inspect] },
      ],
      foot: footBlocks(check, today),
    }],
  }
})
