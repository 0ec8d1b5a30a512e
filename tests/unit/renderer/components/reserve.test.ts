import { mount } from '@vue/test-utils'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import CautionList from '../../../../renderer/components/CautionList.vue'
import VerdictBand from '../../../../renderer/components/VerdictBand.vue'
import { useDocument } from '../../../../renderer/stores/document'
import { useResult } from '../../../../renderer/stores/result'
import { demoDocument } from '../hangers'
import { settled, startPage } from '../page'

beforeEach(startPage)
afterEach(() => { vi.unstubAllGlobals() })

describe('a reserve of the maker’s own', () => {
  it('is said with its reason beside the verdict, and not among what gives way', async () => {
    const source = useDocument()
    source.load(demoDocument('fern-over-the-sideboard'))
    const band = mount(VerdictBand)
    await settled()
    expect(band.text()).not.toContain('reserve')
    source.patch({ 'reserve.own': '2.6', 'reserve.reason': 'a shop window, taken down each evening' })
    await settled()
    expect(band.text()).toContain('The reserve is 2.6 instead of the usual 2.')
    expect(band.text()).toContain('a shop window, taken down each evening')
    const { check } = useResult()
    if (check === null) throw new Error('no check')
    expect(mount(CautionList, { props: { check } }).text()).not.toContain('reserve is 2.6')
  })

  it('without a reason is said not to count', async () => {
    const source = useDocument()
    source.load(demoDocument('fern-over-the-sideboard'))
    source.edit('reserve.own', '2.6')
    const band = mount(VerdictBand)
    await settled()
    expect(band.text()).toContain('A reserve of 2.6 was given without a reason')
  })
})
