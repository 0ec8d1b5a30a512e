import { describe, expect, it } from 'vitest'
import { nextTick, shallowRef } from 'vue'
import type { SheetsAsker } from '../../../../renderer/sheets/askSheets'
import type { SheetOutcome } from '../../../../renderer/sheets/messages'
import { createSheets } from '../../../../renderer/sheets/sheetsStore'
import { editField, EMPTY_DOCUMENT, renameDocument } from '../../../../src/hanger/document'

const settle = (): Promise<void> => new Promise((done) => { setTimeout(done) })
const told = (problem: string): SheetOutcome => ({ ok: false, problem })

function start() {
  const document = shallowRef(renameDocument(EMPTY_DOCUMENT, 'Fern'))
  const asked: Parameters<SheetsAsker['sheet']>[0][] = []
  const answers: ((outcome: SheetOutcome | null) => void)[] = []
  const ask: SheetsAsker = {
    sheet: (question) => {
      asked.push(question)
      return new Promise((done) => { answers.push(done) })
    },
    row: async () => null, pot: async () => null,
  }
  const memory = new Map<string, string>()
  const storage = { getItem: (key: string) => memory.get(key) ?? null, setItem: (key: string, text: string) => { memory.set(key, text) } } as unknown as Storage
  const sheets = createSheets(() => document.value, ask, { storageOf: () => storage, locale: 'de-DE', today: () => '2026-11-26' })
  const answer = async (outcome: SheetOutcome | null): Promise<void> => {
    answers.shift()?.(outcome)
    await settle()
  }
  return { document, asked, sheets, answer, memory }
}

describe('the sheet of the hanger at hand', () => {
  it('is made once somebody looks, and one question is asked at a time, the last change after it', async () => {
    const { document, asked, sheets, answer } = start()
    document.value = renameDocument(document.value, 'Ferns')
    await nextTick()
    expect(asked).toHaveLength(0)
    sheets.look()
    for (const name of ['Fer', 'Fe', 'Fig']) {
      document.value = renameDocument(document.value, name)
      await nextTick()
    }
    expect(asked).toHaveLength(1)
    await answer(told('first'))
    expect([sheets.outcome.value, sheets.state.value]).toEqual([told('first'), 'asking'])
    expect(asked.map(({ source }) => ('document' in source ? source.document.name : ''))).toEqual(['Ferns', 'Fig'])
    await answer(told('second'))
    expect([sheets.outcome.value, sheets.state.value, asked.length]).toEqual([told('second'), 'done', 2])
  })

  it('is of the same edition where only kind or paper changes, of another where the hanger does', async () => {
    const { document, asked, sheets, answer } = start()
    sheets.look()
    await answer(told(''))
    sheets.chooseFormat('a5')
    await nextTick()
    await answer(told(''))
    document.value = renameDocument(document.value, 'Ivy')
    await nextTick()
    await answer(null)
    const editions = asked.map(({ source }) => ('edition' in source ? source.edition : 0))
    expect(editions).toEqual([editions[0], editions[0], (editions[0] ?? 0) + 1])
    expect(asked.map(({ options }) => options.format)).toEqual(['a4', 'a5', 'a5'])
    expect(sheets.state.value).toBe('failed')
  })

  it('keeps who makes hangers for the next one', async () => {
    const { document, sheets, memory } = start()
    sheets.look()
    document.value = editField(editField(document.value, 'make.maker', 'Ågot'), 'make.contact', 'by the harbour')
    await nextTick()
    expect(sheets.maker.value).toEqual({ maker: 'Ågot', contact: 'by the harbour' })
    expect([...memory.values()].join()).toContain('by the harbour')
  })
})
