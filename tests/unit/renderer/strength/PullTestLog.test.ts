import { disableAutoUnmount, enableAutoUnmount, mount, type DOMWrapper } from '@vue/test-utils'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { forceText, pullTestSummary, type PullTestColumn } from '#core'
import LinkCard from '../../../../renderer/components/LinkCard.vue'
import PullTestsEntry from '../../../../renderer/strength/PullTestsEntry.vue'
import { useDocument } from '../../../../renderer/stores/document'
import { useResult } from '../../../../renderer/stores/result'
import { useView } from '../../../../renderer/stores/view'
import { demoDocument } from '../hangers'
import { settled, startPage } from '../page'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)
beforeEach(startPage)
afterEach(() => { vi.unstubAllGlobals() })

/** The legs' card of a demo, kept up to date with its document as the page keeps it. */
function show() {
  const source = useDocument()
  source.load(demoDocument('fern-over-the-sideboard'))
  const result = useResult()
  const card = mount({
    components: { LinkCard },
    setup: () => ({ result }),
    template: '<LinkCard v-if="result.check" :check="result.check" part="leg" :stale="result.stale" />',
  }, { attachTo: document.body })
  const log = () => card.get('section[aria-label="Your own pull tests"]')
  const rows = (): readonly DOMWrapper<Element>[] => log().findAll('fieldset')
  const cell = (row: number, column: PullTestColumn) => log().get(`[data-row="${row}"] .${column}`)
  async function write(row: number, column: PullTestColumn, text: string): Promise<void> {
    await cell(row, column).get('input, select').setValue(text)
    await settled()
  }
  return { source, result, card, log, rows, cell, write }
}

describe('the log of pull tests', () => {
  it('ends in an empty test to write in, which becomes one once something stands in it', async () => {
    const { source, rows, write } = show()
    expect(rows().map((row) => row.attributes('aria-label'))).toEqual(['Another pull test'])
    await write(0, 'load', '18 kg')
    await write(0, 'how', 'tied')
    expect(source.document.pullTests.map(({ typed }) => typed)).toEqual([{ load: '18 kg', how: 'tied' }])
    expect(rows().map((row) => row.attributes('aria-label'))).toEqual(['Pull test 1', 'Another pull test'])
  })

  it('keeps what cannot be read, and says beside it what is wrong', async () => {
    const { log, cell, write } = show()
    await write(0, 'load', '18 kg')
    await write(0, 'time', '12')
    const input = cell(0, 'time').get('input')
    expect(input.element.value).toBe('12')
    expect(input.attributes('aria-invalid')).toBe('true')
    expect(cell(0, 'load').get('input').attributes('aria-invalid')).toBe('false')
    const sentence = log().get(`[id="${input.attributes('aria-describedby') ?? ''}"]`).text()
    expect(sentence).toMatch(/^Pull test 1, time to break: given “12”, but the unit is missing.*0\.1 seconds to 1 year/)
    await write(0, 'time', '12 s')
    expect(log().find('.problem').exists()).toBe(false)
  })

  it('takes a test out, goes on with the one that moved up, and undo brings it back', async () => {
    const { source, rows, cell, write } = show()
    for (const [row, load] of ['18 kg', '21 kg', '30 lb'].entries()) await write(row, 'load', load)
    await rows()[1]?.get('button').trigger('click')
    await settled()
    expect(source.document.pullTests.map(({ typed }) => typed.load)).toEqual(['18 kg', '30 lb'])
    expect(document.activeElement).toBe(cell(1, 'load').get('input').element)
    source.undo()
    await settled()
    expect(source.document.pullTests.map(({ typed }) => typed.load)).toEqual(['18 kg', '21 kg', '30 lb'])
  })

  it('tells each set apart, with what counts of it as the core reckons it, and marks an outlier', async () => {
    const { result, log, write } = show()
    for (const [row, load] of ['18 kg', '18.4 kg', '18.2 kg', '17.9 kg', '8 kg'].entries()) await write(row, 'load', load)
    await write(5, 'load', '150 N')
    await write(5, 'state', 'soaked')
    const hanger = result.check?.solved.hanger
    if (hanger === undefined) throw new Error('no check')
    const { sets } = pullTestSummary(hanger.pullTests, 'cotton')
    expect(log().findAll('.set h4').map((title) => title.text())).toEqual(['Straight, dry: 5 tests', 'Straight, soaked: 1 test'])
    expect(log().findAll('.set .counts').map((line) => line.text())).toEqual(sets.map(({ characteristic }) => `Of these ${forceText(characteristic)} counts: 19 of 20 strands bear more.`))
    expect(log().get('.warning').text()).toContain('Pull test 5 lies far from the others')
    expect(log().findAll('.plot')[0]?.findAll('path.dot')).toHaveLength(1)
    expect(log().findAll('.plot')[0]?.findAll('circle.dot')).toHaveLength(4)
  })
})

describe('the way to the log from the form', () => {
  it('says how many tests there are and goes to them', async () => {
    const { source, log } = show()
    source.editPullTest(0, 'load', '18 kg')
    const entry = mount(PullTestsEntry)
    expect(entry.get('button').text()).toBe('Pull tests (1)')
    await entry.get('button').trigger('click')
    await settled()
    expect(useView().selected).toBe('leg')
    expect(document.activeElement).toBe(log().element)
  })

  it('is the log itself where a file opened cannot be checked for it', async () => {
    const source = useDocument()
    const hanger = demoDocument('fern-over-the-sideboard')
    source.load({ ...hanger, pullTests: [{ typed: { load: 'much' }, extra: {} }] })
    const entry = mount(PullTestsEntry)
    expect(entry.get('.problem').text()).toContain('“much”')
    await entry.get('[data-row="0"] .load input').setValue('12 kg')
    expect(source.document.pullTests[0]?.typed.load).toBe('12 kg')
  })
})
