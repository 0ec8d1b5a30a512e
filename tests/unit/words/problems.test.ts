import { describe, expect, test } from 'vitest'
import { FIELD_PATHS, FIELD_WORDS, fieldOf, parseDocument, problemText, readField, resolveDocument, type FieldProblem, type FileProblem, type InputProblem, type RecordProblem } from '#core'
import type { QuantityProblem } from '../../../src/quantity/quantityProblem'
import { documentOf } from '../hanger/hangerOf'
import { sentenceFaultsOf } from './cleanSentence'

type Without<T> = T extends { code: string } ? Omit<T, 'code'> : never
type Samples<T extends { code: string }> = { readonly [C in T['code']]: readonly (readonly [Without<Extract<T, { code: C }>>, ...string[]])[] }

const QUANTITIES: Samples<QuantityProblem> = {
  EMPTY: [[{}]],
  TOO_LONG: [[{ length: 412, limit: 60 }]],
  NOT_A_NUMBER: [[{ text: 'abc' }, '“abc”']],
  AMBIGUOUS_NUMBER: [[{ text: '1,250', readings: ['1250', '1.25'] }, '1250 or 1.25']],
  DIVISION_BY_ZERO: [[{ text: '1/0' }, 'zero']],
  NOT_FINITE: [[{ text: '1e999' }]],
  NOT_WHOLE: [[{ text: '2.5' }, 'whole number']],
  NO_UNIT: [[{ number: '12', allowed: ['mm', 'cm', 'in'] }, 'mm, cm or in'], [{ number: '12', allowed: ['g/m'] }, 'g/m']],
  UNKNOWN_UNIT: [[{ unit: 'mmm', allowed: ['mm', 'cm'], suggestion: 'mm' }, '“mmm”', 'did you mean mm?', 'mm or cm'], [{ unit: 'x', allowed: [], suggestion: null }, 'without a unit']],
  WRONG_KIND: [
    [{ unit: 'lb', unitKind: 'mass', askedKind: 'force', allowed: ['N', 'lbf'], hint: 'lbf' }, 'mass', 'force', 'lbf'],
    [{ unit: 'mm', unitKind: 'length', askedKind: 'count', allowed: [], hint: null }, 'length', 'a plain number'],
  ],
  TRAILING_TEXT: [[{ text: 'or so' }, '“or so”']],
  PART_TOO_LARGE: [[{ text: '5 ft 14 in', unit: 'in', below: 12 }, '12']],
}

const FILES: Samples<FileProblem> = {
  NOT_JSON: [[{ detail: 'Unexpected end of JSON input' }, 'Unexpected end']],
  NOT_A_HANGER_FILE: [[{ found: '"other"' }, '"other"']],
  NEWER_VERSION: [[{ version: 7 }, '7', 'version 1']],
  BAD_VERSION: [[{ found: '0.5' }, '0.5']],
  BAD_NAME: [[{ found: '7' }, '200 characters', '7']],
  NOT_A_LOG: [[{ log: 'pullTests', found: '"many"' }, 'list of pull tests', '"many"'], [{ log: 'inspections', found: '7' }, '“inspections”', 'list of inspections', '7']],
  NOT_TEXT: [[{ path: 'pot.rim', found: 'true' }, 'pot.rim', 'true']],
}

const allowed = { unit: 'mm', min: 0.04, max: 1 } as const
const FIELDS: Samples<FieldProblem> = {
  BAD_QUANTITY: [[{ path: 'pot.rim', given: '18', why: { code: 'NO_UNIT', number: '18', allowed: ['mm', 'in'] }, allowed }, 'Width of the pot at the rim', '18', '40 mm to 1000 mm']],
  OUT_OF_RANGE: [[{ path: 'pot.rim', given: '3 mm', allowed }, 'Width of the pot at the rim', '3 mm', '40 mm to 1000 mm'], [{ path: 'make.legs', given: '2', allowed: { unit: '', min: 3, max: 12 } }, '3 to 12']],
  NOT_A_CHOICE: [[{ path: 'hook.kind', given: 'bent', choices: ['open', 'closed'] }, 'bent', 'open or closed']],
  CONFLICT: [
    [{ path: 'make.fringe', given: '90 cm', relation: 'below', other: 'make.totalLength', otherText: '80 cm' }, '90 cm', 'below', '80 cm'],
    [{ path: 'pot.height', given: '3 cm', relation: 'above', other: 'pot.fillGap', otherText: '4 cm' }, '3 cm', 'more than', '4 cm'],
    [{ path: 'mix.capacity', given: '80 %', relation: 'atMost', other: 'mix.porosity', otherText: '70 %' }, '80 %', 'at most', '70 %'],
    [{ path: 'pot.belly', given: '15 cm', relation: 'atLeast', other: 'pot.rim', otherText: '20 cm' }, '15 cm', 'at least', '20 cm'],
  ],
  BAD_SCREW: [[{ path: 'fixing.screw', given: '#99 x 2 in', why: { code: 'UNKNOWN_GAUGE', gauge: 99, known: ['No. 6', 'No. 8'] } }, 'Screw as its packet names it', '#99 x 2 in', 'No. 6 and No. 8']],
  BAD_DATE: [[{ path: 'make.date', given: '2026-02-30' }, 'Date it was made', '2026-02-30', '2026-03-21']],
  TEXT_TOO_LONG: [[{ path: 'cord.lot', given: 'x'.repeat(81), max: 80 }, 'Roll or lot', '81', 'up to 80']],
}

const RECORDS: Samples<RecordProblem> = {
  IN_PULL_TEST: [
    [{ row: 2, why: { code: 'BAD_QUANTITY', path: 'load', given: '12', why: { code: 'NO_UNIT', number: '12', allowed: ['N', 'kgf'] }, allowed: { unit: 'N', min: 1, max: 100_000 } } }, 'Pull test 3', 'load', '“12”', 'kg, lb or N'],
    [{ row: 0, why: { code: 'NOT_A_CHOICE', path: 'state', given: 'moist', choices: ['dry', 'soaked'] } }, 'Pull test 1', 'moist', 'dry or soaked'],
  ],
  IN_INSPECTION: [
    [{ row: 1, why: { code: 'NOT_A_CHOICE', path: 'what', given: 'rotten', choices: ['frayed', 'thinned'] } }, 'Inspection 2', 'rotten', 'frayed or thinned'],
    [{ row: 0, why: { code: 'OUT_OF_RANGE', path: 'leg', given: '13', allowed: { unit: '', min: 1, max: 12 } } }, 'Inspection 1', 'leg', '13', '1 to 12'],
  ],
}

// What was typed is quoted as it stands, and what a file may hold is named by the words of the file.
const faultsOf = (text: string): readonly string[] => sentenceFaultsOf(text.replace(/“[^”]*”/g, '“text”').replace(/Allowed: .*/, 'Allowed: words.'))

describe('what is wrong with a quantity', () => {
  const samples = Object.entries(QUANTITIES).flatMap(([code, list]) => list.map(([numbers, ...says]) => ({ code, why: { code, ...numbers } as QuantityProblem, says })))
  test.each(samples)('$code: $why', ({ why, says }) => {
    const text = problemText({ code: 'BAD_QUANTITY', path: 'pot.rim', given: 'x', why, allowed })
    expect(faultsOf(text), text).toEqual([])
    for (const part of says) expect(text).toContain(part)
  })

  test('of a code without words is not said in silence', () => {
    const made = { code: 'MADE_UP' as QuantityProblem['code'] } as QuantityProblem
    expect(() => problemText({ code: 'BAD_QUANTITY', path: 'pot.rim', given: 'x', why: made, allowed })).toThrow(TypeError)
  })
})

describe('what is wrong with a file or a field', () => {
  const samples = [...Object.entries(FILES), ...Object.entries(FIELDS), ...Object.entries(RECORDS)].flatMap(([code, list]) => list.map(([numbers, ...says]) => ({ code, problem: { code, ...numbers } as InputProblem, says })))
  test.each(samples)('$code: $problem', ({ problem, says }) => {
    const text = problemText(problem)
    expect(faultsOf(text), text).toEqual([])
    for (const part of says) expect(text).toContain(part)
  })

  test('of a code without words is not said in silence', () => {
    expect(() => problemText({ code: 'MADE_UP' } as unknown as InputProblem)).toThrow(TypeError)
  })
})

describe('real texts', () => {
  const typed = ['', '12', '-3 mm', '3 kg', '3 lb', '1,250 mm', '4..5', '1/0', 'abc', '5 ft 14 in', '1e999 m', '2.5', '999 km', '12 furlongs', '3 mm or so', 'x'.repeat(200)]
  test.each(FIELD_PATHS)('%s: whatever is typed is refused in a clean sentence that names the field', (path) => {
    for (const text of typed) {
      const read = readField(path, text)
      if (read.ok) continue
      const sentence = problemText(read.problem)
      expect(faultsOf(sentence), sentence).toEqual([])
      expect(sentence).toContain(FIELD_WORDS[path].label)
      if (fieldOf(path).type === 'choice') expect(sentence).toContain('Allowed: ')
    }
  })

  test('two answers that cannot both be true', () => {
    for (const patch of [{ 'make.fringe': '90 cm', 'make.totalLength': '80 cm' }, { 'pot.height': '3 cm', 'pot.fillGap': '4 cm' }, { 'make.totalLength': '21 cm' }]) {
      const outcome = resolveDocument(documentOf(patch))
      const sentences = outcome.ok ? [] : outcome.problems.map(problemText)
      expect(sentences).toHaveLength(1)
      for (const sentence of sentences) expect(faultsOf(sentence), sentence).toEqual([])
    }
  })

  test('files that are none', () => {
    for (const text of ['', '{', '[]', 'null', '7', '{"format":"strandwise-hanger","version":2}', '{"format":"strandwise-hanger","version":1,"pot":3}']) {
      const parsed = parseDocument(text)
      expect(parsed.ok).toBe(false)
      // What was found is told as it stands, null and all.
      if (!parsed.ok) for (const problem of parsed.problems) expect(faultsOf(problemText(problem)).filter((f) => f !== 'not a value: null'), text).toEqual([])
    }
  })
})
