import { groupOf } from '../advice/potsThatFit'
import { untested } from '../advice/untested'
import { checkHanger, governingOf } from '../check/checkHanger'
import { LINKS, type LinkCode } from '../check/linkResult'
import type { Verdict } from '../check/verdict'
import { editField, type HangerDocument } from '../hanger/document'
import { FIELD_PATHS, fieldOf, type Answers, type FieldPath } from '../hanger/fields'
import { isRelevant } from '../hanger/relevance'
import { resolveDocument } from '../hanger/resolve'
import { formatSi } from '../quantity/formatSi'
import type { UnitSymbol } from '../quantity/units'
import { axisOf, type AxisCode } from './axis'
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

/** Numbers that belong to a record of what was done, or that only say what to cut: no part hears of them. */
const LEFT_OUT: ReadonlySet<FieldPath> = new Set([
  'weighed.tare', 'testHang.mass', 'testHang.volume', 'testHang.time', 'testHang.slip', 'cord.rollLength', 'cord.rollMass', 'cord.onRoll',
  'make.cords', 'make.cutLength', 'takeUp.cut', 'takeUp.finished', 'gathering.cordLength', 'gathering.tails',
])

/** What hangs in the hanger and what it hangs from: the rest is the hanger itself, of which a test hang was. */
const BESIDE_THE_HANGER: readonly string[] = ['pot', 'mix', 'layer', 'topping', 'saucer', 'reservoir', 'cover', 'weighed', 'plant', 'seat', 'rail', 'place', 'fixing', 'bracket', 'reserve']

/** Fields that do not change alone: grams per metre go with the diameter, filler cords with the strands. */
const AXES_OF: Readonly<Partial<Record<FieldPath, AxisCode>>> = { 'cord.diameter': 'cordDiameter', 'make.strands': 'strands' }

/** Fields of numbers that concern a hanger and have a value, in the order of the table of inputs. A rated cord is no other for its diameter. */
export function lineFields(answers: Answers): readonly FieldPath[] {
  return FIELD_PATHS.filter((path) => {
    const field = fieldOf(path)
    const value = answers[path]
    return (field.type === 'quantity' || field.type === 'open') && field.kind in UNITS && typeof value === 'number' && value > 0 && isRelevant(path, answers) && !LEFT_OUT.has(path)
      && (path !== 'cord.diameter' || answers['cord.rated'] === null)
  })
}

/** What a pull in place was made on: another is another. */
const PULLED_IN_PLACE: readonly string[] = ['fixing', 'hook', 'bracket']

/** The hanger without what was found of it as it is and says nothing of it with another value. */
function bareFor(path: FieldPath, document: HangerDocument): HangerDocument {
  const group = groupOf(path)
  const unproved = PULLED_IN_PLACE.includes(group) && path !== 'fixing.proof' ? editField(document, 'fixing.proof', null) : document
  if (BESIDE_THE_HANGER.includes(group)) return unproved
  return group === 'cord' ? { ...untested(document), pullTests: [] } : untested(unproved)
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

/**
 * How hard every part works along one input: the whole check with each value, all else as it is. Where the input is one of the
 * hanger itself, its test hang is left out at every point, and of a cord its pull tests. Yields each point.
 */
export function* inputLines({ document, field }: LinesAsked): Generator<LinesPoint, LinesOutcome, void> {
  const resolved = resolveDocument(document)
  if (!resolved.ok) return { ok: false, why: 'unread' }
  const { answers } = resolved.hanger
  if (answers['make.have'] === 'no') return { ok: false, why: 'noHanger' }
  if (!lineFields(answers).includes(field)) return { ok: false, why: 'notConcerned' }
  const present = answers[field] as number
  const kind = fieldOf(field)
  const unit = 'kind' in kind ? UNITS[kind.kind] ?? '' : ''
  const code = AXES_OF[field]
  const axis = code === undefined ? null : axisOf(code, resolved.hanger, 0, 2)
  const bare = bareFor(field, document)
  const points: LinesPoint[] = []
  for (const value of valuesOf(field, present)) {
    // The present value stays as it was typed.
    const put = value === present ? bare : axis?.put(bare, value) ?? editField(bare, field, formatSi(value, unit))
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

