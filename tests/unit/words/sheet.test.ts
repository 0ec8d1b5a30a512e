import { describe, expect, it } from 'vitest'
import { onPaper } from '../../../src/words/onPaper'
import { dayText } from '../../../src/words/care'
import { massText } from '../../../src/words/amounts'
import { shortened } from '../../../src/words/sizeChart'
import { massFigure, potWidthText, potWidthUpToText, toldMass, waterText } from '../../../src/words/sheetAmounts'
import { lookMonthsText, lookOftenText, replaceByText } from '../../../src/words/sheetCare'
import { sheetNoticeText } from '../../../src/words/sheetNotices'
import { USUAL_HABITS, writeBy, writingHabits } from '../../../src/words/writing'

const looked = (every: number) => ({ first: 1, every, reasons: [] })

describe('amounts on a sheet', () => {
  it('are never rounded up where they are a limit', () => {
    for (let mass = 0.1; mass < 40; mass += 0.137) {
      const [, kg, lb] = /^([\d.]+) kg \/ ([\d.]+) lb$/.exec(massFigure(mass)) ?? []
      expect(Number(kg)).toBeLessThanOrEqual(mass + 1e-9)
      expect(Number(lb) * 0.45359237).toBeLessThanOrEqual(mass + 1e-9)
      expect(Number(kg)).toBeGreaterThan(mass - 0.1001)
      const [, litres, quarts] = /^([\d.]+) litres? \(([\d.]+) quarts?\)$/.exec(waterText(mass)) ?? []
      expect(Number(litres)).toBeLessThanOrEqual(mass + 1e-9)
      expect(Number(quarts) * 0.946352946).toBeLessThanOrEqual(mass + 1e-9)
    }
  })

  it('are those of a test hang that was done with what they say, in kilograms or in pounds', () => {
    const pounds = 29.7 * 0.45359237
    expect([toldMass(13.5125, 13.5), toldMass(13.5125, pounds), toldMass(13.5125, 13.4), toldMass(13.5125, 20), toldMass(13.5125, null)]).toEqual([13.5, pounds, 13.5125, 13.5125, 13.5125])
    expect(massFigure(toldMass(13.5125, pounds))).toBe('13.4 kg / 29.7 lb')
  })

  it('tell one litre as one', () => {
    expect(waterText(1.04)).toBe('1 litre (1 quart)')
  })

  it('tell small amounts of water to a tenth, so that both units are about the same', () => {
    expect(waterText(2.5)).toBe('2.5 litres (2.6 quarts)')
  })

  it('tell widths in half inches that lie within them', () => {
    expect(potWidthText({ from: 0.1, to: 0.16 })).toBe('10 to 16 cm (4 to 6 in)')
    expect(potWidthText({ from: 0.2, to: 0.2 })).toBe('20 cm (7 7/8 in)')
    expect(potWidthUpToText(0.24)).toBe('up to 24 cm (9 in)')
  })
})

describe('when to look', () => {
  it('names months from the day of the sheet on, over the turn of the year', () => {
    expect(lookMonthsText(looked(6), '2026-08-31')).toContain('every February and August')
    expect(lookMonthsText(looked(3), '2026-11-26')).toContain('every February, May, August and November')
    expect(lookMonthsText(looked(1), '2026-11-26')).toContain('every month')
    expect(lookMonthsText(looked(12), '2026-11-26')).toContain('every November')
    expect(lookMonthsText(looked(5), '2026-11-26')).toContain('every 5 months')
  })

  it('is short on a tag', () => {
    expect([6, 1, 3].map((every) => lookOftenText(looked(every)))).toEqual(['Look at it twice a year', 'Look at it every month', 'Look at it every 3 months'])
  })

  it('promises no day where none can be promised', () => {
    const care = { life: 1, reasons: [], inspect: looked(6) }
    expect(replaceByText({ ...care, replaceAfter: null, replaceBy: null })).toMatch(/cannot be promised/)
    expect(replaceByText({ ...care, replaceAfter: 31557600, replaceBy: '2027-10-18' })).toBe('Replace it by 18 October 2027.')
  })
})

describe('on paper', () => {
  it('both units and months by name are written, whatever the reader’s habits, which then stand as before', () => {
    const habits = { units: 'imperial', decimalMark: ',', dayOrder: 'yearFirst' } as const
    writeBy(habits)
    try {
      expect(onPaper(() => `${massText(5.5)} ${dayText('2026-11-26')}`)).toBe('5,5 kg (12,1 lb) 26 November 2026')
      expect(() => onPaper(() => { throw new Error('no paper') })).toThrow('no paper')
      expect(writingHabits()).toBe(habits)
    } finally {
      writeBy(USUAL_HABITS)
    }
  })
})

it('a sheet that withholds its weight says so to the maker', () => {
  expect(sheetNoticeText({ code: 'FAILS' })).toMatch(/tells no weight/)
  expect(sheetNoticeText({ code: 'NOT_KNOWN' })).toMatch(/tells no weight/)
})

it('a long name keeps its tag code where it must be short', () => {
  expect(shortened(`${'long '.repeat(20)}(A7)`)).toBe(`${'long '.repeat(8)}lo… (A7)`)
})
