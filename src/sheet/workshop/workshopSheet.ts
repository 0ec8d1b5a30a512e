import { careSentences } from '../../words/care'
import { onPaper } from '../../words/onPaper'
import { NO_WEIGHT_TOLD } from '../../words/sheetCustomer'
import { PICTURE_SAID, workshopTitle } from '../../words/sheetWorkshop'
import { verdictSentence } from '../../words/verdictSentence'
import type { Block } from '../block'
import type { SheetFacts } from '../facts'
import { footBlocks, noticesOf, shortFoot } from '../foot'
import { hangerPicture } from '../hangerPicture'
import { heaviestFigure } from '../heaviestFigure'
import type { SheetOptions } from '../options'
import { ownVerdict } from '../../advice/ownVerdict'
import type { Sheet } from '../sheet'
import { cordBlocks } from './cords'
import { inputsTable } from './inputs'
import { bendingBlocks, findingsBlocks, linksBlocks, sumBlocks } from './links'
import { recordBlocks, testBlocks } from './records'

/**
 * The maker's own sheet: verdicts, every part with what decides it, every answer as typed or assumed, the sum of the
 * part that decides, bending, the cord plan, tests and record. It is made of any hanger, also one that fails: it stays
 * in the workshop. Pure.
 */
export const workshopSheet = (facts: SheetFacts, options: SheetOptions): Sheet => onPaper((): Sheet => {
  const { document, answer: { check }, limit } = facts
  const title = workshopTitle(document.name)
  const care = careSentences(check.care)
  const weight: Block = limit === null
    ? { kind: 'paragraph', weight: 'strong', text: NO_WEIGHT_TOLD[ownVerdict(check) === 'fails' ? 'fails' : 'not enough known'] }
    : heaviestFigure(limit, check)
  return {
    kind: 'workshop', title, language: 'en', format: options.format, draft: null, notices: noticesOf(check),
    pages: [
      {
        side: 'front',
        blocks: [
          { kind: 'heading', level: 1, text: title },
          {
            kind: 'columns', columns: [
              { width: 'even', blocks: [{ kind: 'paragraph', weight: 'strong', text: verdictSentence(check) }, weight, ...recordBlocks(document, check), { kind: 'list', items: [care.replace, ...care.reasons, care.inspect] }] },
              { width: 'even', blocks: [{ kind: 'drawing', picture: hangerPicture(check), said: PICTURE_SAID, labels: [] }] },
            ],
          },
          ...linksBlocks(check), ...findingsBlocks(check), ...bendingBlocks(check), ...sumBlocks(check),
        ],
        foot: footBlocks(check, options.today),
      },
      { side: 'front', blocks: [...cordBlocks(check), ...testBlocks(document, check), inputsTable(document, check)], foot: shortFoot(title, check, options.today) },
    ],
  }
})
