import { expect, test } from 'vitest'
import { CHECKED, SEED, tell, TRIES } from './asked'
import { chanceOf } from './chance'
import { tableHarm } from './tables'

/** A table is read twice, and holds several rows. */
const TABLES = Math.ceil(TRIES / 10)

test('hostile tables do no harm: no crash, no number that is none, and the same however the bytes come', async () => {
  const chance = chanceOf(SEED)
  const tally = { tried: 0, rows: 0, read: 0, checked: 0, slowest: 0 }
  for (let i = 0; i < TABLES; i++) expect(await tableHarm(chance, tally, i % CHECKED === 0)).toBeNull()
  tell(tally)
  // The mutations must reach every stage, or nothing was tried.
  expect(tally.rows).toBeGreaterThan(TABLES)
  expect(tally.read).toBeGreaterThan(TABLES / 2)
  expect(tally.checked).toBeGreaterThan(0)
})
