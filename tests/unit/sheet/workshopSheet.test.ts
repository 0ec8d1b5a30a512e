import { describe, expect, it } from 'vitest'
import { checkHanger, DEMOS, editField, freezeAsSold, parseDocument, resolveDocument, withInspections, type HangerDocument, type Patch } from '#core'
import type { Block } from '../../../src/sheet/block'
import type { SheetFacts } from '../../../src/sheet/facts'
import type { Sheet } from '../../../src/sheet/sheet'
import { sheetHtml } from '../../../src/sheet/sheetHtml'
import { recordSheet } from '../../../src/sheet/workshop/recordSheet'
import { workshopSheet } from '../../../src/sheet/workshop/workshopSheet'
import { documentOf, ORDINARY } from '../hanger/hangerOf'

/** Facts without the search for the heaviest pot, which the sheet does not need. */
function factsOf(document: HangerDocument): SheetFacts {
  const read = resolveDocument(document)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return { document, answer: { check: checkHanger(read.hanger), heaviest: null, remedies: [] }, limit: null }
}
const sheetOf = (document: HangerDocument): Sheet => workshopSheet(factsOf(document), { format: 'a4', today: '2026-11-26', draft: false })
function flat(blocks: readonly Block[]): readonly Block[] {
  return blocks.flatMap((block) => [block, ...(block.kind === 'columns' ? block.columns.flatMap((column) => flat(column.blocks)) : 'blocks' in block ? flat(block.blocks) : [])])
}
const blocksOf = (sheet: Sheet): readonly Block[] => sheet.pages.flatMap((page) => flat(page.blocks))
type Table = Extract<Block, { kind: 'table' }>
function tableOf(sheet: Sheet, caption: string): Table {
  const found = blocksOf(sheet).find((block): block is Table => block.kind === 'table' && block.caption.startsWith(caption))
  if (!found) throw new Error(`no table ${caption}`)
  return found
}
const textOf = (sheet: Sheet): string => JSON.stringify(sheet.pages)

describe('a workshop sheet', () => {
  const patch: Patch = { ...ORDINARY, 'make.code': 'FERN-07', 'make.date': '2026-10-18', 'make.customer': 'Ms Åberg', 'cord.lot': 'B 12', 'pot.length': '60 cm' }
  const document = documentOf(patch)
  const sheet = sheetOf(document)

  it('lists every answer as it was typed, and marks what was assumed and what has no bearing', () => {
    const { rows } = tableOf(sheet, 'What was said')
    const row = (head: string): readonly string[] | undefined => rows.find((r) => r.head === head)?.cells
    expect(row('Weight of the cord per metre')).toEqual(['4.8 g/m', 'as typed'])
    expect(row('Length of the trough')).toEqual(['60 cm', 'as typed; no bearing here'])
    expect(row('What the legs hang from')?.[1]).toMatch(/^assumed: /)
    expect(rows.length).toBeGreaterThanOrEqual(Object.keys(patch).length)
  })

  it('tells every part in the situation that decides, with its factors', () => {
    const { rows } = tableOf(sheet, 'Part by part')
    const legs = rows.find(({ head }) => head.startsWith('Legs'))
    expect(legs?.cells.at(-1)).toMatch(/1\.4 effective strands.*reserve, as a factor; overall factor/)
    expect(rows.map(({ head }) => head.split(':')[0])).toEqual(expect.arrayContaining(['Fixing in the building', 'Hook', 'Ring', 'Seat of the pot', 'Grip of the gathering knot']))
  })

  it('has the sum of the part that decides, the cord plan with its own, and how the ring bends', () => {
    expect(tableOf(sheet, 'The sum of the part that decides').rows.map(({ cells }) => cells[0])).toEqual(expect.arrayContaining(['E', 'R', 'A', 'u']))
    expect(tableOf(sheet, 'Cord plan').rows.map(({ head, cells }) => [head, cells[0]])).toEqual([['Filler cords', '4'], ['Working cords', '4'], ['Wrapping cord', '1']])
    expect(tableOf(sheet, 'Working cords').rows.map(({ head }) => head)).toEqual(expect.arrayContaining(['knotted', 'fringe', 'to trim']))
    expect(textOf(sheet)).toContain('not known: answer “Price of a whole roll”')
    expect(blocksOf(sheet).filter(({ kind }) => kind === 'diagram')).toHaveLength(1)
  })

  it('keeps the record: made, lot, for whom, tag, how it was sold, and what was found since', () => {
    const frozen = freezeAsSold(document, '2026-11-02')
    if (!frozen.ok) throw new Error(frozen.reason)
    const looked = sheetOf(withInspections(frozen.document, [{ typed: { date: '2027-05-01', what: 'strandGone', leg: '2', note: 'chafed' }, extra: {} }]))
    const text = textOf(looked)
    for (const part of ['18 October 2026', 'B 12', 'Ms Åberg', 'FERN-07', 'on 2 November 2026']) expect(text).toContain(part)
    expect(tableOf(looked, 'Looked at').rows).toEqual([{ head: '1 May 2027', cells: ['strand counted as gone', '2', '–', 'chafed'] }])
    expect(text).toContain('One strand of leg 2 is counted as gone')
  })

  it('tells no weight where none may be told, and is no draft', () => {
    expect(sheet.draft).toBeNull()
    expect(textOf(sheet)).toContain('No weight may be told')
  })
})

it.each(DEMOS.map(({ file, text }) => [file, text] as const))('of %s has no hole in it', (_, text) => {
  const parsed = parseDocument(text)
  if (!parsed.ok) throw new Error('unread')
  const sheet = sheetOf(parsed.document)
  for (const block of blocksOf(sheet)) {
    if (block.kind === 'table') for (const { head, cells } of block.rows) expect([head, ...cells].every((cell) => cell !== '') && cells.length === block.columns.length - 1, `${block.caption}: ${head}`).toBe(true)
    if (block.kind === 'list') expect(block.items.every((item) => item.trim() !== '')).toBe(true)
  }
  const html = sheetHtml(sheet)
  expect(html).not.toMatch(/undefined|NaN|\[object/)
})

describe('a record sheet', () => {
  const frozen = freezeAsSold(documentOf({ ...ORDINARY, 'make.code': 'FERN-07' }), '2026-11-02')
  const sheetOfRecord = (document: HangerDocument): Sheet => recordSheet(factsOf(document), { format: 'a5', today: '2027-06-01', draft: false })

  it('sets what changed beside what was sold', () => {
    if (!frozen.ok) throw new Error(frozen.reason)
    const later = editField(editField(frozen.document, 'hook.kind', 'open'), 'cord.lot', 'B 12')
    expect(tableOf(sheetOfRecord(later), 'Changed since').rows).toEqual([
      { head: 'Roll or lot', cells: ['not said', 'B 12'] },
      { head: 'Open hook or closed eye?', cells: ['closed eye, welded or forged', 'open hook'] },
    ])
    expect(() => tableOf(sheetOfRecord(frozen.document), 'Changed since')).toThrow('no table')
  })

  it('says so where nothing is recorded', () => {
    expect(textOf(sheetOfRecord(documentOf(ORDINARY)))).toContain('Nothing is recorded yet')
  })
})
