import { describe, expect, it } from 'vitest'
import { asSold, changedSinceSold, checkHanger, editField, editInspectionAt, foundByTag, freezeAsSold, heaviestPot, parseDocument, resolveDocument, sameTag, unknownKeyNames, writeDocument, type HangerDocument } from '#core'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

const hanger = documentOf({ ...ORDINARY, 'make.code': 'FERN-07', 'make.date': '2026-10-18' })
const frozen = freezeAsSold(hanger, '2026-11-02')
function sold(): HangerDocument {
  if (!frozen.ok) throw new Error(frozen.reason)
  return frozen.document
}

describe('a hanger as it was sold', () => {
  it('is kept in its own file with what the check said that day', () => {
    const copy = sold().sold
    const read = resolveDocument(hanger)
    const check = read.ok ? checkHanger(read.hanger) : null
    expect(copy).toEqual({ date: '2026-11-02', verdict: check?.verdict, hanger: check?.verdicts.hanger, place: check?.verdicts.place, heaviest: heaviestPot(hanger)?.watered, file: writeDocument(hanger) })
  })

  it('is promised no weight where its own check does not hold', () => {
    const overloaded = freezeAsSold(editField(hanger, 'weighed.mass', '80 kg'), '2026-11-02')
    expect(overloaded.ok && overloaded.document.sold).toMatchObject({ hanger: 'fails', heaviest: null })
  })

  it('comes back from the file as it was, and is no unknown key', () => {
    const parsed = parseDocument(writeDocument(sold()))
    if (!parsed.ok) throw new Error('unread')
    expect(parsed.document).toEqual(sold())
    expect(unknownKeyNames(parsed.document)).toEqual([])
    expect(writeDocument(parsed.document)).toBe(writeDocument(sold()))
  })

  it('is not touched by what is typed later, and never made anew', () => {
    const later = editField(sold(), 'make.legs', '6')
    expect(asSold(later)).toEqual({ ok: true, document: hanger })
    expect(freezeAsSold(later, '2027-01-01')).toEqual({ ok: false, reason: 'alreadySold' })
  })

  it('tells a change from a later look at it', () => {
    expect(changedSinceSold(hanger)).toBeNull()
    expect(changedSinceSold(sold())).toBe(false)
    expect(changedSinceSold(editInspectionAt(sold(), 0, 'what', 'looked'))).toBe(false)
    expect(changedSinceSold(editField(sold(), 'make.legs', '6'))).toBe(true)
  })

  it('is none where the file cannot be read or is too long', () => {
    expect(freezeAsSold(editField(hanger, 'pot.rim', 'wide'), '2026-11-02')).toEqual({ ok: false, reason: 'unread' })
    expect(freezeAsSold({ ...hanger, extra: { log: 'x'.repeat(200_001) } }, '2026-11-02')).toEqual({ ok: false, reason: 'tooLong' })
  })

  it.each([[{ date: 'today' }], [{ file: 7 }], [{ heaviest: -1 }], [{ more: 1 }]])('with %j is kept as it is found, and told as a key that is not known', (odd) => {
    const text = JSON.stringify({ ...JSON.parse(writeDocument(sold())) as object, sold: { ...sold().sold, ...odd } })
    const parsed = parseDocument(text)
    if (!parsed.ok) throw new Error('unread')
    expect(parsed.document.sold).toBeNull()
    expect(unknownKeyNames(parsed.document)).toEqual(['sold'])
    expect(JSON.parse(writeDocument(parsed.document))).toMatchObject({ sold: { ...sold().sold, ...odd } })
    expect(freezeAsSold(parsed.document, '2026-11-02')).toEqual({ ok: false, reason: 'alreadySold' })
  })
})

it('is found again by its tag code, however that is typed', () => {
  const kept = [{ document: documentOf({}), file: 'a' }, { document: hanger, file: 'b' }, { document: editField(hanger, 'make.code', 'fern 7'), file: 'c' }]
  expect(foundByTag(kept, 'fern07').map(({ file }) => file)).toEqual(['b'])
  expect(foundByTag(kept, ' ')).toEqual([])
  expect(sameTag('', '')).toBe(false)
})
