import type { CheckResult } from '../../check/checkHanger'
import type { HangerDocument } from '../../hanger/document'
import { FIELD_PATHS, type FieldPath } from '../../hanger/fields'
import { isRelevant } from '../../hanger/relevance'
import { FIELD_WORDS } from '../../words/fields'
import { answerText, AS_TYPED, assumedText, INPUT_COLUMNS, INPUTS_TITLE, NOT_COUNTED, TOLD } from '../../words/sheetWorkshop'
import type { Block, TableRow } from '../block'

/** Groups that a customer tells where the place was not seen. */
const OF_PLACE: readonly string[] = ['place', 'fixing', 'bracket', 'rail']

/** Every answer in the order of the table: as it was typed, or what was assumed in its place and has a bearing. */
export function inputsTable(document: HangerDocument, check: CheckResult): Block {
  const { answers } = check.solved.hanger
  const told = (path: FieldPath): boolean => answers['place.known'] === 'told' && OF_PLACE.includes(path.split('.', 1)[0] ?? '')
  const howKnown = (path: FieldPath): string => (!isRelevant(path, answers) ? NOT_COUNTED : told(path) ? TOLD : AS_TYPED)
  const rows = FIELD_PATHS.flatMap((path): TableRow[] => {
    const typed = document.typed[path]
    if (typed !== undefined) return [{ head: FIELD_WORDS[path].label, cells: [answerText(path, typed), howKnown(path)] }]
    const assumed = check.assumed.find((a) => a.path === path)
    return assumed === undefined ? [] : [{ head: FIELD_WORDS[path].label, cells: [answerText(path, assumed.text), assumedText(assumed)] }]
  })
  return { kind: 'table', caption: INPUTS_TITLE, columns: INPUT_COLUMNS, rows }
}
