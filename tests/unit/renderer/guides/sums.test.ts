import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import MeasurePage from '../../../../renderer/guides/MeasurePage.vue'
import { dividedText, sumAt } from '../../../../renderer/guides/sums'
import { useDocument } from '../../../../renderer/stores/document'
import { useSums } from '../../../../renderer/stores/sums'
import { settled, startPage } from '../page'

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)
beforeEach(startPage)
afterEach(() => { vi.unstubAllGlobals() })

describe('a sum put in a field', () => {
  it('keeps what was typed, in brackets where it is a sum itself', () => {
    expect(dividedText(' 32 mm ', '10')).toBe('32 mm / 10')
    expect(dividedText('3/16 in', '10')).toBe('3/16 in / 10')
    expect(dividedText('30 mm + 2 mm', '10')).toBe('(30 mm + 2 mm) / 10')
  })

  it('is offered round what is round only', () => {
    expect(sumAt('pot.rim', 'taperedRound')).toBe('tapeRound')
    expect(sumAt('second.base', 'bowl')).toBe('tapeRound')
    expect(sumAt('pot.rim', 'square')).toBeNull()
    expect(sumAt('third.rim', 'trough')).toBeNull()
    expect(sumAt('stick.diameter', 'square')).toBe('tapeRound')
    expect(sumAt('cord.diameter', null)).toBe('tenTurns')
  })
})

describe('ten turns round a pencil', () => {
  async function wind(text: string) {
    const source = useDocument()
    const page = mount(MeasurePage, { props: { path: 'cord.diameter' } })
    const sum = page.get('.sum input')
    await sum.setValue(text)
    await sum.trigger('change')
    return { source, page }
  }

  it('come to the diameter, with the sum told beside it and given back by undo', async () => {
    const { source } = await wind('34 mm')
    await vi.waitFor(() => expect(source.document.typed['cord.diameter']).toBe('3.4 mm'), 30_000)
    expect(useSums().behind('cord.diameter')).toBe('34 mm / 10 = 3.4 mm')
    source.undo()
    expect(source.document.typed['cord.diameter']).toBe('34 mm / 10')
    source.undo()
    expect(source.document.typed['cord.diameter']).toBeUndefined()
  })

  it('that cannot be read stay in the field, with a sentence', async () => {
    const { source, page } = await wind('34')
    await settled()
    expect(source.document.typed['cord.diameter']).toBe('34 / 10')
    expect(page.get('.field .problem').text()).toContain('Diameter of the cord')
    expect(page.get('.field input').attributes('aria-invalid')).toBe('true')
  })

  it('change nothing while nothing is typed', async () => {
    const { source } = await wind('  ')
    expect(source.document.typed['cord.diameter']).toBeUndefined()
  })
})
