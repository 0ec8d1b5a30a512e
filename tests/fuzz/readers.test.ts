import { expect, test } from 'vitest'
import { DEMOS } from '../../src/hanger/demos'
import { parseDocument } from '../../src/hanger/parse'
import { resolveDocument } from '../../src/hanger/resolve'
import { CHECKED, SEED, tell, TRIES } from './asked'
import { chanceOf } from './chance'
import { harmOf, newTally } from './hostile'
import { oddNumbers } from './wholesome'

test('hostile files do no harm: no crash, no number that is none, nothing on a prototype, nothing lost in writing', () => {
  const chance = chanceOf(SEED)
  const tally = newTally()
  for (let i = 0; i < TRIES; i++) expect(harmOf(chance, tally, i % CHECKED === 0)).toBeNull()
  tell(tally)
  // The mutations must reach every stage, or nothing was tried.
  expect(tally.read).toBeGreaterThan(TRIES / 4)
  expect(tally.resolved).toBeGreaterThan(TRIES / 20)
  expect(tally.checked).toBeGreaterThan(10)
})

test('odd numbers would be found', () => {
  expect(oddNumbers({ a: [{ b: NaN }], c: new Map([['d', Infinity]]), e: 1 })).toEqual(['.a.0.b = NaN', '.c.0.1 = Infinity'])
})

test.each([1e3, 1e5])('an answer of %i digits is refused or read in no time', (digits) => {
  const [demo] = DEMOS
  for (const text of [`${'9'.repeat(digits)} mm`, `0.${'3'.repeat(digits)} mm`, `${'1/'.repeat(digits / 2)}1 in`, `${'('.repeat(digits)}1`, ' '.repeat(digits), `1e${'9'.repeat(digits)} m`]) {
    const file = JSON.parse(demo?.text ?? '{}') as { pot: Record<string, unknown> }
    file.pot['rim'] = text
    const start = performance.now()
    const parsed = parseDocument(JSON.stringify(file))
    expect(parsed.ok && resolveDocument(parsed.document).ok).toBe(false)
    expect(performance.now() - start).toBeLessThan(2000)
  }
})
