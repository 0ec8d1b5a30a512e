import { mount } from '@vue/test-utils'
import { expect, test } from 'vitest'
import ChartTable from '../../../../renderer/components/ChartTable.vue'
import PartsLadder from '../../../../renderer/drawing/PartsLadder.vue'
import { rungGroups } from '../../../../renderer/drawing/rungs'
import { linkName } from '#core'
import { checkOf, ORDINARY } from '../../hanger/hangerOf'

test('the numbers of a chart stand in a table that can be opened, each row by its name', () => {
  const page = mount(ChartTable, { props: { caption: 'Pulls', columns: ['Leg', 'Pull', ''], rows: [['1', '2 kg', 'most'], ['2', '1 kg', '']] } })
  expect(page.get('summary').text()).toContain('Pulls')
  expect(page.findAll('thead th').map((cell) => cell.text())).toEqual(['Leg', 'Pull'])
  expect(page.findAll('tbody tr').map((row) => row.findAll('th, td').map((cell) => cell.text()))).toEqual([['1', '2 kg', 'most'], ['2', '1 kg', '']])
  expect(page.findAll('tbody th[scope=row]')).toHaveLength(2)
})

test('nothing stands where a chart has no numbers', () => {
  expect(mount(ChartTable, { props: { caption: 'Pulls', columns: ['Leg'], rows: [] } }).find('details').exists()).toBe(false)
})

test('the ladder’s table has a row for each part with its verdict', () => {
  const check = checkOf(ORDINARY)
  const page = mount(PartsLadder, { props: { check, selected: null, stale: false } })
  const rows = page.findAll('.numbers tbody tr').map((row) => row.findAll('th, td').map((cell) => cell.text()))
  const rungs = rungGroups(check).flatMap(({ rungs: all }) => all)
  expect(rows.map((row) => [row[0], row.at(-1)])).toEqual(rungs.map(({ worst }) => [linkName(worst.link, worst.tier), worst.verdict]))
})
