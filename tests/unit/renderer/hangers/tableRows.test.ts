import { describe, expect, it } from 'vitest'
import { writeDocument } from '#core'
import { hangerCard, unreadCard, type HangerCard } from '../../../../renderer/hangers/hangerCard'
import { tableCsv } from '../../../../renderer/hangers/tableCsv'
import { cellText, sorted, TABLE_COLUMNS, type TableColumn, type TableHanger } from '../../../../renderer/hangers/tableRows'
import { demoDocument } from '../hangers'

const row = (name: string, card: HangerCard | null, heaviest?: number | null): TableHanger => ({ file: { token: name, name: `${name}.strandwise`, size: 1, modified: 1 }, card, heaviest })
const fern = row('fern', hangerCard(writeDocument(demoDocument('fern-over-the-sideboard'))), 13.51)
const glazed = row('glazed', hangerCard(writeDocument(demoDocument('glazed-pot-by-the-reading-chair'))), 4.38)
const broken = row('broken', unreadCard('It cannot be read.'))
const waiting = row('waiting', null)
const order = (column: TableColumn, descending = false): readonly string[] => sorted([waiting, glazed, broken, fern], { column, descending }, 'en').map(({ file }) => file.token)

describe('the table of a folder', () => {
  it('is sorted by each column, what is not known last whichever way', () => {
    expect(order('use').slice(0, 2)).toEqual(['fern', 'glazed'])
    expect(order('use', true).slice(0, 2)).toEqual(['glazed', 'fern'])
    expect(order('verdict', true).slice(0, 2)).toEqual(['glazed', 'fern'])
    expect(order('heaviest').slice(0, 2)).toEqual(['glazed', 'fern'])
    for (const column of TABLE_COLUMNS.filter((one) => one !== 'name' && one !== 'date')) {
      expect(order(column).slice(2)).toEqual(['broken', 'waiting'])
      expect(order(column, true).slice(2)).toEqual(['broken', 'waiting'])
    }
    // By what they are called: broken, Fern …, Glazed …, waiting.
    expect(order('name')).toEqual(['broken', 'fern', 'glazed', 'waiting'])
  })

  it('says what is not known by now apart from what cannot be known', () => {
    expect([cellText(waiting, 'use'), cellText(broken, 'use'), cellText({ ...fern, heaviest: undefined }, 'heaviest'), cellText({ ...fern, heaviest: null }, 'heaviest')]).toEqual(['…', '–', '…', '–'])
    expect(cellText(fern, 'verdict')).toBe('holds')
  })

  it('is written as the command line writes it, and begins no formula', async () => {
    const named: TableHanger = { ...fern, card: fern.card === null ? null : { ...fern.card, name: '=1+1' } }
    const [header, first, second] = (await tableCsv([named, broken])).split('\n')
    expect(header).toBe('line,file,name,verdict,hanger,place,decides,situation,link,case,utilisation,dry_kg,watered_kg,flooded_kg,heaviest_kg,problems')
    expect(first).toMatch(/^1,fern\.strandwise,'=1\+1,holds,holds,holds,.*,13\.51,$/)
    expect(second).toBe('2,broken.strandwise,broken,,,,,,,,,,,,,It cannot be read.')
  })
})
