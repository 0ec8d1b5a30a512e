import { governingOf } from '../../check/checkHanger'
import { fieldOf, type FieldPath } from '../../hanger/fields'
import type { QuantityKind } from '../../quantity/quantityKind'
import type { LinkResult } from '../../check/linkResult'
import { parts } from '../../check/parts'
import { isWorse } from '../../check/verdict'
import { findingText } from '../../words/findings'
import { CHANGE_LEADS, CHANGE_PARTS_TITLES, changeTitle, HELPS_TITLE, NO_REMEDY_TEXT, partInTrouble, REMEDIES_TITLE, remedyLine } from '../../words/sheetChange'
import type { Block } from '../block'
import type { SheetFacts } from '../facts'
import { footBlocks } from '../foot'
import type { SheetOptions } from '../options'
import { ownVerdict } from '../../advice/ownVerdict'
import type { Sheet } from '../sheet'

/** A part and what is said of it; one of which nothing new is said only where it fails. */
const partBlocks = (of: LinkResult, said: readonly string[]): readonly Block[] => [
  ...(said.length > 0 || of.verdict === 'fails' ? [{ kind: 'heading', level: 3, text: partInTrouble(of) } as const] : []),
  ...(said.length > 0 ? [{ kind: 'list', items: said } as const] : []),
]

const kindOf = (path: FieldPath): QuantityKind | null => {
  const field = fieldOf(path)
  return field.type === 'quantity' || field.type === 'open' ? field.kind : null
}

/** In place of a sheet for a hanger that fails, or of which not enough is known: what must change, or what would settle it. No weight is told. */
export function mustChangeSheet({ document, answer: { check, remedies } }: SheetFacts, { format, today }: SheetOptions): Sheet {
  const held = ownVerdict(check) === 'fails' ? 'fails' : 'not enough known'
  const troubled = parts(check).flatMap(({ results }) => governingOf(results) ?? []).filter((l) => l.side === 'hanger' && isWorse(l.verdict, 'just holds'))
  const said = new Set<string>()
  const findings = (of: LinkResult): readonly string[] => of.findings.map(findingText).filter((text) => !said.has(text) && said.add(text))
  const mends = remedies.filter(({ linkVerdict }) => !isWorse(linkVerdict, 'just holds'))
  const helps = remedies.filter((remedy) => !mends.includes(remedy))
  const listed = (heading: string, of: typeof remedies): readonly Block[] => (of.length === 0 ? [] : [{ kind: 'heading', level: 2, text: heading }, { kind: 'list', items: of.map((remedy) => remedyLine(remedy, kindOf)) }])
  const none: readonly Block[] = remedies.length === 0 && held === 'fails' ? [{ kind: 'paragraph', weight: 'plain', text: NO_REMEDY_TEXT }] : []
  const title = changeTitle(document.name, held)
  return {
    kind: held === 'fails' ? 'mustChange' : 'notKnown', title, language: 'en', format, draft: null, notices: [{ code: held === 'fails' ? 'FAILS' : 'NOT_KNOWN' }],
    pages: [{
      side: 'front',
      blocks: [
        { kind: 'heading', level: 1, text: title },
        { kind: 'paragraph', weight: 'strong', text: CHANGE_LEADS[held] },
        { kind: 'heading', level: 2, text: CHANGE_PARTS_TITLES[held] },
        ...troubled.flatMap((of) => partBlocks(of, findings(of))),
        ...listed(REMEDIES_TITLE, mends), ...listed(HELPS_TITLE, helps), ...none,
      ],
      foot: footBlocks(check, today),
    }],
  }
}
