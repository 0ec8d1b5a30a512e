import { describe, expect, test } from 'vitest'
import { editField } from '../../../src/hanger/document'
import { DEMOS } from '../../../src/hanger/demos'
import { parseDocument, unknownKeyNames, writeDocument } from '../../../src/hanger/parse'

const file = (rest: object) => JSON.stringify({ format: 'strandwise-hanger', version: 1, ...rest })

describe('a hanger file', () => {
  test.each(DEMOS.map((d) => [d.file, d.text]))('%s is written back byte for byte', (_, text) => {
    const parsed = parseDocument(text)
    expect(parsed.ok && writeDocument(parsed.document)).toBe(text)
  })

  test('keys it does not know are kept and written back, in groups too', () => {
    const parsed = parseDocument(file({ name: 'x', pot: { rim: '18 cm', colour: 'blue' }, diary: ['a', { b: 1 }] }))
    if (!parsed.ok) throw new Error('unread')
    expect(unknownKeyNames(parsed.document)).toEqual(['pot.colour', 'diary'])
    const again = JSON.parse(writeDocument(editField(parsed.document, 'pot.rim', '20 cm'))) as unknown
    expect(again).toEqual({ format: 'strandwise-hanger', version: 1, name: 'x', pot: { rim: '20 cm', colour: 'blue' }, diary: ['a', { b: 1 }] })
  })

  test('a group emptied of its answers still keeps what it does not know', () => {
    const parsed = parseDocument(file({ pot: { rim: '18 cm', colour: 'blue' } }))
    if (!parsed.ok) throw new Error('unread')
    expect(JSON.parse(writeDocument(editField(parsed.document, 'pot.rim', null)))).toMatchObject({ pot: { colour: 'blue' } })
  })

  test('a key named like an object’s inner parts does no harm', () => {
    const parsed = parseDocument('{"format":"strandwise-hanger","version":1,"__proto__":{"polluted":"yes"},"pot":{"__proto__":{"rim":"1 m"},"constructor":"x"}}')
    expect(parsed.ok).toBe(true)
    if (!parsed.ok) return
    expect(parsed.document.typed).toEqual({})
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
    expect(writeDocument(parsed.document)).toContain('polluted')
  })

  test.each([
    ['not json', 'NOT_JSON'],
    ['null', 'NOT_A_HANGER_FILE'],
    ['[]', 'NOT_A_HANGER_FILE'],
    ['{"version":1}', 'NOT_A_HANGER_FILE'],
    ['{"format":"strandwise-hanger"}', 'BAD_VERSION'],
    ['{"format":"strandwise-hanger","version":"1"}', 'BAD_VERSION'],
    ['{"format":"strandwise-hanger","version":0.5}', 'BAD_VERSION'],
    ['{"format":"strandwise-hanger","version":7}', 'NEWER_VERSION'],
    [file({ name: 7 }), 'BAD_NAME'],
    [file({ pot: 'round' }), 'NOT_TEXT'],
    [file({ pot: { rim: true } }), 'NOT_TEXT'],
    [file({ pot: { rim: ['18 cm'] } }), 'NOT_TEXT'],
    [file({ pot: { rim: null } }), 'NOT_TEXT'],
  ])('%s is refused as %s', (text, code) => {
    const parsed = parseDocument(text)
    expect(parsed.ok ? [] : parsed.problems.map((p) => p.code)).toEqual([code])
  })

  test('counts may stand as numbers, and a byte order mark is no fault', () => {
    const parsed = parseDocument(`\uFEFF${file({ make: { legs: 5, strands: '6' } })}`)
    expect(parsed.ok && parsed.document.typed).toEqual({ 'make.legs': '5', 'make.strands': '6' })
  })
})
