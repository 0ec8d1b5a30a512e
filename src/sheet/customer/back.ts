import type { Caution } from '../../check/cautions'
import { governingOf, type CheckResult } from '../../check/checkHanger'
import { hangsFromTwoHooks } from './placeBox'
import { parts } from '../../check/parts'
import { pottedTogether } from '../../check/tiers/pottedTogether'
import type { FieldPath } from '../../hanger/fields'
import { STATES, type State } from '../../load/states'
import { massLimitText, massRangeText } from '../../words/amounts'
import { CAUTION_TEXTS } from '../../words/cautions'
import { assumedLine, CAUTIONS_TITLE, knownTexts, KNOWN_TITLE, MARK_MEANINGS, STATE_TEXTS, WEIGHTS_COLUMNS, WEIGHTS_TITLE } from '../../words/sheetKnown'
import { NEEDS_COLUMNS, NEEDS_TITLE, needRow, needsNoteText } from '../../words/sheetPlace'
import type { Block, FigureMark, TableRow } from '../block'
import type { Limit, SheetFacts } from '../facts'
import { shortFoot } from '../foot'
import { markOf } from '../heaviestFigure'
import type { SheetOptions } from '../options'
import type { Page } from '../sheet'
import { sheetName } from '../../words/sheetCustomer'

/** Said at the foot of the front. */
const AT_THE_FOOT: readonly Caution[] = ['aidNotCertificate', 'localCodes', 'askLicensed']

/** What was not said because nobody would: not worth a customer’s reading. */
const SELF_EVIDENT: readonly FieldPath[] = ['pot.have', 'make.have', 'make.stage']

const hasPot = ({ solved }: CheckResult): boolean => solved.hanger.answers['pot.have'] === 'yes'

/** Ranges of the weight in each state: with the hanger's own pot, and with the heaviest. */
function weightsTable({ answer: { check }, limit }: SheetFacts): Block {
  const told: readonly (readonly [string, CheckResult])[] = [
    ...(hasPot(check) ? [[WEIGHTS_COLUMNS.own, check] as const] : []),
    ...(limit === null ? [] : [[WEIGHTS_COLUMNS.heaviest, limit.check] as const]),
  ]
  // The heaviest is told once, rounded down, and nowhere as more.
  const weight = (of: CheckResult, state: State): string =>
    (of === limit?.check && of.solved.tiers.length === 0 && state === 'watered' ? massLimitText(limit.watered) : massRangeText(pottedTogether(of.solved)[state].mass))
  const head = WEIGHTS_COLUMNS[check.solved.tiers.length > 0 ? 'together' : 'state']
  const rows = STATES.map((state): TableRow => ({ head: STATE_TEXTS[state], cells: told.map(([, of]) => weight(of, state)) }))
  return { kind: 'table', caption: WEIGHTS_TITLE, columns: [head, ...told.map(([name]) => name)], rows }
}

/** What each usual place needs for the heaviest pot; where nothing does, for the hanger's own. */
function needsBlocks({ needs, ownNeeds }: Limit, check: CheckResult): readonly Block[] {
  const watered = check.solved.potted.watered.mass.high
  const rows = needs.needs.map((need): TableRow => {
    const own = ownNeeds.find(({ place }) => place === need.place)
    return needRow(need, own === undefined ? null : { need: own, watered, isTiers: check.solved.tiers.length > 0 })
  })
  return [
    { kind: 'table', caption: NEEDS_TITLE, columns: NEEDS_COLUMNS, rows },
    { kind: 'paragraph', weight: 'small', text: needsNoteText(needs, hangsFromTwoHooks(check)) },
  ]
}

/** How the strength of each of its own parts is known, and what was taken as usual. */
function knownBlocks(check: CheckResult, mark: FigureMark | null): readonly Block[] {
  const decisive = parts(check).flatMap(({ results }) => governingOf(results) ?? []).filter((l) => l.side === 'hanger' && l.link !== 'load')
  return [
    { kind: 'heading', level: 2, text: KNOWN_TITLE },
    { kind: 'paragraph', weight: 'small', text: [...(mark === null ? [] : [MARK_MEANINGS[mark]]), ...knownTexts(decisive), assumedLine(check.assumed.map(({ path }) => path).filter((path) => !SELF_EVIDENT.includes(path)))].join(' ') },
  ]
}

/** The back of a customer sheet. */
export function customerBack(facts: SheetFacts, { today }: SheetOptions): Page {
  const { answer: { check }, limit } = facts
  return {
    side: 'back',
    blocks: [
      ...(hasPot(check) || limit !== null ? [weightsTable(facts)] : []),
      ...(limit === null ? [] : needsBlocks(limit, check)),
      { kind: 'heading', level: 2, text: CAUTIONS_TITLE },
      { kind: 'list', items: check.cautions.filter((caution) => !AT_THE_FOOT.includes(caution)).map((caution) => CAUTION_TEXTS[caution]) },
      ...knownBlocks(limit?.check ?? check, limit === null ? null : markOf(limit, check).mark),
    ],
    foot: shortFoot(sheetName(facts.document.name), check, today),
  }
}
