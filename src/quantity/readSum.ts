import { formatSi } from './formatSi'
import { readQuantity } from './readQuantity'
import type { QuantityKind } from './quantityKind'
import { tidyText } from './tidyText'
import type { UnitSymbol } from './units'

/** One piece of a sum: a sign, a plain number, or a quantity in SI with the unit it was typed in. */
export type SumPiece =
  | { readonly kind: 'sign'; readonly sign: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'quantity'; readonly value: number; readonly unit: UnitSymbol | '' }

/** Longer than any sum a maker types. */
const MOST_LETTERS = 120
const SIGNS: ReadonlyMap<string, string> = new Map([['+', '+'], ['-', '-'], ['*', '*'], ['×', '*'], ['·', '*'], ['/', '/'], ['÷', '/'], [':', '/'], ['(', '('], [')', ')']])

/**
 * The pieces of a sum such as "2*64 in + 10 cm", each quantity read as any other; null where the text is none, or a
 * piece cannot be read. A stroke between bare numbers is a fraction ("3/16 in"), elsewhere a division.
 * @example readSum('2*64 in + 10 cm', 'length').length // 5
 */
export function readSum(text: string, kind: QuantityKind): readonly SumPiece[] | null {
  const tidy = tidyText(text)
  if (tidy.length > MOST_LETTERS) return null
  const pieces: SumPiece[] = []
  let operand = ''
  const close = (): boolean => {
    const piece = operand.trim() === '' ? null : operandOf(operand.trim(), kind)
    operand = ''
    if (piece !== null) pieces.push(piece)
    return piece !== null
  }
  for (const letter of tidy) {
    const sign = SIGNS.get(letter)
    if (sign === undefined || (sign === '/' && isFraction(operand)) || isExponent(operand, letter)) {
      operand += letter
      continue
    }
    if (operand.trim() !== '' && !close()) return null
    pieces.push({ kind: 'sign', sign })
  }
  if (operand.trim() !== '' && !close()) return null
  return pieces.some((p) => p.kind === 'sign') && pieces.some((p) => p.kind !== 'sign') ? pieces : null
}

/** Bare digits stand before the stroke: what follows is their denominator. */
const isFraction = (operand: string): boolean => /^[\d\s]+$/.test(operand) && /\d$/.test(operand)
const isExponent = (operand: string, letter: string): boolean => (letter === '+' || letter === '-') && /^\s*[\d.,]+e$/i.test(operand)

function operandOf(text: string, kind: QuantityKind): SumPiece | null {
  const plain = readQuantity(text, 'number')
  if (plain.ok) return { kind: 'number', value: plain.value }
  const read = readQuantity(text, kind)
  if (!read.ok) return null
  return { kind: 'quantity', value: read.value, unit: majorOf(read.unit) }
}

/** Of feet and inches the inches, of pounds and ounces the ounces: results are written in one unit. */
const majorOf = (unit: string): UnitSymbol | '' => (unit.includes(' ') ? unit.split(' ')[1] : unit) as UnitSymbol | ''

/**
 * A sum as digits, signs and brackets only, its quantities in SI times `scale`.
 * @example sumExpression(readSum('3 * 2 m + 1', 'length'), 10) // '3*20+1'
 */
export const sumExpression = (pieces: readonly SumPiece[], scale: number): string =>
  pieces.map((p) => (p.kind === 'sign' ? p.sign : String(p.kind === 'quantity' ? p.value * scale : p.value))).join('')

/**
 * What a sum comes to, as text in the unit its first quantity was typed in, or null where it comes to nothing of the
 * kind asked: `once` and `twice` are its expressions' values at scales 1 and 2, and a length doubles with its parts where
 * an area does not.
 * @example sumText(readSum('2*64 in + 10 cm', 'length'), 'length', 3.3512, 6.7024) // '131.937 in'
 */
export function sumText(pieces: readonly SumPiece[], kind: QuantityKind, once: number, twice: number): string | null {
  if (!Number.isFinite(once) || !Number.isFinite(twice)) return null
  const first = pieces.find((p) => p.kind === 'quantity')
  if (first === undefined) return kind === 'count' || kind === 'number' || kind === 'ratio' ? formatSi(once, '') : null
  const alike = Math.abs(twice - 2 * once) <= 1e-9 * Math.max(Math.abs(once), Math.abs(twice))
  return alike ? formatSi(once, first.unit) : null
}
