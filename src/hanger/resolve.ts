import { formatSi } from '../quantity/formatSi'
import { readQuantity } from '../quantity/readQuantity'
import type { UnitSymbol } from '../quantity/units'
import type { HangerDocument } from './document'
import type { Field, FieldKind } from './field'
import { FIELD_PATHS, fieldOf, type Answers, type FieldPath } from './fields'
import type { Assumed, Hanger } from './hanger'
import type { AllowedRange, FieldProblem } from './problem'

export type ResolveOutcome =
  | { readonly ok: true; readonly hanger: Hanger }
  | { readonly ok: false; readonly problems: readonly FieldProblem[] }

/** Units that allowed ranges are told in. */
const RANGE_UNIT: Readonly<Record<FieldKind, UnitSymbol | ''>> = { length: 'mm', mass: 'kg', force: 'N', linearDensity: 'g/m', time: 'day', count: '' }

type Read = { readonly ok: true; readonly value: number | string } | { readonly ok: false; readonly problem: FieldProblem }

/**
 * Reads one field's text: its SI value, or a problem naming the field, what was given and what is
 * allowed (NOT_A_CHOICE, BAD_QUANTITY, OUT_OF_RANGE). The range's ends are allowed.
 * @example readField('pot.rim', '20 cm') // { ok: true, value: 0.2 }
 */
export function readField(path: FieldPath, text: string): Read {
  const field = fieldOf(path)
  if (field.type === 'choice') {
    const word = text.trim()
    return field.choices.includes(word) ? { ok: true, value: word } : { ok: false, problem: { code: 'NOT_A_CHOICE', path, given: text, choices: field.choices } }
  }
  const read = readQuantity(text, field.kind)
  const allowed: AllowedRange = { unit: RANGE_UNIT[field.kind], min: field.min, max: field.max }
  if (!read.ok) return { ok: false, problem: { code: 'BAD_QUANTITY', path, given: text, why: read.problem, allowed } }
  if (read.value < field.min || read.value > field.max) return { ok: false, problem: { code: 'OUT_OF_RANGE', path, given: text, allowed } }
  return { ok: true, value: read.value }
}

/** Pairs of which the first must stay below the second. */
const BELOW: readonly (readonly [FieldPath, FieldPath])[] = [['pot.fillGap', 'pot.height'], ['make.fringe', 'make.totalLength']]

/**
 * Turns the typed texts of a document into SI values. Fields without a text get their default and
 * are listed as assumed; a text that cannot be read is a problem, and all problems are reported; where
 * each can be read, so are pairs that cannot both be true (CONFLICT).
 * @example resolveDocument({ name: '', typed: { 'pot.rim': '9 in' }, extra: {} }).hanger.answers['pot.rim'] // 0.2286
 */
export function resolveDocument(document: HangerDocument): ResolveOutcome {
  const values: Record<string, number | string | null> = {}
  const given = new Set<FieldPath>()
  const assumed: Assumed[] = []
  const problems: FieldProblem[] = []
  for (const path of FIELD_PATHS) {
    const text = document.typed[path]
    const read = text === undefined ? null : readField(path, text)
    if (read?.ok) {
      values[path] = read.value
      given.add(path)
      continue
    }
    if (read) problems.push(read.problem)
    const standard = assume(path, fieldOf(path), values)
    values[path] = standard.value
    if (standard.assumed && !read) assumed.push(standard.assumed)
  }
  if (problems.length === 0) problems.push(...conflicts(document, values, assumed))
  if (problems.length > 0) return { ok: false, problems }
  return { ok: true, hanger: { name: document.name, answers: values as Answers, given, assumed } }
}

function assume(path: FieldPath, field: Field, values: Readonly<Record<string, number | string | null>>): { value: number | string | null; assumed: Assumed | null } {
  if (field.type === 'open') return { value: null, assumed: null }
  if (field.type === 'choice') {
    const { choice, basis, source } = field.default
    return { value: choice, assumed: { path, text: choice, basis, source } }
  }
  const { from, unit, basis, source } = field.default
  const rule = from((earlier) => values[earlier] as number)
  // A rule may leave the field's own range where another field is extreme.
  const value = Math.min(field.max, Math.max(field.min, field.kind === 'length' ? Math.round(rule * 1000) / 1000 : rule))
  return { value, assumed: { path, text: formatSi(value, unit), basis, source } }
}

function conflicts(document: HangerDocument, values: Readonly<Record<string, number | string | null>>, assumed: readonly Assumed[]): readonly FieldProblem[] {
  const textOf = (path: FieldPath): string => document.typed[path] ?? assumed.find((a) => a.path === path)?.text ?? ''
  return BELOW.filter(([low, high]) => (values[low] as number) >= (values[high] as number))
    // A default that does not fit yields: only a typed answer can be at fault.
    .map(([low, high]): FieldProblem => {
      const path = document.typed[low] === undefined ? high : low
      const other = path === low ? high : low
      return { code: 'CONFLICT', path, given: textOf(path), other, otherText: textOf(other) }
    })
}
