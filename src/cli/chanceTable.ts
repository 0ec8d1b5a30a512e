import type { CaseChance, ChanceReport } from '../chance/report'
import type { HangerDocument } from '../hanger/document'
import { chanceBasisTexts, chanceIntervalText, chanceSentence, failsText, inputRankText, leftOutText, outsideText, RANK_EXPLAINED, useSpreadText, nearestText, weightSpreadText } from '../words/chance'

/** Inputs shown: those that decide a hundredth and more. */
const LEAST_TOLD = 0.01

/** Every way of finding an interval that the report uses, said once. */
const intervalTexts = ({ atRest, cases }: ChanceReport): readonly string[] => [...new Set([atRest, ...cases].map(({ interval }) => chanceIntervalText(interval)))]

const caseLines = (one: CaseChance): readonly string[] =>
  [`  ${chanceSentence(one)}`, ...[failsText(one), nearestText(one), useSpreadText(one)].flatMap((text) => (text === null ? [] : [`    ${text}`]))]

const list = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)])

/** What chance says of one hanger, for reading. */
export function chanceTable(file: string, { name }: HangerDocument, report: ChanceReport): string {
  const inputs = report.inputs.filter(({ total }) => total >= LEAST_TOLD)
  return `${[
    name.trim() === '' ? file : `${name} (${file})`,
    chanceSentence(report.atRest),
    '',
    ...report.cases.flatMap(caseLines),
    ...list('What decides', inputs.length === 0 ? [] : [...inputs.map(inputRankText), RANK_EXPLAINED]),
    ...list('Left out', report.frame.leftOut.map(leftOutText)),
    ...list('What the figures rest on', [weightSpreadText(report), ...chanceBasisTexts(report), ...intervalTexts(report), `Drawn from seed ${report.frame.seed}: the same seed draws the same hangers.`]),
    ...list('What no figure covers', report.outside.map(outsideText)),
  ].join('\n')}\n`
}
