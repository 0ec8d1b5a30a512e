import { matchAt } from './matchAt'
import type { NumberFault } from './numberFault'

/** A row of digits as typed, with at most one decimal mark. */
export interface Numeral {
  readonly ok: true
  /** All digits, without mark and groups. */
  readonly digits: string
  /** How many of them stand after the mark. */
  readonly decimals: number
  readonly mark: '' | '.' | ','
  /** Whether thousands were set apart by blanks. */
  readonly spaced: boolean
  readonly end: number
}

const SPACED = /[1-9]\d{0,2}(?: \d{3})+(?![\d/])/y
const DECIMALS = /[.,]\d+/y
const DIGITS_AND_MARKS = /[\d.,]+/y
const PLAIN = /^(\d*)(?:([.,])(\d+))?$/
const GROUPED_BY_COMMA = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/
const GROUPED_BY_POINT = /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/
const COULD_BE_GROUPED = /^[1-9]\d{0,2},\d{3}$/

/** Reads a decimal numeral at a place in a tidy text. Which marks part thousands: see readNumber. */
export function readNumeral(text: string, start: number): Numeral | NumberFault {
  const spaced = matchAt(SPACED, text, start)
  if (spaced !== null) {
    const afterGroups = start + spaced[0].length
    const decimals = matchAt(DECIMALS, text, afterGroups)?.[0] ?? ''
    return numeral(spaced[0].replaceAll(' ', ''), decimals, true, afterGroups + decimals.length)
  }
  const run = matchAt(DIGITS_AND_MARKS, text, start)?.[0] ?? ''
  const end = start + run.length
  if (COULD_BE_GROUPED.test(run)) {
    return { ok: false, code: 'AMBIGUOUS_NUMBER', readings: [run.replace(',', ''), run.replace(',', '.')], end }
  }
  const plain = PLAIN.exec(run)
  if (plain !== null && run !== '') return numeral(plain[1] ?? '', run.slice(plain[1]?.length), false, end)
  for (const [grouped, group, mark] of [[GROUPED_BY_COMMA, ',', '.'], [GROUPED_BY_POINT, '.', ',']] as const) {
    if (!grouped.test(run)) continue
    const [whole = '', decimals] = run.replaceAll(group, '').split(mark)
    return numeral(whole, decimals === undefined ? '' : mark + decimals, false, end)
  }
  return { ok: false, code: 'NOT_A_NUMBER' }
}

/** `decimals` with its mark, or empty. */
function numeral(whole: string, decimals: string, spaced: boolean, end: number): Numeral {
  const mark = decimals.startsWith(',') ? ',' : decimals === '' ? '' : '.'
  return { ok: true, digits: whole + decimals.slice(1), decimals: Math.max(decimals.length - 1, 0), mark, spaced, end }
}
