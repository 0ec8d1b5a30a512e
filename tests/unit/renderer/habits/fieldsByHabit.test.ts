import { mount } from '@vue/test-utils'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { nextTick, reactive } from 'vue'
import { USUAL_HABITS, writeBy, type WritingHabits } from '#core'
import FieldText from '../../../../renderer/components/FieldText.vue'
import { patchLines } from '../../../../renderer/components/patchText'
import { formulaParts } from '../../../../renderer/components/formulaParts'
import { termText } from '../../../../renderer/components/termText'
import { useDocument } from '../../../../renderer/stores/document'
import { useSums } from '../../../../renderer/stores/sums'
import { settled, startPage } from '../page'

const habits: { -readonly [H in keyof WritingHabits]: WritingHabits[H] } = reactive({ ...USUAL_HABITS })
beforeEach(() => {
  startPage()
  writeBy(habits)
})
// The tests share the core's modules.
afterEach(() => {
  Object.assign(habits, USUAL_HABITS)
  writeBy(USUAL_HABITS)
})

it('what is assumed stands in the reader’s units and steps from there, and changes with them; what is typed does not', async () => {
  const source = useDocument()
  const page = mount(FieldText, { props: { path: 'ring.wire' }, global: { stubs: { MeasureButton: true } } })
  await settled()
  const input = page.get('input')
  expect(input.attributes('placeholder')).toBe('4 mm')
  habits.units = 'imperial'
  await nextTick()
  expect(input.attributes('placeholder')).toBe('5/32 in')
  await input.trigger('keydown', { key: 'ArrowUp' })
  expect(source.document.typed['ring.wire']).toBe('6/32 in')
  habits.units = 'metric'
  await nextTick()
  expect(input.element.value).toBe('6/32 in')
})

it('a point before three digits is told where a comma is the decimal mark', async () => {
  const source = useDocument()
  const page = mount(FieldText, { props: { path: 'make.totalLength' }, global: { stubs: { MeasureButton: true } } })
  source.edit('make.totalLength', '1.250 m')
  await settled()
  expect(page.text()).not.toContain('Read as')
  habits.decimalMark = ','
  await nextTick()
  expect(page.text()).toContain('Read as 1,25 m: a point is always the decimal mark here.')
})

it('a sum comes out with the decimal comma, so that it reads back', async () => {
  habits.decimalMark = ','
  const source = useDocument()
  source.edit('make.totalLength', '1,2 m + 5,5 cm')
  await useSums().settle('make.totalLength')
  expect(source.document.typed['make.totalLength']).toBe('1,2550 m')
})

it('a remedy tells what it would write beside the reader’s own measure', () => {
  expect(patchLines({ 'ring.wire': '6 mm' })).toEqual(['Thickness of the ring: 6 mm'])
  habits.units = 'imperial'
  expect(patchLines({ 'ring.wire': '6 mm', 'make.build': 'plain' })).toEqual(['Thickness of the ring: 15/64 in (6 mm)', 'How the legs are knotted: plain strands'])
  Object.assign(habits, { units: 'metric', decimalMark: ',' })
  expect(patchLines({ 'weighed.mass': '4.5 kg' })).toEqual(['Weighed, pot and plant together: 4,5 kg'])
})

it('worked sums have the decimal comma, and a semicolon between what a function takes', () => {
  habits.decimalMark = ','
  expect(termText(9.80665, 'm/s2')).toBe('9,807 m/s²')
  expect(formulaParts('min(m, 0.5) * 1.5').map(({ text }) => text).join('')).toBe('min(m; 0,5) × 1,5')
})
