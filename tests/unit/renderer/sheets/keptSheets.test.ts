import { describe, expect, it } from 'vitest'
import { pageSizeFor } from '../../../../electron/main/pageSize'
import { keepSheets, keptSheets } from '../../../../renderer/sheets/keptSheets'
import { usualFormat } from '../../../../src/sheet/usualFormat'

const holding = (text: string | null) => () => ({ getItem: () => text })

describe('how sheets were asked for last', () => {
  it.each([['en-US', 'letter'], ['es-MX', 'letter'], ['en', 'letter'], ['de-CH', 'a4'], ['no tag', 'a4']] as const)('is as usual in %s at first: %s', (locale, format) => {
    expect(keptSheets(holding(null), locale)).toEqual({ kind: 'customer', format, maker: '', contact: '' })
  })

  it('comes back as it was kept', () => {
    let text = ''
    const kept = { kind: 'tag', format: 'halfLetter', maker: 'Ågot', contact: 'agot@example.org' } as const
    keepSheets(() => ({ setItem: (_key, value) => { text = value } }), kept)
    expect(keptSheets(holding(text), 'de-CH')).toEqual(kept)
  })

  it.each([['{"kind":"poster","format":"a3","maker":7}'], ['[1]'], ['null'], ['{'], [`{"maker":"${'x'.repeat(201)}"}`]])('is as usual where it is no text of ours: %s', (text) => {
    expect(keptSheets(holding(text), 'fr-FR')).toEqual({ kind: 'customer', format: 'a4', maker: '', contact: '' })
  })

  it('holds where nothing can be kept', () => {
    const closed = (): never => { throw new Error('no storage') }
    expect(keptSheets(closed, 'de').format).toBe('a4')
    expect(() => keepSheets(closed, keptSheets(closed, 'de'))).not.toThrow()
  })
})

it.each([['US', 'Letter'], ['CA', 'Letter'], ['PH', 'Letter'], ['GB', 'A4'], ['DE', 'A4'], ['', 'A4']])('paper is by default that of the country, %s: %s, on sheets and for the page itself', (country, paper) => {
  expect(pageSizeFor(country)).toBe(paper)
  expect(usualFormat(country)).toBe(paper.toLowerCase())
})
