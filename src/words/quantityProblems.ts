import type { QuantityProblem } from '../quantity/quantityProblem'
import { writingHabits } from './writing'

/** Words as a choice: a, b or c. */
export const orList = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`)

/** A force may be given as the mass that pulls so, which is what luggage scales and packets show. */
const offered = (allowed: readonly string[]): readonly string[] => (allowed.includes('kgf') ? ['kg', 'lb', ...allowed.filter((unit) => unit === 'N' || unit === 'kN')] : allowed)

const QUANTITY_WORDS: { readonly [C in QuantityProblem['code']]: (problem: Extract<QuantityProblem, { code: C }>) => string } = {
  EMPTY: () => 'nothing was given',
  NOT_A_NUMBER: ({ text }) => `“${text}” is not a number`,
  NO_UNIT: ({ allowed }) => `the unit is missing: write ${orList(offered(allowed))} after the number`,
  UNKNOWN_UNIT: ({ unit, allowed, suggestion }) => `“${unit}” is not a unit it knows here${suggestion === null ? '' : ` (did you mean ${suggestion}?)`}: ${allowed.length === 0 ? 'write a number without a unit' : `write ${orList(offered(allowed))}`}`,
  WRONG_KIND: ({ unit, unitKind, askedKind, hint }) => `“${unit}” is a unit of ${KIND_WORDS[unitKind] ?? unitKind}, and ${KIND_WORDS[askedKind] ?? askedKind} is asked${hint === null ? '' : `: write ${hint}`}`,
  AMBIGUOUS_NUMBER: ({ text, readings }) => `“${text}” can be read as ${readings[0]} or ${readings[1]}: ${groupAdvice()}`,
  TRAILING_TEXT: ({ text }) => `“${text}” after the unit cannot be read`,
  TOO_LONG: () => 'the text is too long',
  NOT_FINITE: () => 'the number is too large',
  NOT_WHOLE: () => 'a whole number is asked',
  PART_TOO_LARGE: ({ text, unit, below }) => `in “${text}” the ${unit} must stay below ${below}`,
  DIVISION_BY_ZERO: () => 'a fraction cannot have zero below the line',
}

/** With a decimal comma three digits behind it look like a group, so that a nought is put after them. */
const groupAdvice = (): string => (writingHabits().decimalMark === '.' ? 'write it without a group mark, or with a decimal point' : 'write it without a group mark, or with a further 0 behind the comma')

const KIND_WORDS: Readonly<Record<string, string>> = {
  length: 'length', mass: 'mass', force: 'force', linearDensity: 'mass per length', time: 'time', count: 'a plain number', angle: 'angle', speed: 'speed', volume: 'volume',
  density: 'density', number: 'a plain number', ratio: 'a share', pressure: 'pressure',
}

/** Why a quantity could not be read, as the middle of a sentence. */
export const quantityText = (problem: QuantityProblem): string => (QUANTITY_WORDS[problem.code] as (p: QuantityProblem) => string)(problem)
