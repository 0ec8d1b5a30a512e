import { readdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, test } from 'vitest'
import { collectEntries } from '../../../src/catalogue/collectEntries'
import { catalogueEntries } from '../../../src/catalogue/entries'

const BASES = ['published', 'common practice', 'from memory', 'computed', 'your own', 'told by customer']
const FOLDER = resolve(import.meta.dirname, '../../../src/catalogue')
/** Files that make or list values and hold none. */
const WITHOUT_VALUES = ['basis', 'collectEntries', 'entries']

/** Numbers that are no values: conversions, sizes that a row is for, and what still stands without a basis. */
const NO_VALUES = [/^duration\.(DAY|MONTH|YEAR)$/, /\.(inchD|d)iameter$/, /^potMaterials\.WALLS_AT_RIM$/, /^potMaterials\..*\.wallPerRim$/]

type Leaf = readonly [path: string, number: number]
function numbersIn(path: string, x: unknown): readonly Leaf[] {
  if (typeof x === 'number') return [[path, x]]
  if (typeof x !== 'object' || x === null) return []
  return Object.entries(x).flatMap(([key, inner]: [string, unknown]) => {
    const row = Array.isArray(x) && typeof inner === 'object' && inner !== null && 'id' in inner ? String(inner.id) : key
    return numbersIn(`${path}.${row}`, inner)
  })
}

const names = readdirSync(FOLDER).map((file) => file.replace(/\.ts$/, '')).filter((name) => !WITHOUT_VALUES.includes(name))
const leaves = new Map((await Promise.all(names.map(async (name) => numbersIn(name, await import(pathToFileURL(resolve(FOLDER, `${name}.ts`)).href))))).flat())
const entries = catalogueEntries()

/** The numbers an entry lists, by the path at which they stand in the module. */
const listed: readonly Leaf[] = entries.flatMap(({ id, figure }): readonly Leaf[] => {
  switch (figure.kind) {
    case 'single': return [[leaves.has(`${id}.value`) ? `${id}.value` : id, figure.value]]
    case 'range': return [[`${id}.low`, figure.low], [`${id}.likely`, figure.likely], [`${id}.high`, figure.high]]
    case 'curve': return figure.points.flatMap(([x, y], i): readonly Leaf[] => [[`${id}.${i}.0`, x], [`${id}.${i}.1`, y]])
  }
})

describe('the catalogue as it is listed', () => {
  test('every number in every module of the catalogue stands in it once, and nothing else does', () => {
    const values = [...leaves].filter(([path]) => !NO_VALUES.some((pattern) => pattern.test(path)))
    expect(values.length).toBeGreaterThan(300)
    const byPath = (a: Leaf, b: Leaf): number => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : 0)
    expect([...listed].sort(byPath)).toEqual(values.sort(byPath))
  })

  test.each(names)('%s keeps no value to itself', (name) => {
    expect(readFileSync(resolve(FOLDER, `${name}.ts`), 'utf8')).not.toMatch(/^const \w+: [^=]*\b(Value|Range)\b[^=]* =/m)
  })

  test('ids are unique', () => {
    expect(new Set(entries.map((e) => e.id)).size).toBe(entries.length)
  })

  test('every entry has a basis, a source and a unit', () => {
    expect(entries.filter(({ basis, source, unit }) => !BASES.includes(basis) || source.trim().length < 5 || unit === '').map((e) => e.id)).toEqual([])
  })

  test('a source quoted from memory is not called published', () => {
    expect(entries.filter(({ basis, source }) => basis === 'published' && source.includes('from memory')).map((e) => e.id)).toEqual([])
  })

  test('ranges are in order and curves rise in x', () => {
    for (const { id, figure } of entries) {
      if (figure.kind === 'range') expect([id, figure.low, figure.likely, figure.high]).toEqual([id, ...[figure.low, figure.likely, figure.high].sort((a, b) => a - b)])
      if (figure.kind === 'curve') expect([id, ...figure.points.map(([x]) => x)]).toEqual([id, ...figure.points.map(([x]) => x).sort((a, b) => a - b)])
    }
  })
})

describe('collecting', () => {
  const born = { basis: 'computed', source: 'made up' } as const

  test('values are found at any depth, rows by their id, and what has no basis is passed over', () => {
    const found = collectEntries('shelf', {
      TABLE: [{ id: 'thin', diameter: 0.003, force: { value: 41, unit: 'N', ...born } }, { force: { low: 1, likely: 2, high: 5, unit: 'N', ...born } }],
      CODES: ['a', 'b'],
      HOURS: 24,
      reckon: () => 7,
      NOTHING: null,
    })
    expect(found.map(({ id, figure, unit }) => [id, figure, unit])).toEqual([
      ['shelf.TABLE.thin.force', { kind: 'single', value: 41 }, 'N'],
      ['shelf.TABLE.1.force', { kind: 'range', low: 1, likely: 2, high: 5 }, 'N'],
    ])
  })

  test('the numbers of a formula or a curve share its basis', () => {
    const found = collectEntries('shelf', { CURVE: { points: [[1, 0.5], [Infinity, 0.9]], ...born }, FORMULA: { a: 0.3, n: 2, ...born } })
    expect(found.map(({ id, figure, basis, source }) => [id, figure, basis, source])).toEqual([
      ['shelf.CURVE.points', { kind: 'curve', points: [[1, 0.5], [Infinity, 0.9]] }, 'computed', 'made up'],
      ['shelf.FORMULA.a', { kind: 'single', value: 0.3 }, 'computed', 'made up'],
      ['shelf.FORMULA.n', { kind: 'single', value: 2 }, 'computed', 'made up'],
    ])
  })

  test('the order does not depend on that of the exports', () => {
    const one = { value: 1, unit: '1', ...born }
    expect(collectEntries('shelf', { B: one, A: one }).map((e) => e.id)).toEqual(['shelf.A', 'shelf.B'])
  })
})
