import { changedSinceSold } from '../../advice/freezeAsSold'
import type { CheckResult } from '../../check/checkHanger'
import { pullTestSummary } from '../../check/pullTests'
import { testHangFaults, testHangMass } from '../../check/testHang'
import type { HangerDocument } from '../../hanger/document'
import { INSPECTION_COLUMNS, type InspectionKind } from '../../hanger/inspectionFields'
import { PULL_TEST_COLUMNS } from '../../hanger/pullTestFields'
import { dayText } from '../../words/care'
import { findingText } from '../../words/findings'
import { INSPECTION_NAMES } from '../../words/inspections'
import { PULL_TEST_WORDS } from '../../words/pullTests'
import { pullTestSetText } from '../../words/pullTestSet'
import { INSPECTION_COLUMNS_TEXT, INSPECTION_TITLE, NO_TESTS_TEXT, RECORD_NAMES, RECORD_TITLE, soldText, TEST_COLUMNS, testHangText, TESTS_TITLE } from '../../words/sheetWorkshop'
import type { Block, TableRow } from '../block'

/** Pull tests as typed, what they say, and the test hang. */
export function testBlocks({ pullTests }: HangerDocument, check: CheckResult): readonly Block[] {
  const { hanger } = check.solved
  const { answers, given } = hanger
  const [, ...cells] = PULL_TEST_COLUMNS
  const rows = pullTests.map(({ typed }, i): TableRow => ({
    head: typed.date === undefined ? String(i + 1) : `${i + 1}, ${dayText(typed.date.trim())}`,
    cells: [typed.load ?? '–', ...cells.filter((column) => column !== 'date').map((column) => PULL_TEST_WORDS[column].choices[typed[column] ?? ''] ?? typed[column] ?? '–')],
  }))
  const sets = pullTestSummary(hanger.pullTests, answers['cord.fibre']).sets.map(pullTestSetText)
  const mass = testHangMass(answers)
  const faults = testHangFaults(check.solved, true)
  const hang = mass === null ? [] : [testHangText(answers, mass, faults?.length === 0, given.has('testHang.slip')), ...(faults ?? []).map(findingText)]
  const said = [...sets.flatMap(({ title, counts, warnings }) => [`${title}. ${counts}`, ...warnings]), ...hang]
  return [
    { kind: 'heading', level: 2, text: TESTS_TITLE },
    ...(rows.length === 0 ? [] : [{ kind: 'table', caption: '', columns: TEST_COLUMNS, rows } as const]),
    said.length === 0 ? { kind: 'paragraph', weight: 'plain', text: NO_TESTS_TEXT } : { kind: 'list', items: said },
  ]
}

/** When it was made and from what, for whom, its tag, how it was sold. */
export function recordFacts(document: HangerDocument, { solved: { hanger: { answers } } }: CheckResult): readonly { readonly name: string; readonly text: string }[] {
  const { sold } = document
  const said = (name: keyof typeof RECORD_NAMES, text: string | null): readonly { readonly name: string; readonly text: string }[] => (text === null || text.trim() === '' ? [] : [{ name: RECORD_NAMES[name], text: text.trim() }])
  return [
    ...said('made', answers['make.date'] === null ? null : dayText(answers['make.date'])),
    ...said('lot', answers['cord.lot']),
    ...said('customer', answers['make.customer']),
    ...said('code', answers['make.code']),
    ...said('sold', sold === null ? null : soldText(sold, changedSinceSold(document) === true)),
  ]
}

/** The record of the hanger, and what was found when it was looked at; nothing where nothing is recorded. */
export function recordBlocks(document: HangerDocument, check: CheckResult): readonly Block[] {
  const items = recordFacts(document, check)
  const rows = document.inspections.map(({ typed }): TableRow => {
    const [, ...cells] = INSPECTION_COLUMNS.map((column) => (column === 'what' ? INSPECTION_NAMES[(typed.what?.trim() ?? 'note') as InspectionKind] : typed[column]) ?? '–')
    return { head: typed.date === undefined ? '–' : dayText(typed.date.trim()), cells }
  })
  return [
    ...(items.length === 0 ? [] : [{ kind: 'heading', level: 2, text: RECORD_TITLE } as const, { kind: 'facts', items } as const]),
    ...(rows.length === 0 ? [] : [{ kind: 'table', caption: INSPECTION_TITLE, columns: INSPECTION_COLUMNS_TEXT, rows } as const]),
  ]
}
