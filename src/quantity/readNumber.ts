import { matchAt } from './matchAt'
import type { NumberFault } from './numberFault'
import { addRatios, multiplyRatios, powerOfTen, ratio, type Ratio } from './ratio'
import { readNumeral, type Numeral } from './readNumeral'
import { readVulgar } from './readVulgar'

/** How a number was written, so that it can be written in the same way again. */
export type NumberForm =
  | { readonly style: 'decimal', readonly numeral: Numeral, readonly exponent: number }
  | { readonly style: 'fraction', readonly denominator: bigint }

/** A number found in a text: its exact value, never below zero, and the place just after it. */
export interface FoundNumber {
  readonly ok: true
  readonly value: Ratio
  readonly form: NumberForm
  readonly end: number
}

const NOT_A_NUMBER: NumberFault = { ok: false, code: 'NOT_A_NUMBER' }
const FRACTION = /(\d+)\/(\d+)/y
const EXPONENT = /[eE]([+-]?\d+)/y
const MORE_DIGITS = / ?[\d.,/]/y
/** With the 60 characters of a quantity, ten to this power is beyond every double and its inverse below. */
const LARGEST_EXPONENT = 999

/**
 * Reads the number, without sign, that starts at a place in a tidy text:
 * - decimals with point or comma: 4.5, 4,5, .5;
 * - thousands in groups of three by blanks (1 000), or by comma or point where the other mark or a
 *   second group leaves no doubt (1,000.5 or 1.000.000); "1,250" alone is AMBIGUOUS_NUMBER, while
 *   a point alone is always the decimal point;
 * - fractions and mixed numbers: 3/16, 5 3/16, 5-3/16, ½, 5½, 5 ½; the fraction of a mixed number
 *   must be below one;
 * - powers of ten: 1e-3.
 */
export function readNumber(text: string, start: number): FoundNumber | NumberFault {
  const fraction = readFraction(text, start)
  if (fraction !== null) return withWhole(text, '0', fraction)
  const numeral = readNumeral(text, start)
  if (!numeral.ok) return numeral
  if (numeral.end === text.length) return decimal(text, numeral, numeral.end, 0)

  const next = text.charAt(numeral.end)
  const gap = next === ' ' || next === '-' ? 1 : 0
  const part = readFraction(text, numeral.end + gap)
  if (part !== null) {
    if (numeral.mark !== '') return NOT_A_NUMBER
    // "1 100/200" may be 1100/200 as well: a blank also parts thousands.
    return next === ' ' && part.above.length === 3
      ? { ok: false, code: 'AMBIGUOUS_NUMBER', readings: [`${numeral.digits}${part.above}/${part.below}`, `${numeral.digits}-${part.above}/${part.below}`], end: part.end }
      : withWhole(text, numeral.digits, part)
  }
  const power = matchAt(EXPONENT, text, numeral.end)
  if (power === null) return decimal(text, numeral, numeral.end, 0)
  const exponent = Math.min(Math.max(Number(power[1]), -LARGEST_EXPONENT), LARGEST_EXPONENT)
  return decimal(text, numeral, numeral.end + power[0].length, exponent)
}

function decimal(text: string, numeral: Numeral, end: number, exponent: number): FoundNumber | NumberFault {
  if (goesOn(text, end)) return NOT_A_NUMBER
  const value = ratio(BigInt(numeral.digits), 10n ** BigInt(numeral.decimals))
  return {
    ok: true,
    value: exponent === 0 ? value : multiplyRatios(value, powerOfTen(exponent)),
    form: { style: 'decimal', numeral, exponent },
    end,
  }
}

interface FoundFraction {
  readonly above: string
  readonly below: string
  readonly end: number
}

function readFraction(text: string, at: number): FoundFraction | null {
  const vulgar = readVulgar(text, at)
  if (vulgar !== null) return { above: String(vulgar.numerator), below: String(vulgar.denominator), end: at + 1 }
  const typed = matchAt(FRACTION, text, at)
  return typed === null ? null : { above: typed[1] ?? '', below: typed[2] ?? '', end: at + typed[0].length }
}

function withWhole(text: string, wholeDigits: string, { above, below, end }: FoundFraction): FoundNumber | NumberFault {
  if (goesOn(text, end)) return NOT_A_NUMBER
  const [whole, numerator, denominator] = [BigInt(wholeDigits), BigInt(above), BigInt(below)]
  if (denominator === 0n) return { ok: false, code: 'DIVISION_BY_ZERO' }
  if (whole > 0n && numerator >= denominator) return NOT_A_NUMBER
  const value: Ratio = addRatios(ratio(whole, 1n), ratio(numerator, denominator))
  return { ok: true, value, form: { style: 'fraction', denominator }, end }
}

/** Whether more of a number follows a number: "12 5", "3/4/5", "½½", "5½ ½". */
function goesOn(text: string, end: number): boolean {
  if (end === text.length) return false
  return matchAt(MORE_DIGITS, text, end) !== null || readVulgar(text, end) !== null
    || (text.charAt(end) === ' ' && readVulgar(text, end + 1) !== null)
}
