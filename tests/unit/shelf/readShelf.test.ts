import { describe, expect, test } from 'vitest'
import { DEMOS, EMPTY_SHELF, entryProblemText, importShelf, readShelf, refusedEntryText, writeShelf, type ImportOutcome, type Shelf } from '#core'
import { BOWL, ENTRIES, GRITTY, ROLL } from './entries'

const shelfOf = (...entries: Shelf['entries']): Shelf => ({ entries, extra: {} })
const file = (...entries: readonly unknown[]): string => JSON.stringify({ format: 'strandwise-shelf', version: 1, entries })

function read(text: string): Extract<ImportOutcome, { ok: true }> {
  const outcome = readShelf(text)
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome
}
const problemOf = (text: string): unknown => {
  const outcome = readShelf(text)
  return outcome.ok ? 'read' : outcome.problem
}

describe('a shelf file', () => {
  test('one of each kind is written, read back the same, and written again byte for byte', () => {
    const text = writeShelf(shelfOf(...ENTRIES))
    const outcome = read(text)
    expect(outcome).toEqual({ ok: true, shelf: shelfOf(...ENTRIES), added: ENTRIES, skipped: [], refused: [] })
    expect(writeShelf(outcome.shelf)).toBe(text)
    expect(text.endsWith('}\n')).toBe(true)
  })

  test('keys it does not know are kept everywhere: in the file, an entry, its values, a pull test', () => {
    const text = `${JSON.stringify({
      format: 'strandwise-shelf', version: 1,
      entries: [
        { kind: 'cord', name: 'Roll', cord: { diameter: '4 mm', dye: 'madder' }, pullTests: [{ load: '90 N', by: 'Ada' }], price: { pence: 900 } },
        { kind: 'pot', name: 'Bowl', pot: { rim: '17 cm', fillGap: '2 cm' }, pullTests: 'none' },
      ],
      owner: 'Ada',
    }, null, 2)}\n`
    const { shelf, refused } = read(text)
    expect(refused).toEqual([])
    expect(shelf.entries[1]?.typed, 'how far it is filled does not go with a pot').toEqual({ 'pot.rim': '17 cm' })
    expect(writeShelf(shelf)).toBe(text)
  })

  test('an empty shelf is a shelf', () => {
    expect(read(writeShelf(EMPTY_SHELF)).shelf).toEqual(EMPTY_SHELF)
  })

  test('a key named like an object’s inner parts does no harm', () => {
    const { shelf } = read('{"format":"strandwise-shelf","version":1,"__proto__":{"polluted":"yes"},"entries":[{"kind":"mix","name":"x","mix":{"__proto__":{"kind":"sand"},"kind":"coir"}}]}')
    expect(shelf.entries[0]?.typed).toEqual({ 'mix.kind': 'coir' })
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
  })
})

describe('a text that is no shelf is told for what it is', () => {
  test.each([
    ['{"format": "strandwise-shelf"', { code: 'NOT_JSON' }],
    ['', { code: 'NOT_JSON' }],
    ['[1, 2]', { code: 'NOT_A_SHELF', found: '[1,2]' }],
    ['null', { code: 'NOT_A_SHELF', found: 'null' }],
    ['{"entries": []}', { code: 'NOT_A_SHELF', found: 'null' }],
    ['{"format": "somebody-elses", "version": 1}', { code: 'NOT_A_SHELF', found: '"somebody-elses"' }],
    [DEMOS[0]?.text ?? '', { code: 'HANGER_FILE' }],
    ['{"format": "strandwise-shelf", "version": "1", "entries": []}', { code: 'BAD_VERSION', found: '"1"' }],
    ['{"format": "strandwise-shelf", "version": 0.5, "entries": []}', { code: 'BAD_VERSION', found: '0.5' }],
    ['{"format": "strandwise-shelf", "version": 3, "entries": []}', { code: 'NEWER_VERSION', version: 3 }],
    ['{"format": "strandwise-shelf", "version": 1, "entries": {"a": 1}}', { code: 'NO_LIST', found: '{"a":1}' }],
    ['{"format": "strandwise-shelf", "version": 1}', { code: 'NO_LIST', found: 'null' }],
  ])('%s', (text, problem) => {
    expect(problemOf(text)).toMatchObject(problem)
  })
})

describe('an entry that cannot be read is refused, the others come in', () => {
  const cases: readonly (readonly [string, unknown, readonly string[]])[] = [
    ['no object', 7, ['Entry 2', 'is 7']],
    ['an unknown kind', { kind: 'rope', name: 'Long one' }, ['“Long one”', '"rope"', 'cord, pot, mix, hook, ring']],
    ['no kind', { name: 'Odd' }, ['“Odd”', 'null']],
    ['no name', { kind: 'cord', cord: { diameter: '3 mm' } }, ['Entry 2, cord', 'no name']],
    ['a blank name', { kind: 'cord', name: '  ', cord: { diameter: '3 mm' } }, ['no name']],
    ['a name that is no text', { kind: 'cord', name: 12, cord: { diameter: '3 mm' } }, ['“name”', '12']],
    ['a name that is too long', { kind: 'cord', name: 'x'.repeat(81), cord: { diameter: '3 mm' } }, ['81 characters', 'up to 80']],
    ['nothing in it', { kind: 'hook', name: 'Bare' }, ['Entry 2, hook “Bare”', 'nothing in it']],
    ['a value without its unit', { kind: 'cord', name: 'Roll', cord: { diameter: '3' } }, ['cord “Roll”', 'Diameter of the cord', '“3”', 'mm', 'Allowed: 0.5 mm to 30 mm']],
    ['a value out of range', { kind: 'pot', name: 'Vat', pot: { rim: '3 m' } }, ['pot “Vat”', 'Width of the pot at the rim', '3 m', '40 mm to 1000 mm']],
    ['a word that is no choice', { kind: 'mix', name: 'M', mix: { kind: 'moon dust' } }, ['Potting mix', 'moon dust', 'coir']],
    ['a value that is neither text nor number', { kind: 'ring', name: 'R', ring: { wire: [4] } }, ['“ring.wire”', '[4]']],
    ['a group that is none', { kind: 'mix', name: 'M', mix: 'coir' }, ['“mix”', '"coir"']],
    ['a log that is none', { kind: 'cord', name: 'C', pullTests: 'many' }, ['“pullTests”', '"many"']],
    ['a pull test in a unit of length', { kind: 'cord', name: 'C', pullTests: [{ load: '90 N' }, { load: '12 mm' }] }, ['Pull test 2', 'load', '12 mm']],
    ['a mix that holds more water than it has pores', { kind: 'mix', name: 'Wet', mix: { capacity: '80 %', porosity: '70 %' } }, ['mix “Wet”', '80 %', 'at most', '70 %']],
    ['pores above the whole', { kind: 'mix', name: 'Airy', mix: { porosity: '130 %' } }, ['130 %', '0 to 1']],
    ['a date of no calendar', { kind: 'hook', name: 'H', date: '2026-02-30', hook: { kind: 'open' } }, ['Date', '2026-02-30', 'year-month-day']],
    ['a note that is too long', { kind: 'hook', name: 'H', note: 'n'.repeat(201), hook: { kind: 'open' } }, ['Note', '201', 'up to 200']],
  ]
  test.each(cases)('%s', (_, entry, says) => {
    const { shelf, refused } = read(file({ kind: 'cord', name: 'First', cord: { diameter: '4 mm' } }, entry, { kind: 'mix', name: 'Last', mix: { kind: 'coir' } }))
    expect(shelf.entries.map(({ name }) => name)).toEqual(['First', 'Last'])
    expect(refused.map(({ position }) => position)).toEqual([2])
    const text = refused.map(refusedEntryText).join()
    for (const part of says) expect(text).toContain(part)
  })

  test('with all its faults at once', () => {
    const { refused } = read(file({ kind: 'cord', name: '', cord: { diameter: '3', fibre: 'silk' } }))
    expect(refused[0]?.why.map((why) => (why.code === 'BAD_VALUE' ? why.why.code : why.code))).toEqual(['NO_NAME', 'NOT_A_CHOICE', 'BAD_QUANTITY'])
  })

  test('a load given as a mass is a pull test like any other', () => {
    expect(read(file({ kind: 'cord', name: 'C', pullTests: [{ load: '14 kg' }] })).refused).toEqual([])
  })
})

describe('an import', () => {
  const own = shelfOf(ROLL, GRITTY)

  test('adds what is new, skips what is the same, refuses another thing of the same name, and changes nothing that is there', () => {
    const other = { ...ROLL, name: ' roll  b12 ', typed: { 'cord.diameter': '5 mm' } }
    const outcome = importShelf(own, writeShelf(shelfOf(ROLL, other, BOWL)))
    if (!outcome.ok) throw new Error('refused')
    expect(outcome.shelf.entries).toEqual([ROLL, GRITTY, BOWL])
    expect([outcome.added, outcome.skipped].map((list) => list.map(({ name }) => name))).toEqual([['Blue bowl'], ['Roll B12']])
    expect(outcome.refused).toEqual([{ position: 2, kind: 'cord', name: 'roll  b12', why: [{ code: 'NAME_TAKEN', kind: 'cord', name: 'Roll B12' }] }])
    expect(outcome.refused.flatMap(({ why }) => why.map(entryProblemText)).join()).toMatch(/already a cord called “Roll B12”.*rename/)
  })

  test('two kinds may have one name', () => {
    const outcome = importShelf(own, writeShelf(shelfOf({ ...BOWL, name: 'Gritty' })))
    expect(outcome.ok && outcome.shelf.entries).toHaveLength(3)
  })

  test('two of a name within one file are told apart the same way', () => {
    const { shelf, skipped, refused } = read(file({ kind: 'mix', name: 'A', mix: { kind: 'coir' } }, { kind: 'mix', name: 'a', mix: { kind: 'coir' } }, { kind: 'mix', name: 'A', mix: { kind: 'sand' } }))
    expect([shelf.entries.length, skipped.length, refused.map(({ position }) => position)]).toEqual([1, 1, [3]])
  })

  test('of no shelf leaves all as it was', () => {
    expect(importShelf(own, DEMOS[1]?.text ?? '')).toEqual({ ok: false, problem: { code: 'HANGER_FILE' } })
  })
})
