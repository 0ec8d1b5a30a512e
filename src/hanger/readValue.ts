import { readQuantity } from '../quantity/readQuantity'
import { STANDARD_GRAVITY } from '../quantity/si'
import type { UnitSymbol } from '../quantity/units'
import type { Field, FieldKind } from './field'
import type { AllowedRange, ValueProblem } from './problem'
import { readScrew } from './readScrew'

/** Units that allowed ranges are told in. */
const RANGE_UNIT: Readonly<Record<FieldKind, UnitSymbol | ''>> =
  { length: 'mm', mass: 'kg', force: 'N', linearDensity: 'g/m', time: 'day', count: '', volume: 'l', density: 'kg/m3', ratio: '', number: '' }

/** `asMass`: a force that was given as a mass and taken as the pull of that mass. */
export type Read<Path extends string> = { readonly ok: true; readonly value: number | string; readonly asMass: boolean } | { readonly ok: false; readonly problem: ValueProblem<Path> }

/** Whether a text names a day of the calendar, as YYYY-MM-DD. */
function isDay(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)?.map(Number) ?? []
  if (year === undefined || month === undefined || day === undefined || month < 1 || month > 12 || day < 1) return false
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  return day <= ([31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0)
}

/**
 * Reads the text of a value by its field: SI number, word, day or free text; or a problem naming the
 * path, what was given and what is allowed (NOT_A_CHOICE, BAD_QUANTITY, OUT_OF_RANGE, BAD_DATE,
 * TEXT_TOO_LONG, BAD_SCREW). The range's ends are allowed. Packets and luggage scales show kilograms: where a
 * force is asked, a mass is taken as its pull under standard gravity, and that is told.
 */
export function readValue<Path extends string>(path: Path, field: Field, text: string): Read<Path> {
  const word = text.trim()
  const plain = (value: string): Read<Path> => ({ ok: true, value, asMass: false })
  if (field.type === 'choice') return field.choices.includes(word) ? plain(word) : { ok: false, problem: { code: 'NOT_A_CHOICE', path, given: text, choices: field.choices } }
  if (field.type === 'text') return word.length <= field.max ? plain(word) : { ok: false, problem: { code: 'TEXT_TOO_LONG', path, given: text, max: field.max } }
  if (field.type === 'date') return isDay(word) ? plain(word) : { ok: false, problem: { code: 'BAD_DATE', path, given: text } }
  if (field.type === 'screw') {
    const screw = readScrew(text)
    return screw.ok ? plain(word) : { ok: false, problem: { code: 'BAD_SCREW', path, given: text, why: screw.problem } }
  }
  const allowed: AllowedRange = { unit: RANGE_UNIT[field.kind], min: field.min, max: field.max }
  const mass = field.kind === 'force' ? readQuantity(text, 'mass') : null
  const read = mass?.ok ? { ok: true as const, value: mass.value * STANDARD_GRAVITY } : readQuantity(text, field.kind)
  if (!read.ok) return { ok: false, problem: { code: 'BAD_QUANTITY', path, given: text, why: read.problem, allowed } }
  if (read.value < field.min || read.value > field.max) return { ok: false, problem: { code: 'OUT_OF_RANGE', path, given: text, allowed } }
  return { ok: true, value: read.value, asMass: mass?.ok === true }
}
