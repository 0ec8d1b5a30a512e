import { mount } from '@vue/test-utils'
import { describe, expect, it } from 'vitest'
import { careSentences } from '#core'
import CareList from '../../../../renderer/care/CareList.vue'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

describe('the care of a hanger', () => {
  it('says when to replace it with every reason, when to look at it, and at what', () => {
    const check = checkOf({ ...ORDINARY, 'make.date': '2026-03-09', 'place.life': '2 years', 'place.exposure': 'steamy' })
    const { replace, reasons, inspect } = careSentences(check.care)
    const text = mount(CareList, { props: { check } }).text()
    expect(replace).toMatch(/^Replace it by 9 March 20\d\d,/)
    expect(reasons.length).toBeGreaterThan(1)
    for (const sentence of [replace, ...reasons, inspect]) expect(text).toContain(sentence)
    expect(text).toMatch(/slack.*frayed, thinned, stained or stretched/)
  })
})
