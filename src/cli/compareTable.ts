import type { Comparison } from '../compare/comparison'
import type { Variant } from '../compare/variant'
import { ALL_ALIKE_TEXT, BETTER_TEXTS, betterText, comparedCord, comparedPotText, differenceRow, heaviestText, judgedText, LOG_TEXTS, massAndRangeText, massDifferenceText, noCordText, partsComparedText } from '../words/compare'
import { CASE_NAMES } from '../words/names'
import { linkName } from '../words/tiers'
import { columns } from './columns'
import type { ComparedFile } from './compareJson'

const HEADS = ['A', 'B'] as const
const section = (title: string, rows: readonly (readonly string[])[]): readonly string[] => ['', title, columns(rows)]
const nameOf = ({ file, variant }: ComparedFile): string => (variant.document.name.trim() === '' ? file : `${variant.document.name} (${file})`)
const decides = ({ check: { governing } }: Variant): string => (governing === null ? 'nothing yet' : `${linkName(governing.link, governing.tier)}, ${CASE_NAMES[governing.case]}`)

/** Two hangers side by side, for reading. */
export function compareTable(first: ComparedFile, second: ComparedFile, comparison: Comparison): string {
  const [a, b] = [first.variant, second.variant]
  const { better, parts, weights, differences, logs } = comparison
  const notes = ([['A', a], ['B', b]] as const).flatMap(([letter, variant]) => [comparedPotText(letter, variant), noCordText(letter, variant.cord)].flatMap((text) => text ?? []))
  return `${[
    `A: ${nameOf(first)}`,
    `B: ${nameOf(second)}`,
    ...(notes.length === 0 ? [] : ['', ...notes]),
    ...(differences.length === 0 ? ['', ALL_ALIKE_TEXT] : section('What differs', [['answer', ...HEADS], ...differences.map(differenceRow).map((row) => [row.name, row.first, row.second])])),
    ...logs.map((log) => `  ${LOG_TEXTS[log]}`),
    ...section('Verdicts', [
      ['', ...HEADS, ''],
      ['the hanger', a.check.verdicts.hanger, b.check.verdicts.hanger, BETTER_TEXTS[better.hanger]],
      ['the place', a.check.verdicts.place, b.check.verdicts.place, BETTER_TEXTS[better.place]],
      ['what decides', decides(a), decides(b), ''],
      ['heaviest watered pot', heaviestText(a), heaviestText(b), ''],
    ]),
    ...section('Every part, in its worst situation', [['part', ...HEADS, ''], ...parts.map((part) => [linkName(part.link, part.tier), judgedText(part.first), judgedText(part.second), betterText(part)])]),
    `  ${partsComparedText(parts)}`,
    ...section('What all of it weighs', [['situation', ...HEADS, ''], ...weights.map(({ state, first: one, second: other }) => [CASE_NAMES[state], massAndRangeText(one), massAndRangeText(other), massDifferenceText(one.likely, other.likely)])]),
    ...section('Cord to cut', [['', ...HEADS], ...comparedCord(a.cord, b.cord).map((row) => [row.name, row.first, row.second])]),
  ].join('\n')}\n`
}
