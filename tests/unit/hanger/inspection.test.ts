import { describe, expect, test } from 'vitest'
import { EMPTY_DOCUMENT, editInspectionAt, parseDocument, problemText, resolveDocument, unknownKeyNames, writeDocument, type HangerDocument } from '#core'

const file = (inspections: unknown): string => `${JSON.stringify({ format: 'strandwise-hanger', version: 1, name: 'x', inspections }, null, 2)}\n`
function read(inspections: unknown): HangerDocument {
  const parsed = parseDocument(file(inspections))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.document
}

describe('the inspection log of a hanger file', () => {
  const rows = [{ date: '2027-04-02', what: 'strandGone', leg: '3', strands: '2', note: 'chafed at the rim', who: 'M' }, { what: 'looked' }]

  test('is written back byte for byte, with keys it does not know', () => {
    const document = read(rows)
    expect(writeDocument(document)).toBe(file(rows))
    expect(unknownKeyNames(document)).toEqual(['inspections[1].who'])
  })

  test('is read column by column', () => {
    const outcome = resolveDocument(read(rows))
    expect(outcome.ok && outcome.hanger.inspections).toEqual([
      { row: 0, date: '2027-04-02', what: 'strandGone', leg: 3, strands: 2, note: 'chafed at the rim' },
      { row: 1, date: null, what: 'looked', leg: null, strands: null, note: null },
    ])
  })

  test.each([
    [{ what: 'rotten' }, /Inspection 1, what was found or done: given “rotten”.*frayed/],
    [{ what: 'frayed', leg: '2.5' }, /Inspection 1, leg: given “2.5”/],
    [{ what: 'frayed', strands: '0' }, /strands: given “0”, which is outside the allowed 1 to 48/],
    [{ date: '2 April' }, /no day of the calendar/],
    [{ note: 'x'.repeat(201) }, /201 characters/],
  ])('%j is refused with a sentence, and stays as typed', (row, expected) => {
    const document = read([row])
    const outcome = resolveDocument(document)
    expect(outcome.ok ? [] : outcome.problems.map(problemText)).toEqual([expect.stringMatching(expected)])
    expect(writeDocument(document)).toBe(file([row]))
  })

  test.each([['many'], [{ what: 'looked' }], [['looked']]])('%j is no log', (inspections) => {
    const parsed = parseDocument(file(inspections))
    expect(parsed.ok ? [] : parsed.problems.map(problemText)).toEqual([expect.stringMatching(/“inspections” should be a list/)])
  })

  test('an edit beyond the last row adds one; an edit that changes nothing is none', () => {
    const once = editInspectionAt(EMPTY_DOCUMENT, 0, 'what', 'frayed')
    expect(once.inspections).toEqual([{ typed: { what: 'frayed' }, extra: {} }])
    expect(editInspectionAt(once, 0, 'what', 'frayed')).toBe(once)
    expect(editInspectionAt(once, 0, 'what', ' ').inspections).toEqual([{ typed: {}, extra: {} }])
    expect(editInspectionAt(once, 1, 'note', 'later').inspections).toHaveLength(2)
  })
})
