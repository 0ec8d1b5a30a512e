import { describe, expect, test } from 'vitest'
import { addEntry, editField, EMPTY_DOCUMENT, EMPTY_SHELF, freeName, patchDocument, putOnHanger, removeEntry, renameEntry, SHELF_KINDS, SHELF_PATHS, takeFromHanger, withPullTests, type Shelf } from '#core'
import { BOWL, ENTRIES, GRITTY, ROLL, SWAN } from './entries'

const shelf: Shelf = { entries: [ROLL, BOWL, GRITTY], extra: { owner: 'Ada' } }
const codes = (outcome: ReturnType<typeof addEntry>) => (outcome.ok ? [] : outcome.problems.map(({ code }) => code))

describe('a shelf', () => {
  test('takes an entry at its end, its name without blanks round it', () => {
    const outcome = addEntry(shelf, { ...SWAN, name: ' Swan neck ' })
    expect(outcome.ok && outcome.shelf).toEqual({ entries: [ROLL, BOWL, GRITTY, SWAN], extra: { owner: 'Ada' } })
    expect(shelf.entries).toHaveLength(3)
  })

  test('refuses what is there already, another of that name, and what cannot be read', () => {
    expect(codes(addEntry(shelf, ROLL))).toEqual(['SAME_THERE'])
    expect(codes(addEntry(shelf, { ...ROLL, name: 'ROLL b12', pullTests: [] }))).toEqual(['NAME_TAKEN'])
    expect(codes(addEntry(shelf, { ...SWAN, name: ' ' }))).toEqual(['NO_NAME'])
    expect(codes(addEntry(shelf, { ...SWAN, typed: {} }))).toEqual(['NOTHING_IN_IT'])
    expect(codes(addEntry(shelf, { ...SWAN, typed: { 'hook.rated': '25' } }))).toEqual(['BAD_VALUE'])
  })

  test('gives an entry another name, though not one that is taken', () => {
    const renamed = renameEntry(shelf, 1, ' Green bowl ')
    expect(renamed.ok && renamed.shelf.entries.map(({ name }) => name)).toEqual(['Roll B12', 'Green bowl', 'Gritty'])
    const recased = renameEntry(shelf, 1, 'BLUE bowl')
    expect(recased.ok && recased.shelf.entries[1]?.name, 'its own name is its own').toBe('BLUE bowl')
    const two = addEntry(shelf, { ...BOWL, name: 'Second' })
    if (!two.ok) throw new Error('refused')
    expect(codes(renameEntry(two.shelf, 3, 'blue  bowl'))).toEqual(['NAME_TAKEN'])
    expect(codes(renameEntry(shelf, 0, ''))).toEqual(['NO_NAME'])
  })

  test('loses the one that is removed, and no other', () => {
    expect(removeEntry(shelf, 1).entries).toEqual([ROLL, GRITTY])
    expect(() => removeEntry(shelf, 3)).toThrow(RangeError)
  })

  test('finds a name that is free', () => {
    expect(freeName(shelf, 'cord', 'Roll C')).toBe('Roll C')
    expect(freeName(shelf, 'cord', 'roll b12')).toBe('roll b12 2')
    expect(freeName({ ...shelf, entries: [ROLL, { ...ROLL, name: 'Roll B12 2' }] }, 'cord', 'Roll B12')).toBe('Roll B12 3')
    expect(freeName(shelf, 'pot', 'Roll B12')).toBe('Roll B12')
  })
})

describe('between shelf and hanger', () => {
  const hanger = withPullTests(patchDocument(EMPTY_DOCUMENT, {
    'pot.have': 'no', 'pot.rim': '20 cm', 'pot.fillGap': '2 cm', 'cord.fibre': 'jute', 'cord.diameter': '5 mm', 'cord.rated': '900 N', 'make.legs': '3', 'hook.wire': '5 mm',
  }), [{ typed: { load: '300 N' }, extra: {} }])

  test.each(ENTRIES.map((entry) => [entry.kind, entry] as const))('a %s put on a hanger and taken from it again is the same', (kind, entry) => {
    const put = putOnHanger(hanger, entry)
    expect(takeFromHanger(put, kind, entry.name, entry.date, entry.note)).toEqual(entry)
    expect(hanger.typed['cord.fibre'], 'the hanger before is untouched').toBe('jute')
  })

  test('no mixture of two cords arises, pull tests and all', () => {
    const put = putOnHanger(hanger, { ...ROLL, typed: { 'cord.diameter': '3 mm' }, pullTests: [] })
    expect(put.typed).toEqual({ 'pot.have': 'no', 'pot.rim': '20 cm', 'pot.fillGap': '2 cm', 'make.legs': '3', 'hook.wire': '5 mm', 'cord.diameter': '3 mm' })
    expect(put.pullTests).toEqual([])
  })

  test('all that is not of the kind stays, a cord’s pull tests too', () => {
    const put = putOnHanger(hanger, GRITTY)
    expect(put.typed).toEqual({ ...hanger.typed, ...GRITTY.typed })
    expect(put.pullTests).toBe(hanger.pullTests)
  })

  test('a pot that is put in is there', () => {
    expect(putOnHanger(hanger, BOWL).typed['pot.have']).toBe('yes')
    expect(putOnHanger(EMPTY_DOCUMENT, BOWL).typed['pot.have']).toBeUndefined()
    expect(putOnHanger(hanger, BOWL).typed['pot.fillGap']).toBe('2 cm')
  })

  test('what a hanger does not say, or cannot be read, does not get on the shelf', () => {
    expect(codes(addEntry(EMPTY_SHELF, takeFromHanger(EMPTY_DOCUMENT, 'cord', 'Roll', '', '')))).toEqual(['NOTHING_IN_IT'])
    expect(codes(addEntry(EMPTY_SHELF, takeFromHanger(editField(hanger, 'cord.diameter', '5'), 'cord', 'Roll', '', '')))).toEqual(['BAD_VALUE'])
  })
})

test('every kind has paths of its own group, and none is in two kinds', () => {
  const all = SHELF_KINDS.flatMap((kind) => {
    expect(SHELF_PATHS[kind].length).toBeGreaterThan(2)
    for (const path of SHELF_PATHS[kind]) expect(path.startsWith(`${kind}.`)).toBe(true)
    return SHELF_PATHS[kind]
  })
  expect(new Set(all).size).toBe(all.length)
})
