import { mount } from '@vue/test-utils'
import { expect, test } from 'vitest'
import { h } from 'vue'
import TextParts from '../../../../renderer/texts/TextParts.vue'

test.each([
  ['At {share}, {part} decides.', 'At half, the ring decides.'],
  ['{part} decides: {share}', 'the ring decides: half'],
])('fills each place of a sentence by its slot, in the order of the sentence: %s', (text, said) => {
  const slots = { part: () => h('button', 'the ring'), share: () => 'half' }
  const page = mount({ render: () => h('p', [h(TextParts, { text }, slots)]) })
  expect(page.get('p').element.textContent).toBe(said)
  expect(page.get('button').text()).toBe('the ring')
})
