import { onPaper } from '../../words/onPaper'
import { customerTitle, draftText } from '../../words/sheetCustomer'
import type { SheetFacts } from '../facts'
import { noticesOf } from '../foot'
import type { SheetOptions } from '../options'
import { ownVerdict } from '../../advice/ownVerdict'
import type { Sheet } from '../sheet'
import { customerBack } from './back'
import { customerFront } from './front'
import { mustChangeSheet } from './mustChange'

/**
 * The sheet that goes to the customer with a hanger. Where the hanger itself fails, or not enough is known of it, the
 * sheet of what must change, unless a draft is asked for; a draft is marked on every page and tells no weight that
 * the check does not. An unknown place, or one that fails, stops nothing: its box says so. Pure.
 */
export const customerSheet = (facts: SheetFacts, options: SheetOptions): Sheet => onPaper((): Sheet => {
  const { document, answer: { check }, limit } = facts
  if (limit === null && !options.draft) return mustChangeSheet(facts, options)
  return {
    kind: 'customer', title: customerTitle(document.name), language: 'en', format: options.format,
    draft: options.draft ? draftText(limit === null && ownVerdict(check) !== 'fails' ? 'not enough known' : ownVerdict(check)) : null,
    pages: [customerFront(facts, options), customerBack(facts, options)],
    notices: noticesOf(check),
  }
})
