import { onPaper } from '../words/onPaper'
import { replaceByText } from '../words/sheetCare'
import { draftText, NO_WEIGHT_TOLD, sheetName } from '../words/sheetCustomer'
import { FOOT_NAMES } from '../words/sheetFoot'
import { tagLine, tagTitle } from '../words/sheetTag'
import type { Block } from './block'
import { mustChangeSheet } from './customer/mustChange'
import type { SheetFacts } from './facts'
import { noticesOf } from './foot'
import { heaviestFigure } from './heaviestFigure'
import type { SheetOptions } from './options'
import { ownVerdict } from '../advice/ownVerdict'
import type { Sheet } from './sheet'

/**
 * The tag that hangs with a hanger, to be cut out: its heaviest watered weight, its code, how often to look. A hanger
 * of which no weight may be told gets the sheet of what must change instead, as for the customer sheet. Pure.
 */
export const tagSheet = (facts: SheetFacts, options: SheetOptions): Sheet => onPaper((): Sheet => {
  const { document, answer: { check }, limit } = facts
  if (limit === null && !options.draft) return mustChangeSheet(facts, options)
  const { answers } = check.solved.hanger
  const said = (name: string, text: string | null): readonly { readonly name: string; readonly text: string }[] => (text === null || text.trim() === '' ? [] : [{ name, text: text.trim() }])
  const known = [...said(FOOT_NAMES.code, answers['make.code']), ...said(FOOT_NAMES.maker, answers['make.maker']), ...said(FOOT_NAMES.contact, answers['make.contact'])]
  const figure: Block = limit === null
    ? { kind: 'paragraph', weight: 'strong', text: NO_WEIGHT_TOLD[ownVerdict(check) === 'fails' ? 'fails' : 'not enough known'] }
    : heaviestFigure(limit, check)
  return {
    kind: 'tag', title: tagTitle(document.name), language: 'en', format: options.format, notices: noticesOf(check),
    draft: options.draft ? draftText(limit === null && ownVerdict(check) !== 'fails' ? 'not enough known' : ownVerdict(check)) : null,
    pages: [{
      side: 'front', foot: [],
      blocks: [{
        kind: 'cutOut', blocks: [
          { kind: 'heading', level: 1, text: sheetName(document.name) },
          figure,
          ...(known.length === 0 ? [] : [{ kind: 'facts', items: known } as const]),
          { kind: 'paragraph', weight: 'plain', text: `${tagLine(check.care.inspect)} ${replaceByText(check.care)}` },
        ],
      }],
    }],
  }
})
