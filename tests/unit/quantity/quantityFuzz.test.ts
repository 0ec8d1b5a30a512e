import { describe, expect, it } from 'vitest'
import { readQuantity } from '../../../src/quantity/readQuantity'
import { stepQuantity } from '../../../src/quantity/stepQuantity'
import { KINDS } from './kinds'
import { manyCases } from './manyCases'
import { oneOf, seededRandom, wholeBetween } from './seededRandom'

const PIECES = [
  '0', '1', '5', '12', '000', '999', '250', '1,250', '16', '3/16', '1/2', '.', ',', ' ', ' ', '-', '+', '−', '/', 'e', 'E3', 'e-5', 'e999', '½', '⅜', '⅒', '%', '\'', '"', '″', '′', '°',
  'kg', 'lb', 'lbf', 'oz', 'in', 'ft', 'mm', 'N', 'US gal', 'lb/100 ft', 'deg', 'kn', '³', '^', '\u00a0', '\u2009', '\t', '\n', '\0', '\ud800', '🌵', 'ß', 'İ', 'NaN', '__proto__', '(', '\\', '#', 'weighed on the kitchen scales,',
]

const SIGNS = ['', '', '', '-', '+', '−'] as const
const NUMBERS = ['0', '7', '5.5', '4,5', '1 000', '1,250', '3/16', '5 3/16', '5½', '2/0', '12 5', '1e-3', '9e400', '1 100/200', '17'] as const
const UNITS = ['', 'kg', 'lb', 'oz', 'ft', '\'', 'in', '"', 'mm', 'mM', 'N', 'lbf', 'deg', '%', 'g/m', 'years', 'l', 'kg/m3', 'mph', 'psi', 'stone'] as const

/** Half of the texts are heaps of pieces, half look like quantities, one in four of these with a second part. */
function anyText(random: () => number): string {
  if (random() < 0.5) return Array.from({ length: wholeBetween(random, 0, 9) }, () => oneOf(random, PIECES)).join('')
  const part = (): string => oneOf(random, NUMBERS) + oneOf(random, ['', ' ']) + oneOf(random, UNITS)
  return oneOf(random, SIGNS) + part() + (random() < 0.25 ? oneOf(random, ['', ' ', '-']) + part() : '')
}

describe('whatever is typed', () => {
  it('is read as a finite number or refused with a code, and stepped to what can be read', () => {
    const random = seededRandom(50)
    const seen = new Set<string>()
    for (let i = 0; i < manyCases(25_000); i++) {
      const text = anyText(random)
      const kind = oneOf(random, KINDS)
      const read = readQuantity(text, kind)
      seen.add(read.ok ? 'OK' : read.problem.code)
      const shown = JSON.stringify(text)
      if (read.ok) expect(Number.isFinite(read.value) && !Object.is(read.value, -0), shown).toBe(true)
      else expect(read.problem.code, shown).toMatch(/^[A-Z_]+$/)
      for (const direction of [1, -1] as const) {
        const stepped = stepQuantity(text, kind, direction)
        if (!read.ok) expect(stepped, shown).toBeNull()
        if (stepped !== null) expect(readQuantity(stepped, kind).ok, shown).toBe(true)
      }
    }
    // The pieces must reach every outcome, or the test proves less than it says.
    expect([...seen].sort()).toEqual(['AMBIGUOUS_NUMBER', 'DIVISION_BY_ZERO', 'EMPTY', 'NOT_A_NUMBER', 'NOT_FINITE', 'NOT_WHOLE', 'NO_UNIT', 'OK', 'PART_TOO_LARGE', 'TOO_LONG', 'TRAILING_TEXT', 'UNKNOWN_UNIT', 'WRONG_KIND'])
  })

  it('takes no longer for the worst of texts', () => {
    const worst = ['1'.repeat(60), '1 '.repeat(30), '1 000'.repeat(12), '1,000'.repeat(12), '1/'.repeat(30), '½'.repeat(60), `9e999${' '.repeat(50)}kg`, `${'9'.repeat(50)}e-999 psi`, '-'.repeat(60), 'a '.repeat(30), `5 ${'a '.repeat(29)}`, '5 ft '.repeat(12), ' '.repeat(1e6), 'x'.repeat(1e6), `5${' '.repeat(1e6)}kg`]
    const start = performance.now()
    for (const text of worst) for (const kind of KINDS) readQuantity(text, kind)
    expect(performance.now() - start).toBeLessThan(2000)
  })
})
