import { expect, test } from 'vitest'
import { catalogueEntries, catalogueFigure, nameEntry, searchCatalogue } from '#core'
import { catalogueGroups } from '../../../../renderer/catalogue/catalogueGroups'
import { countText } from '../../../../renderer/catalogue/countText'

const all = catalogueEntries().map(nameEntry)
const groupOf = (word: string, subject: string) => catalogueGroups(searchCatalogue(all, word)).find((group) => group.subject === subject)

test('every value stands once, in its subject, with its figure, basis and source', () => {
  const lines = catalogueGroups(all).flatMap(({ subject, things }) => things.flatMap(({ name, sourced }) => sourced.flatMap(({ source, rows }) =>
    rows.map(({ id, label, figure, basis }) => ({ subject, id, name: name === null ? label : `${name}: ${label}`, figure, basis, source })))))
  expect(lines).toHaveLength(all.length)
  const byId = new Map(lines.map((line) => [line.id, line]))
  for (const entry of all) {
    const { id, subject, name, basis, source } = entry
    expect(byId.get(id)).toEqual({ subject, id, name, figure: catalogueFigure(entry), basis, source })
  }
})

test('subjects are counted, and those with nothing found are left out', () => {
  const groups = catalogueGroups(searchCatalogue(all, 'beech'))
  expect(groups.map(({ subject }) => subject)).toContain('woods')
  expect(groups.map(({ subject }) => subject)).not.toContain('knots')
  for (const { count, things } of groups) expect(count).toBe(things.flatMap(({ sourced }) => sourced.flatMap(({ rows }) => rows)).length)
})

test('what is said of one thing stands under its name, even where others came between', () => {
  const cotton = groupOf('', 'cords')?.things.filter(({ name }) => name === 'cotton')
  expect(cotton).toHaveLength(1)
  const labels = cotton?.[0]?.sourced.flatMap(({ rows }) => rows.map(({ label }) => label))
  expect(labels).toEqual(expect.arrayContaining(['strength soaked over dry', 'stretch at break']))
})

test('values that follow each other from one source share it', () => {
  const beech = groupOf('American beech', 'woods')?.things.find(({ name }) => name === 'American beech')
  expect(beech?.sourced).toHaveLength(1)
  expect(beech?.sourced[0]?.rows.length).toBeGreaterThan(3)
})

test('a single value keeps its whole name', () => {
  const [only, ...others] = groupOf('hand-pulled', 'knots')?.things ?? []
  expect(others).toEqual([])
  expect(only?.name).toBeNull()
  expect(only?.sourced[0]?.rows[0]?.label).toBe('tension of a hand-pulled wrap of a new gathering knot')
})

test('the count says how many there are and how they are known', () => {
  const [published, memory] = [{ basis: 'published' }, { basis: 'from memory' }] as const
  expect(countText([published, memory, memory], 461)).toBe('3 of 461 values: 1 published, 2 from memory')
  expect(countText([memory, memory], 2)).toBe('2 values: 2 from memory')
  expect(countText([], 461)).toBe('0 of 461 values')
})
