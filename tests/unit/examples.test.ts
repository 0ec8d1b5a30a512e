import { readFileSync } from 'node:fs'
import { compileFunction } from 'node:vm'
import { describe, expect, test } from 'vitest'
import * as si from '../../src/quantity/si'

// Docstrings say `@example expression // value`, or the value on a line of its own: here they are run.

const FEWEST = 60
const BRANDS = Object.fromEntries(Object.entries(si).filter(([, make]) => typeof make === 'function'))

interface Example {
  readonly expression: string
  readonly value: string
}

/** The examples of a source text; null for one that is not `expression // value`. */
function examplesIn(source: string): readonly (Example | null)[] {
  return source.split(/@example\b/).slice(1).map((rest) => {
    const text = rest.split(/\*\/|\n[ \t]*\*?[ \t]*@/)[0] ?? ''
    const lines = text.split('\n').map((line) => line.replace(/^\s*\*\s?/, '').trim()).filter((line) => line !== '')
    const [, expression = '', value = ''] = /^(.+?)\s*\/\/ (.+)$/.exec(lines.join(' ')) ?? []
    return expression === '' || value === '' ? null : { expression, value }
  })
}

function evaluate(text: string, scope: Readonly<Record<string, unknown>>): unknown {
  const run = compileFunction(`"use strict"; return (${text})`, Object.keys(scope)) as (...values: unknown[]) => unknown
  return run(...Object.values(scope))
}

/** The same with every number to 12 digits: sums in binary miss the printed ones by less. */
function to12Digits(x: unknown): unknown {
  if (typeof x === 'number') return Number(x.toPrecision(12))
  if (Array.isArray(x)) return x.map(to12Digits)
  return typeof x === 'object' && x !== null ? Object.fromEntries(Object.entries(x).map(([key, value]) => [key, to12Digits(value)])) : x
}

/** Throws where an example does not come out as it says; a number with decimals is held to those it prints. */
function hold({ expression, value }: Example, scope: Readonly<Record<string, unknown>>): void {
  const found = evaluate(expression, scope)
  const decimals = /^-?\d+\.(\d+)$/.exec(value)?.[1]
  if (decimals === undefined) expect(to12Digits(found)).toEqual(to12Digits(evaluate(value, {})))
  else expect((found as number).toFixed(decimals.length)).toBe(value)
}

const MODULES = import.meta.glob<Record<string, unknown>>('../../src/**/*.ts')
const SOURCES = Object.keys(MODULES).map((path) => ({ path, examples: examplesIn(readFileSync(new URL(path, import.meta.url), 'utf8')) }))
const WITH_EXAMPLES = SOURCES.filter(({ examples }) => examples.length > 0)
const CASES = WITH_EXAMPLES.flatMap(({ path, examples }) => examples.map((example, i) => ({ path, example, name: `${path.replace('../../', '')}: ${example?.expression ?? `example ${i + 1}, which cannot be read`}` })))

describe('an example in a docstring', () => {
  test(`stands at ${FEWEST} functions at least`, () => {
    expect(CASES.length).toBeGreaterThanOrEqual(FEWEST)
  })

  test.each(CASES.map((example) => [example.name, example] as const))('%s', async (_, { path, example }) => {
    if (example === null) expect.fail('not of the form: expression // value')
    hold(example, { ...BRANDS, ...(await MODULES[path]?.()) })
  })
})

describe('the reader of examples', () => {
  const only = (source: string): Example | null => examplesIn(source)[0] ?? null

  test('reads a value on the line or on its own line, and stops at the next tag', () => {
    expect(only('/** Sum. @example add(1, 2) // 3 */')).toEqual({ expression: 'add(1, 2)', value: '3' })
    expect(only("/**\n * @example add(\n *   'lb/100 ft')\n * // 3\n * @param x // 4\n */")).toEqual({ expression: "add( 'lb/100 ft')", value: '3' })
    expect(examplesIn('/**\n * @example a() // 1\n * @example b() // 2\n */')).toHaveLength(2)
  })

  test.each(['/** @example of 4 mm wire: 190 N */', '/**\n * @example\n */', '/** @example add(1, 2) // */'])('does not let %j pass', (source) => {
    expect(only(source)).toBeNull()
  })

  test.each([
    { expression: 'half', value: '0.51' }, { expression: 'half', value: '0.500000001' }, { expression: 'half * 2', value: '1.0000001' },
    { expression: '[half]', value: '[0.5001]' }, { expression: '({ a: half })', value: '{ a: 0.5, b: 1 }' }, { expression: "'1'", value: '1' },
    { expression: 'unknown', value: '1' }, { expression: 'half half', value: '0.5' },
  ])('finds $expression // $value wrong', (example) => {
    expect(() => hold(example, { half: 0.5 })).toThrow()
  })

  test('holds right ones right', () => {
    for (const value of ['0.5', '0.50', '1 / 2']) hold({ expression: 'half', value }, { half: 0.5 })
    hold({ expression: '({ a: [half + 0.1 + 0.2] })', value: '{ a: [0.8] }' }, { half: 0.5 })
  })
})
