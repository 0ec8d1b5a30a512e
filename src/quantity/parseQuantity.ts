import { compoundStartingWith, type CompoundUnit } from './compoundUnit'
import { findUnit, unitOf, unitsOf, type Unit } from './findUnit'
import { hintForKind } from './hintForKind'
import type { NumberFault } from './numberFault'
import type { QuantityKind } from './quantityKind'
import type { QuantityProblem } from './quantityProblem'
import { readNumber, type FoundNumber } from './readNumber'
import { readVulgar } from './readVulgar'
import { suggestUnit } from './suggestUnit'
import { tidyText } from './tidyText'

/** A number in a text and the place where it starts. */
export interface PlacedNumber {
  readonly start: number
  readonly found: FoundNumber
}

/** A text taken apart into sign, number and unit, the unit being one that the kind may have. */
export interface ParsedQuantity {
  readonly ok: true
  /** The text made plain (tidyText), in which the places are counted. */
  readonly text: string
  readonly negative: boolean
  readonly number: PlacedNumber
  /** Null where a plain number was read. */
  readonly unit: Unit | null
  /** The second part of 5 ft 6 in. */
  readonly minor: { readonly compound: CompoundUnit, readonly number: PlacedNumber } | null
}

export interface UnreadQuantity {
  readonly ok: false
  readonly problem: QuantityProblem
}

const LONGEST = 60
const SIGN = /^[+-] ?/

/** Takes a typed text apart; for the grammar see readQuantity. */
export function parseQuantity(typed: string, kind: QuantityKind): ParsedQuantity | UnreadQuantity {
  const { length } = typed.trim()
  if (length === 0) return unread({ code: 'EMPTY' })
  if (length > LONGEST) return unread({ code: 'TOO_LONG', length, limit: LONGEST })

  const text = tidyText(typed)
  const start = SIGN.exec(text)?.[0].length ?? 0
  const found = readNumber(text, start)
  if (!found.ok) return unread(numberProblem(text, start, found))

  const parsed = { ok: true, text, negative: text.startsWith('-'), number: { start, found }, unit: null, minor: null } as const
  const unitText = withoutBlank(text.slice(found.end))
  if (unitText === '') {
    return takesPlainNumber(kind) ? parsed : unread({ code: 'NO_UNIT', number: text, allowed: unitsOf(kind) })
  }
  const unit = findUnit(unitText)
  if (unit === undefined) return parseCompound(parsed, kind) ?? unread(unitProblem(unitText, kind))
  return unit.kind === kind ? { ...parsed, unit } : unread(wrongKind(unit.symbol, unit.kind, kind))
}

const takesPlainNumber = (kind: QuantityKind): boolean => kind === 'count' || kind === 'number' || kind === 'ratio'

/** 5 ft 6 1/2 in, 5'6", 5'-6", 12 lb 4 oz; null where the text is not of this form. */
function parseCompound(parsed: ParsedQuantity, kind: QuantityKind): ParsedQuantity | UnreadQuantity | null {
  const { text, number: { found: whole } } = parsed
  const start = nextNumber(text, whole.end)
  const major = findUnit(text.slice(whole.end, start).replace(/^ /, '').replace(/ ?-? ?$/, ''))
  const compound = major === undefined ? undefined : compoundStartingWith(major.symbol)
  if (major === undefined || compound === undefined || start === text.length) return null
  if (whole.form.style !== 'decimal' || whole.form.numeral.mark !== '' || whole.form.exponent !== 0) {
    return unread({ code: 'NOT_A_NUMBER', text })
  }
  const found = readNumber(text, start)
  if (!found.ok) return unread(numberProblem(text, start, found))
  const part = text.slice(start)
  const minorText = withoutBlank(text.slice(found.end))
  if (minorText === '') return unread({ code: 'NO_UNIT', number: part, allowed: [compound.minor] })
  if (findUnit(minorText)?.symbol !== compound.minor) return null
  if (major.kind !== kind) return unread(wrongKind(compound.symbol, major.kind, kind))
  if (found.value.numerator >= compound.minorsInMajor * found.value.denominator) {
    return unread({ code: 'PART_TOO_LARGE', text: part, unit: compound.minor, below: Number(compound.minorsInMajor) })
  }
  return { ...parsed, unit: unitOf(compound.major), minor: { compound, number: { start, found } } }
}

/** The place of the next digit, decimal mark before one, or vulgar fraction; the end where none is. */
function nextNumber(text: string, from: number): number {
  let at = from
  while (at < text.length && !/[\d.,]/.test(text.charAt(at)) && readVulgar(text, at) === null) at++
  return at
}

function unitProblem(unitText: string, kind: QuantityKind): QuantityProblem {
  const words = unitText.split(' ')
  for (let count = words.length - 1; count > 0; count--) {
    if (findUnit(words.slice(0, count).join(' ')) !== undefined) {
      return { code: 'TRAILING_TEXT', text: words.slice(count).join(' ') }
    }
  }
  return { code: 'UNKNOWN_UNIT', unit: unitText, allowed: unitsOf(kind), suggestion: suggestUnit(unitText, kind) }
}

function wrongKind(unit: Unit['symbol'] | CompoundUnit['symbol'], unitKind: QuantityKind, askedKind: QuantityKind): QuantityProblem {
  return { code: 'WRONG_KIND', unit, unitKind, askedKind, allowed: unitsOf(askedKind), hint: hintForKind(unit, askedKind) }
}

function numberProblem(text: string, start: number, fault: NumberFault): QuantityProblem {
  if (fault.code !== 'AMBIGUOUS_NUMBER') return { code: fault.code, text }
  const [before, after] = [text.slice(0, start), text.slice(fault.end)]
  const [one, other] = fault.readings
  return { code: 'AMBIGUOUS_NUMBER', text, readings: [before + one + after, before + other + after] }
}

const withoutBlank = (text: string): string => text.startsWith(' ') ? text.slice(1) : text

const unread = (problem: QuantityProblem): UnreadQuantity => ({ ok: false, problem })
