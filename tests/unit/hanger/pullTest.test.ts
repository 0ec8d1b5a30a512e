import { describe, expect, test } from 'vitest'
import { EMPTY_DOCUMENT, editPullTestAt, parseDocument, problemText, resolveDocument, unknownKeyNames, writeDocument, type HangerDocument } from '#core'

const file = (pullTests: unknown): string => `${JSON.stringify({ format: 'strandwise-hanger', version: 1, name: 'x', pullTests }, null, 2)}\n`
function read(pullTests: unknown): HangerDocument {
  const parsed = parseDocument(file(pullTests))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.document
}
const testsOf = (document: HangerDocument) => {
  const outcome = resolveDocument(document)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.hanger.pullTests
}

describe('the pull-test log of a hanger file', () => {
  const rows = [
    { load: '14.2 kg', how: 'tied', state: 'soaked', broke: 'no', time: '40 s', date: '2026-10-03', note: 'at the ring', scale: 'spring' },
    { load: '131 N' },
  ]

  test('is written back byte for byte, with keys it does not know', () => {
    const document = read(rows)
    expect(writeDocument(document)).toBe(file(rows))
    expect(unknownKeyNames(document)).toEqual(['pullTests[1].scale'])
  })

  test('is read into SI, a mass as the pull of that mass', () => {
    expect(testsOf(read(rows))).toEqual([
      { row: 0, force: 14.2 * 9.80665, asMass: true, how: 'tied', state: 'soaked', broke: false, time: 40, date: '2026-10-03', note: 'at the ring' },
      { row: 1, force: 131, asMass: false, how: 'straight', state: 'dry', broke: true, time: null, date: null, note: null },
    ])
  })

  test('a row whose load is not written yet is kept and decides nothing', () => {
    const document = editPullTestAt(EMPTY_DOCUMENT, 0, 'note', 'to do')
    expect(testsOf(document)).toEqual([])
    expect(document.pullTests).toHaveLength(1)
  })

  test.each([
    [{ load: '12' }, /Pull test 1, load: given “12”.*unit is missing/],
    [{ load: '3 mm' }, /length.*force is asked/],
    [{ load: '0.01 kg' }, /outside the allowed 1 N/],
    [{ load: '12 kg', time: 'soon' }, /time to break: given “soon”/],
    [{ load: '12 kg', date: '3 May' }, /no day of the calendar/],
    [{ load: '12 kg', state: 'moist' }, /dry or soaked/],
  ])('%j is refused with a sentence, and stays as typed', (row, expected) => {
    const document = read([row])
    const outcome = resolveDocument(document)
    expect(outcome.ok ? [] : outcome.problems.map(problemText)).toEqual([expect.stringMatching(expected)])
    expect(writeDocument(document)).toBe(file([row]))
  })

  test.each([['many'], [{ load: '12 kg' }], [['12 kg']]])('%j is no log', (pullTests) => {
    const parsed = parseDocument(file(pullTests))
    expect(parsed.ok ? [] : parsed.problems.map((p) => p.code)).toEqual(['NOT_A_LOG'])
  })

  test('an edit beyond the last row adds one; a text taken back leaves the row', () => {
    const one = editPullTestAt(EMPTY_DOCUMENT, 0, 'load', '12 kg')
    const two = editPullTestAt(one, 1, 'load', '13 kg')
    expect(two.pullTests.map((row) => row.typed)).toEqual([{ load: '12 kg' }, { load: '13 kg' }])
    expect(editPullTestAt(two, 0, 'load', ' ').pullTests.map((row) => row.typed)).toEqual([{}, { load: '13 kg' }])
    expect(editPullTestAt(two, 0, 'load', '12 kg')).toBe(two)
  })
})
