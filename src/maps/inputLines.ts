import { checkHanger, governingOf } from '../check/checkHanger'
import { LINKS, type LinkCode } from '../check/linkResult'
import type { Verdict } from '../check/verdict'
import { editField, type HangerDocument } from '../hanger/document'
import { FIELD_PATHS, fieldOf, type Answers, type FieldPath } from '../hanger/fields'
import { isRelevant } from '../hanger/relevance'
import { resolveDocument } from '../hanger/resolve'
import { formatSi } from '../quantity/formatSi'
import type { UnitSymbol } from '../quantity/units'
import type { NoMap } from './utilisationMap'

export interface LinesAsked {
  readonly document: HangerDocument
  readonly field: FieldPath
}

/** How every part stands with one value of a field; null where that value cannot be read with the rest. */
export interface LinesPoint {
  readonly value: number
  readonly links: readonly { readonly link: LinkCode; readonly utilisation: number | null; readonly verdict: Verdict }[] | null
}
export interface Lines {
  readonly field: FieldPath
  readonly present: number
  readonly points: readonly LinesPoint[]
}
export type LinesOutcome = { readonly ok: true; readonly lines: Lines } | { readonly ok: false; readonly why: NoMap }

const POINTS = 21
const UNITS: Readonly<Partial<Record<string, UnitSymbol | ''>>> = { length: 'mm', mass: 'kg', count: '', ratio: '', force: 'N', linearDensity: 'g/m', time: 's', angle: 'deg' }

/** What is told of the pot and its weight twice over: these are left to the maps. */
const LEFT_OUT: ReadonlySet<FieldPath> = new Set(['weighed.tare', 'testHang.mass', 'testHang.time', 'testHang.slip'])

/** Fields of numbers that concern a hanger and have a value, in the order of the table of inputs. */
export function lineFields(answers: Answers): readonly FieldPath[] {
  return FIELD_PATHS.filter((path) => {
    const field = fieldOf(path)
    const value = answers[path]
    return (field.type === 'quantity' || field.type === 'open') && field.kind in UNITS && typeof value === 'number' && value > 0 && isRelevant(path, answers) && !LEFT_OUT.has(path)
  })
}

/** Values about the present one, from half to twice it, within what the field allows; whole ones of counts. */
function valuesOf(path: FieldPath, now: number): readonly number[] {
  const field = fieldOf(path)
  if (field.type !== 'quantity' && field.type !== 'open') return []
  const [from, to] = [Math.max(field.min, now / 2), Math.min(field.max, now * 2)]
  const even = Array.from({ length: POINTS }, (_, i) => from + ((to - from) * i) / (POINTS - 1))
  const values = field.kind === 'count' ? even.map((value) => Math.round(value)) : even.map((value) => Number(value.toPrecision(4)))
  return [...new Set([...values, now])].filter((value) => value >= field.min && value <= field.max).toSorted((a, b) => a - b)
}

/** How hard every part works along one input: the whole check with each value. Yields each point. */
export function* inputLines({ document, field }: LinesAsked): Generator<LinesPoint, LinesOutcome, void> {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return { ok: false, why: 'unread' }
  const { answers } = resolved.hanger
  if (answers['make.have'] === 'no') return { ok: false, why: 'noHanger' }
  if (!lineFields(answers).includes(field)) return { ok: false, why: 'notConcerned' }
  const present = answers[field] as number
  const kind = fieldOf(field)
  const unit = 'kind' in kind ? UNITS[kind.kind] ?? '' : ''
  const points: LinesPoint[] = []
  for (const value of valuesOf(field, present)) {
    // The present value stays as it was typed.
    const put = value === present ? document : editField(document, field, formatSi(value, unit))
    const read = resolveDocument(put)
    const check = read.ok ? checkHanger(read.hanger) : null
    const links = check === null ? null : LINKS.flatMap((link) => {
      const worst = governingOf(check.links.filter((one) => one.link === link))
      return worst === null ? [] : [{ link, utilisation: worst.utilisation, verdict: worst.verdict }]
    })
    const point = { value, links }
    points.push(point)
    yield point
  }
  return { ok: true, lines: { field, present, points } }
}

