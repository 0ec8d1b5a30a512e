import { formatSi } from '../quantity/formatSi'
import type { HangerDocument } from './document'
import type { Field } from './field'
import { FIELD_PATHS, fieldOf, type Answers, type FieldPath } from './fields'
import type { Assumed, Hanger } from './hanger'
import type { AnswerProblem, FieldProblem, Relation } from './problem'
import { readInspection } from './inspection'
import { readPullTest } from './pullTest'
import { readValue, type Read } from './readValue'
import { isRelevant } from './relevance'

export type ResolveOutcome =
  | { readonly ok: true; readonly hanger: Hanger }
  | { readonly ok: false; readonly problems: readonly AnswerProblem[] }

/**
 * Reads one field's text: its SI value, or a problem naming the field, what was given and what is
 * allowed (the codes of ValueProblem). The range's ends are allowed.
 * @example readField('pot.rim', '20 cm') // { ok: true, value: 0.2, asMass: false }
 */
export const readField = (path: FieldPath, text: string): Read<FieldPath> => readValue(path, fieldOf(path), text)

/** Pairs of which the first must stay below the second, or may at most be as much. */
const PAIRS: readonly (readonly [low: FieldPath, relation: 'below' | 'atMost', high: FieldPath])[] = [
  ['pot.fillGap', 'below', 'pot.height'],
  ['pot.rim', 'atMost', 'pot.belly'],
  ['pot.base', 'atMost', 'pot.belly'],
  ['pot.bellyHeight', 'below', 'pot.height'],
  ['mix.capacity', 'atMost', 'mix.porosity'],
  ['layer.depth', 'below', 'pot.height'],
  ['topping.depth', 'below', 'pot.height'],
  ['weighed.tare', 'below', 'weighed.mass'],
  ['make.fillers', 'atMost', 'make.strands'],
  ['make.fringe', 'below', 'make.totalLength'],
  ['takeUp.finished', 'atMost', 'takeUp.cut'],
  ['make.knotted', 'atMost', 'make.legLength'],
  ['fixing.penetration', 'atMost', 'fixing.timberDepth'],
  ['fixing.between', 'below', 'fixing.length'],
  ['bracket.bottom', 'below', 'bracket.top'],
  ['stick.span', 'atMost', 'stick.length'],
  ['stick.bunch', 'atMost', 'stick.length'],
  ['stick.hollow', 'below', 'stick.diameter'],
  ['panel.width', 'atMost', 'stick.length'],
  ['panel.behindWidth', 'below', 'pot.rim'],
]
const CONVERSE: Readonly<Record<'below' | 'atMost', Relation>> = { below: 'above', atMost: 'atLeast' }

/**
 * Turns the typed texts of a document into SI values. Fields without a text get their default and
 * are listed as assumed; a text that cannot be read is a problem, and all problems are reported; where
 * each can be read, so are pairs that cannot both be true (CONFLICT).
 * @example resolveDocument({ name: '', typed: { 'pot.rim': '9 in' }, pullTests: [], inspections: [], sold: null, extra: {} }).hanger.answers['pot.rim'] // 0.2286
 */
export function resolveDocument(document: HangerDocument): ResolveOutcome {
  const values: Record<string, number | string | null> = {}
  const given = new Set<FieldPath>()
  const asMass: FieldPath[] = []
  const assumed: Assumed[] = []
  const problems: AnswerProblem[] = []
  for (const path of FIELD_PATHS) {
    const text = document.typed[path]
    const read = text === undefined ? null : readField(path, text)
    if (read?.ok) {
      values[path] = read.value
      given.add(path)
      if (read.asMass) asMass.push(path)
      continue
    }
    if (read) problems.push(read.problem)
    const standard = assume(path, fieldOf(path), values)
    values[path] = standard.value
    if (standard.assumed && !read) assumed.push(standard.assumed)
  }
  const log = document.pullTests.map(readPullTest)
  const looks = document.inspections.map(readInspection)
  problems.push(...log.flatMap((row) => row.problems), ...looks.flatMap((row) => row.problems))
  const answers = values as Answers
  if (problems.length === 0) problems.push(...conflicts(document, answers, assumed))
  if (problems.length > 0) return { ok: false, problems }
  return { ok: true, hanger: { name: document.name, answers, given, assumed, asMass, pullTests: log.flatMap(({ test }) => test ?? []), inspections: looks.flatMap(({ inspection }) => inspection ?? []) } }
}

function assume(path: FieldPath, field: Field, values: Readonly<Record<string, number | string | null>>): { value: number | string | null; assumed: Assumed | null } {
  if (!('default' in field)) return { value: null, assumed: null }
  if (field.type === 'choice') {
    const { choice, basis, source } = field.default
    return { value: choice, assumed: { path, text: choice, basis, source, tacit: field.tacit } }
  }
  const { from, unit, basis, source } = field.default
  const rule = from((earlier) => values[earlier] as number)
  // A rule may leave the field's own range where another field is extreme.
  const value = Math.min(field.max, Math.max(field.min, field.kind === 'length' ? Math.round(rule * 1000) / 1000 : rule))
  return { value, assumed: { path, text: formatSi(value, unit), basis, source, tacit: field.tacit } }
}

function conflicts(document: HangerDocument, answers: Answers, assumed: readonly Assumed[]): readonly FieldProblem[] {
  const textOf = (path: FieldPath): string => document.typed[path] ?? assumed.find((a) => a.path === path)?.text ?? ''
  const isTyped = (path: FieldPath): boolean => document.typed[path] !== undefined
  return PAIRS.flatMap(([low, relation, high]): FieldProblem[] => {
    const [a, b] = [answers[low], answers[high]]
    if (typeof a !== 'number' || typeof b !== 'number' || (relation === 'below' ? a < b : a <= b)) return []
    // A default that does not fit yields: only a typed answer can be at fault, and only where it matters.
    if (!(isTyped(low) || isTyped(high)) || !isRelevant(low, answers) || !isRelevant(high, answers)) return []
    return isTyped(low)
      ? [{ code: 'CONFLICT', path: low, given: textOf(low), relation, other: high, otherText: textOf(high) }]
      : [{ code: 'CONFLICT', path: high, given: textOf(high), relation: CONVERSE[relation], other: low, otherText: textOf(low) }]
  })
}
