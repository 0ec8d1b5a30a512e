import {
  ALL_ALIKE_TEXT, BETTER_TEXTS, betterText, CASE_NAMES, comparedCord, differenceRow, heaviestText, judgedText, linkName, massAndRangeText, massDifferenceText, massText,
  verdictSentence, type Comparison, type LinkResult, type Variant,
} from '#core'
import { texts } from '../texts/texts'

/** A line of a table of two: the cells of A and B and, where one is better or they differ by so much, of that. */
export interface TwoRow {
  readonly name: string
  readonly cells: readonly string[]
  /** Which of them is the better. */
  readonly better: 'first' | 'second' | null
  /** What decides in the part of each, to be drawn as a gauge; null where the line is of no part. */
  readonly results: readonly (LinkResult | null)[] | null
}

/** A table of two. */
export interface TwoTable {
  readonly caption: string
  readonly head: string
  /** Heading of a third column. */
  readonly further: string | null
  readonly rows: readonly TwoRow[]
}

type Both = readonly [Variant, Variant]

const t = texts.compare
const marked = (better: string | null): TwoRow['better'] => (better === 'first' || better === 'second' ? better : null)
const plain = (name: string, ...cells: readonly string[]): TwoRow => ({ name, cells, better: null, results: null })
const decides = ({ check: { governing } }: Variant): string => (governing === null ? t.nothingDecides : `${linkName(governing.link, governing.tier)}, ${CASE_NAMES[governing.case]}`)

export function verdictTable({ better }: Comparison, [a, b]: Both): TwoTable {
  const side = (name: string, of: 'hanger' | 'place'): TwoRow => ({ name, cells: [a.check.verdicts[of], b.check.verdicts[of], BETTER_TEXTS[better[of]]], better: marked(better[of]), results: null })
  return {
    caption: t.verdicts, head: t.columns.what, further: t.columns.better,
    rows: [side(t.rows.hanger, 'hanger'), side(t.rows.place, 'place'), plain(t.rows.decides, decides(a), decides(b), ''), plain(t.rows.heaviest, heaviestText(a), heaviestText(b), '')],
  }
}

export function weightTable({ weights }: Comparison, [a, b]: Both): TwoTable {
  const rows = weights.map(({ state, first, second }) => plain(CASE_NAMES[state], massAndRangeText(first), massAndRangeText(second), massDifferenceText(first.likely, second.likely)))
  const [mine, other] = [a.check.solved.hangerMass.dry.likely, b.check.solved.hangerMass.dry.likely]
  return { caption: t.weights, head: t.columns.state, further: t.difference, rows: [...rows, plain(t.ownWeight, massText(mine), massText(other), massDifferenceText(mine, other))] }
}

/** The share stands beside its gauge. */
const partText = (result: LinkResult | null): string => (result === null ? judgedText(null) : t.judged(result.verdict, CASE_NAMES[result.case]))

export const partTable = ({ parts }: Comparison): TwoTable => ({
  caption: t.parts, head: t.columns.part, further: t.columns.better,
  rows: parts.map((part) => ({ name: linkName(part.link, part.tier), cells: [partText(part.first), partText(part.second), betterText(part)], better: marked(part.better), results: [part.first, part.second] })),
})

export const cordTable = ([a, b]: Both): TwoTable => ({
  caption: t.cord, head: t.columns.what, further: null,
  rows: comparedCord(a.cord, b.cord).map(({ name, first, second }) => plain(name, first, second)),
})

export const differenceTable = ({ differences }: Comparison): TwoTable => ({
  caption: t.differs, head: t.columns.answer, further: null,
  rows: differences.map(differenceRow).map(({ name, first, second }) => plain(name, first, second)),
})

/** Said where nothing differs. */
export const alikeText = ({ differences, logs }: Comparison): string | null => (differences.length === 0 && logs.length === 0 ? ALL_ALIKE_TEXT : null)

export const sentenceOf = ({ check }: Variant): string => verdictSentence(check)
