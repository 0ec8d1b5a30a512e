import { disableAutoUnmount, enableAutoUnmount, mount } from '@vue/test-utils'
import { afterAll, afterEach, expect, test } from 'vitest'
import { catalogueEntries, nameEntry, searchCatalogue, type Basis } from '#core'
import BasisMark from '../../../../renderer/catalogue/BasisMark.vue'
import CatalogueDialog from '../../../../renderer/catalogue/CatalogueDialog.vue'

const all = catalogueEntries().map(nameEntry)

enableAutoUnmount(afterEach)
afterAll(disableAutoUnmount)

async function openCatalogue() {
  const dialog = mount(CatalogueDialog, { attachTo: document.body })
  await (dialog.vm as unknown as { open: () => Promise<void> }).open()
  const find = (word: string) => dialog.get('input').setValue(word)
  const rows = () => dialog.findAll('.row')
  return { dialog, find, rows }
}

test('nothing is drawn until it is opened, then every value with how it is known, the field ready for a word', async () => {
  const closed = mount(CatalogueDialog)
  expect(closed.findAll('.row')).toHaveLength(0)
  const { dialog, rows } = await openCatalogue()
  expect(rows()).toHaveLength(all.length)
  expect(document.activeElement).toBe(dialog.get('input').element)
  // Every line of a value from memory says so, and no other.
  const memory = all.filter(({ basis }) => basis === 'from memory').length
  expect(memory).toBeGreaterThan(20)
  expect(rows().filter((row) => row.get('.basis').text() === 'from memory')).toHaveLength(memory)
})

test('a word narrows it, and its other names are told', async () => {
  const { dialog, find, rows } = await openCatalogue()
  await find('girth hitch')
  expect(rows()).toHaveLength(searchCatalogue(all, 'girth hitch').length)
  expect(dialog.get('[role=status]').text()).toMatch(new RegExp(`^${rows().length} of ${all.length} values: .*Searched too: .*cow hitch`))
  expect(dialog.findAll('h3').map((heading) => heading.text())).toEqual(expect.arrayContaining([expect.stringMatching(/^Knots/)]))
  await dialog.get('search button').trigger('click')
  expect(rows()).toHaveLength(all.length)
})

test('nothing found is said, with a word that is near and finds something', async () => {
  const { dialog, find, rows } = await openCatalogue()
  await find('teracota')
  expect(rows()).toHaveLength(0)
  expect(dialog.text()).toContain('The catalogue has nothing under “teracota”.')
  await dialog.get('.words button').trigger('click')
  expect(dialog.get('input').element.value).toBe('terracotta')
  expect(rows().length).toBeGreaterThan(0)

  // Where nothing is near, every word offered finds something.
  await find('zeppelin')
  const offered = dialog.findAll('.words button').map((button) => button.text())
  expect(offered.length).toBeGreaterThan(3)
  for (const word of offered) expect(searchCatalogue(all, word).length).toBeGreaterThan(0)
})

test.each(['published', 'from memory', 'common practice', 'computed', 'your own', 'told by customer'] as const satisfies readonly Basis[])('the mark of %s is its words', (basis) => {
  expect(mount(BasisMark, { props: { basis } }).text()).toBe(basis)
})
