import { diagramsOf } from '../../check/diagrams'
import { governingOf, type CheckResult } from '../../check/checkHanger'
import { parts } from '../../check/parts'
import { findingText } from '../../words/findings'
import { CASE_NAMES, LINK_NAMES } from '../../words/names'
import { BENDING_TITLE, bendingCaption, FINDINGS_TITLE, LINK_COLUMNS, linkRow, LINKS_NOTE, LINKS_TITLE, SUM_COLUMNS, SUM_TITLE, termRow } from '../../words/sheetWorkshop'
import { linkName } from '../../words/tiers'
import { bendingPicture, worstBending } from '../bendingPicture'
import type { Block } from '../block'

/** Of each part the result that decides, from the building down. */
const decisive = (check: CheckResult): CheckResult['links'] => parts(check).filter(({ link }) => link !== 'load').flatMap(({ results }) => governingOf(results) ?? [])

/** Every part in the situation that decides, with its factors and how its strength is known. */
export const linksBlocks = (check: CheckResult): readonly Block[] => [
  { kind: 'table', caption: LINKS_TITLE, columns: LINK_COLUMNS, rows: decisive(check).map(linkRow) },
  { kind: 'paragraph', weight: 'small', text: LINKS_NOTE },
]

/** The worked sums of what decides the hanger's own verdict and, where that is another part, the whole. */
export function sumBlocks(check: CheckResult): readonly Block[] {
  const summed = decisive(check).filter(({ terms }) => terms.length > 0)
  const governing = [governingOf(summed.filter(({ side }) => side === 'hanger')), governingOf(summed)]
  return [...new Set(governing.flatMap((result) => result ?? []))].map((result): Block => ({
    kind: 'table', caption: `${SUM_TITLE}: ${linkName(result.link, result.tier).toLowerCase()}, ${CASE_NAMES[result.case]}`, columns: SUM_COLUMNS, rows: result.terms.map(termRow),
  }))
}

/** What was found, each once: of the parts that decide, of what hangs in it, and of the whole. */
export function findingsBlocks(check: CheckResult): readonly Block[] {
  const load = governingOf(check.links.filter(({ link }) => link === 'load'))
  const all = [...decisive(check).toReversed(), ...(load === null ? [] : [load])].flatMap(({ findings }) => findings)
  const texts = [...new Set([...all, ...check.findings].map(findingText))]
  return texts.length === 0 ? [] : [{ kind: 'heading', level: 2, text: FINDINGS_TITLE }, { kind: 'list', items: texts }]
}

/** Bars that bend, each in the situation that decides it. */
export function bendingBlocks(check: CheckResult): readonly Block[] {
  const diagrams = decisive(check).filter(({ tier }) => tier === 1).flatMap((result) => diagramsOf(check.solved, result.case).filter(({ link }) => link === result.link))
  if (diagrams.length === 0) return []
  return [
    { kind: 'heading', level: 2, text: BENDING_TITLE },
    ...diagrams.map((diagram): Block => {
      const worst = worstBending(diagram)
      return { kind: 'diagram', picture: bendingPicture(diagram), caption: bendingCaption(LINK_NAMES[diagram.link], CASE_NAMES[diagram.case], worst.moment, worst.at, worst.sag) }
    }),
  ]
}
