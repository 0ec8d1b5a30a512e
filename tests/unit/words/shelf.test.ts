import { describe, expect, test } from 'vitest'
import { entryProblemText, importText, proposedName, putText, refusedEntryText, setAsideText, SHELF_COPIES_TEXT, EMPTY_SHELF_TEXT, SHELF_MERGED_TEXT, shelfDetails, shelfFacts, shelfFileText, shelfOutcomeText, unreadShelfText, type EntryProblem, type ShelfDeed, type ShelfFileProblem } from '#core'
import { FILE_PROBLEM_CODES } from '../../../electron/contract'
import { BOWL, BRASS, ENTRIES, GRITTY, ROLL, SWAN } from '../shelf/entries'
import { faultsOf, sentenceFaultsOf } from './cleanSentence'

type Without<T> = T extends { code: string } ? Omit<T, 'code'> : never
type Samples<T extends { code: string }> = { readonly [C in T['code']]: readonly [Without<Extract<T, { code: C }>>, ...string[]] }

const FILES: Samples<ShelfFileProblem> = {
  NOT_JSON: [{ detail: 'Unexpected end of JSON input' }, 'Unexpected end'],
  HANGER_FILE: [{}, 'hanger file', 'Open it as a hanger'],
  NOT_A_SHELF: [{ found: '"other"' }, '"other"'],
  BAD_VERSION: [{ found: '0.5' }, '0.5'],
  NEWER_VERSION: [{ version: 7 }, '7', 'version 1'],
  NO_LIST: [{ found: '{}' }, 'list', '{}'],
}

const ENTRY: Samples<EntryProblem> = {
  NOT_AN_ENTRY: [{ found: '7' }, '7'],
  UNKNOWN_KIND: [{ found: '"rope"' }, '"rope"', 'cord, pot, mix, hook, ring'],
  NO_NAME: [{}, 'name'],
  NOTHING_IN_IT: [{ kind: 'mix' }, 'mix'],
  NOT_TEXT: [{ path: 'cord.rated', found: 'true' }, '“cord.rated”', 'true'],
  NOT_A_GROUP: [{ kind: 'hook', found: '[]' }, '“hook”', '[]'],
  NOT_A_LOG: [{ found: '"many"' }, 'list of pull tests', '"many"'],
  BAD_HEADING: [{ why: { code: 'BAD_DATE', path: 'date', given: '2026-02-30' } }, 'Date', '2026-02-30'],
  BAD_VALUE: [{ why: { code: 'NOT_A_CHOICE', path: 'hook.kind', given: 'bent', choices: ['open', 'closed'] } }, 'bent', 'open or closed'],
  NAME_TAKEN: [{ kind: 'cord', name: 'B12' }, 'already a cord called “B12”', 'rename'],
  SAME_THERE: [{ kind: 'pot', name: 'Bowl' }, 'pot “Bowl”'],
}

const clean = (text: string): readonly string[] => sentenceFaultsOf(text.replace(/“[^”]*”/g, '“text”').replace(/Allowed: .*/, 'Allowed: words.'))

describe('what is wrong with a shelf', () => {
  test.each(Object.entries(FILES))('%s', (code, [numbers, ...says]) => {
    const text = shelfFileText({ code, ...numbers } as ShelfFileProblem)
    expect(clean(text), text).toEqual([])
    for (const part of says) expect(text).toContain(part)
  })

  test.each(Object.entries(ENTRY))('%s, in an entry', (code, [numbers, ...says]) => {
    const why = { code, ...numbers } as EntryProblem
    const text = entryProblemText(why)
    expect(clean(text), text).toEqual([])
    for (const part of says) expect(text).toContain(part)
    expect(refusedEntryText({ position: 3, kind: 'cord', name: 'B12', why: [why] })).toBe(`Entry 3, cord “B12”: ${text}`)
  })

  test.each(FILE_PROBLEM_CODES)('%s, with its file', (code) => {
    const deeds: readonly ShelfDeed[] = ['load', 'save', 'import', 'export']
    const sentences = [...deeds.map((deed) => shelfOutcomeText({ code, deed, detail: 'EXAMPLE: it broke.' })), unreadShelfText(code, 'EXAMPLE: it broke.')]
    expect(new Set(sentences).size).toBe(sentences.length)
    for (const sentence of sentences) expect(clean(sentence.replace('EXAMPLE', 'Example'))).toEqual([])
    expect(sentences.some((sentence) => sentence.includes('EXAMPLE'))).toBe(code === 'OTHER')
  })
})

describe('what an entry is told by', () => {
  test('its main facts as typed, in words', () => {
    expect(shelfFacts(ROLL)).toBe('3 mm cotton, single-strand string, loose, 48 g in 10 m, 2 pull tests, lot B12')
    expect(shelfFacts(BOWL)).toBe('7 1/2 in stoneware, glazed, bowl, 1.3 kg empty')
    expect(shelfFacts(GRITTY)).toBe('cactus mix, gritty, 0.9 kg/L dry, holds 35 % water, 52 % pores')
    expect(shelfFacts(SWAN)).toBe('hook with a latch, rated 25 kgf')
    expect(shelfFacts(BRASS)).toBe('brass, 5 mm thick, 50 mm inside')
    expect(shelfFacts({ ...ROLL, typed: {}, pullTests: ROLL.pullTests.slice(1) })).toBe('1 pull test')
    expect(shelfFacts({ ...ROLL, typed: { 'cord.fibre': 'unknown' }, pullTests: [] })).not.toBe('')
  })

  test('a name to begin with: the lot, else what tells most', () => {
    expect(proposedName(ROLL)).toBe('B12')
    expect(proposedName(BRASS)).toBe('brass, 5 mm thick')
    expect(proposedName({ kind: 'cord', typed: { 'cord.lot': 'x'.repeat(80) } })).toHaveLength(60)
  })

  test('all its values and pull tests', () => {
    const details = shelfDetails(ROLL)
    expect(details).toHaveLength(8)
    expect(details).toContainEqual({ label: 'Fibre of the cord', text: 'cotton' })
    expect(details.at(-1)).toEqual({ label: 'Pull test 2', text: '31 lb, 20 s' })
    for (const entry of ENTRIES) for (const { label, text } of shelfDetails(entry)) expect([...faultsOf(label), ...faultsOf(text)]).toEqual([])
  })
})

describe('what was done', () => {
  test.each([
    [1, 0, 0, '1 entry came in.'],
    [3, 1, 0, '3 entries came in and 1 was here already.'],
    [2, 2, 1, '2 entries came in, 2 were here already and 1 was refused.'],
    [0, 0, 2, 'Nothing new came in and 2 were refused.'],
    [0, 0, 0, 'There was nothing in that shelf file.'],
  ])('an import: %i in, %i skipped, %i refused', (added, skipped, refused, text) => {
    const many = (n: number) => Array.from({ length: n }, () => ROLL)
    expect(importText({ added: many(added), skipped: many(skipped), refused: many(refused) })).toBe(text)
  })

  test('a thing put on a hanger, and what of the last one still counts', () => {
    expect(putText(SWAN, { 'testHang.mass': '12 kg', 'fixing.proof': '15 kg' })).toMatch(/test hang still counts.*another hook.*pull in place still counts/)
    expect(putText(SWAN, { 'weighed.mass': '5 kg' })).toBe('The hook “Swan neck” is in this hanger now, in place of its own; Undo takes it back.')
    expect(putText(BOWL, { 'weighed.mass': '5 kg' })).toContain('weighing still counts')
    expect(putText(BOWL, {})).not.toContain('weighing')
    expect(putText(ROLL, { 'testHang.volume': '12 l' })).toContain('test hang still counts')
  })

  test.each([EMPTY_SHELF_TEXT, SHELF_COPIES_TEXT, SHELF_MERGED_TEXT, setAsideText('It is broken.', 'shelf-set-aside-1.json')])('%s', (text) => {
    expect(sentenceFaultsOf(text)).toEqual([])
  })
})
