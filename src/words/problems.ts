import { formatQuantity } from '../quantity/formatQuantity'
import { formatSi } from '../quantity/formatSi'
import type { UnitSymbol } from '../quantity/units'
import type { AllowedRange, FieldProblem, FileProblem, InputProblem, RecordProblem, Relation, ValueProblem } from '../hanger/problem'
import { timeText } from './amounts'
import { FIELD_WORDS } from './fields'
import { INSPECTION_WORDS } from './inspections'
import { PULL_TEST_WORDS } from './pullTests'
import { orList, quantityText } from './quantityProblems'
import { screwProblemText } from './screwProblems'
import { withMark, writingHabits } from './writing'

const FILE_WORDS: { readonly [C in FileProblem['code']]: (problem: Extract<FileProblem, { code: C }>) => string } = {
  NOT_JSON: ({ detail }) => `This is not a hanger file: it cannot be read as JSON (${detail}).`,
  NOT_A_HANGER_FILE: ({ found }) => `This is not a hanger file: "format" should be "strandwise-hanger" and is ${found}.`,
  NEWER_VERSION: ({ version }) => `This hanger file is of version ${version}, made by a newer Strandwise; this one reads version 1.`,
  BAD_VERSION: ({ found }) => `This is not a hanger file: "version" should be a whole number from 1 and is ${found}.`,
  BAD_NAME: ({ found }) => `The name should be a text of at most 200 characters and is ${found}.`,
  NOT_A_LOG: ({ log, found }) => `“${log}” should be a list of ${log === 'pullTests' ? 'pull tests, each with its load' : 'inspections, each with what was found'}, and is ${found}.`,
  NOT_TEXT: ({ path, found }) => `“${path}” should be a text with its unit, such as "3 mm", and is ${found}.`,
}

type ValueWords = { readonly [C in ValueProblem<string>['code']]: (label: string, problem: Extract<ValueProblem<string>, { code: C }>) => string }

const given = (label: string, text: string): string => `${label}${label.endsWith('?') ? ' Given' : ': given'} “${text}”`

const VALUE_WORDS: ValueWords = {
  BAD_QUANTITY: (label, { given: text, why, allowed }) => `${given(label, text)}, but ${quantityText(why)}. Allowed: ${allowedText(allowed)}.`,
  OUT_OF_RANGE: (label, { given: text, allowed }) => `${given(label, text)}, which is outside the allowed ${allowedText(allowed)}.`,
  NOT_A_CHOICE: (label, { given: text, choices }) => `${given(label, text)}. Allowed: ${orList(choices)}.`,
  BAD_DATE: (label, { given: text }) => `${given(label, text)}, which is no day of the calendar. Allowed: year-month-day, such as 2026-03-21.`,
  BAD_SCREW: (label, { given: text, why }) => `${given(label, text)}. ${screwProblemText(why)}`,
  TEXT_TOO_LONG: (label, { given: text, max }) => `${label}: given ${text.length} characters beginning “${text.slice(0, 30)}”. Allowed: up to ${max}.`,
}

const RELATION_WORDS: Readonly<Record<Relation, string>> = { below: 'must stay below', atMost: 'may be at most', above: 'must be more than', atLeast: 'must be at least' }

/** The sentence for a value by the name given: what was given, what is allowed. */
export const valueText = (label: string, problem: ValueProblem<string>): string =>
  (VALUE_WORDS[problem.code] as (label: string, p: ValueProblem<string>) => string)(label, problem)

function answerText(problem: FieldProblem | RecordProblem): string {
  if (problem.code === 'IN_PULL_TEST') return `Pull test ${problem.row + 1}, ${valueText(PULL_TEST_WORDS[problem.why.path].label.toLowerCase(), problem.why)}`
  if (problem.code === 'IN_INSPECTION') return `Inspection ${problem.row + 1}, ${valueText(INSPECTION_WORDS[problem.why.path].label.toLowerCase(), problem.why)}`
  const { label } = FIELD_WORDS[problem.path]
  return problem.code === 'CONFLICT'
    ? `${label}: given ${problem.given}, but it ${RELATION_WORDS[problem.relation]} “${FIELD_WORDS[problem.other].label}”, ${problem.otherText}.`
    : valueText(label, problem)
}

/** A range of times goes from seconds to years: each end in a unit of its own. */
const allowedText = ({ unit, min, max }: AllowedRange): string =>
  (unit === 'day' ? `${timeText(min)} to ${timeText(max)}` : `${endText(min, unit, 'up')} to ${endText(max, unit, 'down')}`)

/** Units of those who read no metric ones. */
const IMPERIAL: Readonly<Partial<Record<AllowedRange['unit'], UnitSymbol>>> = { mm: 'in', kg: 'lb', l: 'US gal', 'g/m': 'oz/yd', 'kg/m3': 'lb/ft3' }

/** An end of a range in the reader’s units; what is rounded is rounded inwards, so that it is allowed. */
function endText(value: number, unit: AllowedRange['unit'], rounding: 'up' | 'down'): string {
  const { units, decimalMark } = writingHabits()
  const imperial = units === 'imperial' ? IMPERIAL[unit] : undefined
  if (imperial !== undefined && value === 0) return `0 ${imperial}`
  return imperial === undefined ? withMark(formatSi(value, unit)) : formatQuantity({ value, unit: imperial, precision: { significant: 3 }, rounding, decimalMark })
}

const isFileProblem = (problem: InputProblem): problem is FileProblem => Object.hasOwn(FILE_WORDS, problem.code)

/** The sentence for a problem with a hanger file or one of its fields: which field, what was given, what is allowed. */
export function problemText(problem: InputProblem): string {
  return isFileProblem(problem)
    ? (FILE_WORDS[problem.code] as (p: FileProblem) => string)(problem)
    : answerText(problem)
}
