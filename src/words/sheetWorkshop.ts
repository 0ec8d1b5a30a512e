import type { Basis } from '../catalogue/basis'
import type { Factor, LinkResult, Term } from '../check/linkResult'
import type { Answers, FieldPath } from '../hanger/fields'
import type { Assumed } from '../hanger/hanger'
import type { SoldCopy } from '../hanger/soldCopy'
import { forceText, lengthText, massLimitText, massText, numberText, percentText } from './amounts'
import { dayText } from './care'
import { FIELD_WORDS } from './fields'
import { CASE_NAMES, PART_NAMES } from './names'
import { hungFor, sheetName } from './sheetCustomer'
import { TERM_NAMES } from './termNames'
import { linkName } from './tiers'

export const workshopTitle = (name: string): string => `${sheetName(name)}: workshop sheet`

export const recordTitle = (name: string): string => `${sheetName(name)}: record`
export const NOTHING_RECORDED = 'Nothing is recorded yet: neither when it was made, nor its tag, nor that it was sold or looked at.'
export const CHANGED_TITLE = 'Changed since it was sold'
export const CHANGED_COLUMNS = ['Question', 'As sold', 'Now'] as const
export const NOT_SAID = 'not said'
export const CARE_TITLE = 'Care'

export const INPUTS_TITLE = 'What was said, and what was assumed'
export const INPUT_COLUMNS = ['Question', 'Answer', 'How known'] as const
export const AS_TYPED = 'as typed'
export const TOLD = 'told by the customer'
export const NOT_COUNTED = 'as typed; no bearing here'

export const answerText = (path: FieldPath, text: string): string => FIELD_WORDS[path].choices[text.trim()] ?? text
export const assumedText = ({ basis, source }: Assumed): string => `assumed: ${source} (${basis})`

export const LINKS_TITLE = 'Part by part, each in the situation that decides'
export const LINK_COLUMNS = ['Part and situation', 'Asked', 'May carry', 'Used', 'Verdict', 'What it bears new, and its factors'] as const
export const LINKS_NOTE = 'Pulls are told as the mass that would pull as hard; what it may carry is what it bears new times its factors. The reserve stands as its reciprocal.'
export const SUM_TITLE = 'The sum of the part that decides'
export const SUM_COLUMNS = ['Line', 'Symbol', 'Value', 'How it comes about'] as const
export const FINDINGS_TITLE = 'What this means'
export const BENDING_TITLE = 'How bars bend'
export const TESTS_TITLE = 'Tests'
export const TEST_COLUMNS = ['Pull test', 'Load', 'How', 'State', 'Broke', 'Time', 'Note'] as const
export const RECORD_TITLE = 'Record'
export const INSPECTION_TITLE = 'Looked at and mended'
export const INSPECTION_COLUMNS_TEXT = ['Date', 'What', 'Leg', 'Strands', 'Note'] as const
export const NO_TESTS_TEXT = 'No pull test and no test hang was recorded.'
export const PICTURE_SAID = 'The hanger drawn to scale from the front.'

const amount = (q: { readonly value: number; readonly unit: string } | null): string => (q === null ? 'not known' : q.unit === 'N' ? forceText(q.value) : lengthText(q.value))
const factorText = ({ code, value }: Factor): string => `${numberText(value)} ${TERM_NAMES[code]}`
const basisText = (basis: Basis, source: string): string => `${basis}: ${source}`

/** A part by its result that decides: what is asked, what it bears and how that is known, its factors, what is left. */
export function linkRow(result: LinkResult): { readonly head: string; readonly cells: readonly string[] } {
  const { capacity, factors, utilisation, overallFactor } = result
  return {
    head: `${linkName(result.link, result.tier)}: ${PART_NAMES[result.part]}, ${CASE_NAMES[result.case]}`,
    cells: [
      amount(result.demand), amount(result.allowable), utilisation === null ? '–' : percentText(utilisation).replace(' ', '\u00a0'), result.verdict,
      [
        capacity === null ? 'Not known' : `${amount(capacity)} (${basisText(capacity.basis, capacity.source)})`,
        ...factors.map(factorText),
      ].join(' × ') + (overallFactor === null ? '' : `; overall factor ${numberText(overallFactor)}`),
    ],
  }
}

/** A line of a worked sum. */
export const termRow = ({ code, symbol, value, unit, basis, source, formula }: Term): { readonly head: string; readonly cells: readonly string[] } =>
  ({ head: TERM_NAMES[code], cells: [symbol, `${numberText(value)}${unit === '1' ? '' : ` ${unit}`}`, formula === null ? basisText(basis, source) : `= ${formula}`] })

/** The test hang as it was done. */
export function testHangText(answers: Pick<Answers, 'testHang.time' | 'testHang.slip' | 'testHang.date'>, mass: number, counts: boolean, isSlipSaid: boolean): string {
  const date = answers['testHang.date']
  const slip = isSlipSaid ? `, strands slipped ${lengthText(answers['testHang.slip'])}` : ''
  return `Test hang: ${massText(mass)} for ${hungFor(answers['testHang.time'])}${date === null ? '' : `, on ${dayText(date)}`}${slip}. ${counts ? 'It counts.' : 'It does not count.'}`
}

/** The hanger as it was sold. */
export const soldText = ({ date, verdict, heaviest }: SoldCopy, changed: boolean): string =>
  `on ${dayText(date)}, ${verdict}${heaviest === null ? '' : `, up to ${massLimitText(heaviest)} watered`}${changed ? '; changed since, a copy as sold is kept' : ''}`

/** Names of what the record holds. */
export const RECORD_NAMES = { made: 'Made', lot: 'Roll or lot', customer: 'For', code: 'Tag', sold: 'Sold' } as const

export const bendingCaption = (link: string, situation: string, most: number, at: number, sag: number | null): string =>
  `${link}, ${situation}: bent hardest ${lengthText(at)} along, by ${numberText(most)} N m${sag === null ? '' : `; most out of line ${lengthText(sag)}`}.`
