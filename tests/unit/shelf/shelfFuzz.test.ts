import { describe, expect, it } from 'vitest'
import { importShelf, readShelf, refusedEntryText, shelfFacts, shelfFileText, writeShelf } from '#core'
import { manyCases } from '../quantity/manyCases'
import { oneOf, seededRandom, wholeBetween } from '../quantity/seededRandom'
import { ENTRIES } from './entries'

const KEYS = ['kind', 'name', 'date', 'note', 'cord', 'pot', 'mix', 'hook', 'ring', 'pullTests', 'diameter', 'rim', 'kind', 'load', '__proto__', 'constructor', '7', 'format', 'version', 'entries', 'é']
const SCALARS: readonly unknown[] = ['cord', 'pot', 'mix', 'Roll B12', '', ' ', '3 mm', '31 lb', 'coir', '80 %', '2026-02-30', 'strandwise-shelf', 'strandwise-hanger', 0, 1, 2, -0.5, 1e300, true, null, '🌵', '\ud800', 'x'.repeat(300)]

type Random = () => number
function anyValue(random: Random, depth: number): unknown {
  if (depth === 0 || random() < 0.5) return oneOf(random, SCALARS)
  const size = wholeBetween(random, 0, 4)
  if (random() < 0.3) return Array.from({ length: size }, () => anyValue(random, depth - 1))
  return Object.fromEntries(Array.from({ length: size }, () => [oneOf(random, KEYS), anyValue(random, depth - 1)]))
}

/** A good value with one place somewhere in it replaced, removed or added. */
function bent(random: Random, value: unknown, depth: number): unknown {
  if (depth === 0 || typeof value !== 'object' || value === null || random() < 0.25) return anyValue(random, 2)
  const keys = Object.keys(value)
  const key = keys.length === 0 || random() < 0.2 ? oneOf(random, KEYS) : oneOf(random, keys)
  if (Array.isArray(value)) return value.map((item: unknown, i) => (String(i) === key ? bent(random, item, depth - 1) : item))
  const inner = (value as Record<string, unknown>)[key]
  const others = Object.entries(value).filter(([other]) => other !== key)
  return Object.fromEntries(random() < 0.15 ? others : [...others, [key, bent(random, inner, depth - 1)]])
}

function anyText(random: Random, good: string): string {
  const way = random()
  if (way < 0.15) return JSON.stringify(anyValue(random, 4))
  if (way < 0.3) return good.slice(0, wholeBetween(random, 0, good.length)) + oneOf(random, ['', '{', '"', ']', '\0', '\ufeff'])
  const file = JSON.parse(good) as { entries: unknown[] }
  if (random() < 0.3) file.entries.push(structuredClone(oneOf(random, file.entries)))
  if (random() < 0.3) return JSON.stringify(bent(random, file, 6))
  for (let times = wholeBetween(random, 1, 3); times > 0; times--) {
    const at = wholeBetween(random, 0, file.entries.length - 1)
    file.entries[at] = bent(random, file.entries[at], 5)
  }
  return JSON.stringify(file)
}

describe('whatever is offered as a shelf', () => {
  it('is read or refused in sentences, and what came in is written and read back byte for byte', () => {
    const random = seededRandom(71)
    const good = writeShelf({ entries: ENTRIES, extra: {} })
    const seen = new Set<string>()
    for (let i = 0; i < manyCases(500); i++) {
      const text = anyText(random, good)
      const outcome = readShelf(text)
      if (!outcome.ok) {
        seen.add(outcome.problem.code)
        expect(shelfFileText(outcome.problem), text).toMatch(/^This .+\.$/s)
        continue
      }
      const { shelf, added, skipped, refused } = outcome
      const { entries } = JSON.parse(text) as { entries: readonly unknown[] }
      expect(added.length + skipped.length + refused.length, text).toBe(entries.length)
      for (const entry of refused) {
        for (const { code } of entry.why) seen.add(code)
        expect(refusedEntryText(entry), text).toMatch(/^Entry \d+.+\.$/s)
      }
      for (const entry of shelf.entries) expect(shelfFacts(entry)).not.toMatch(/undefined|null|^$/)
      const written = writeShelf(shelf)
      const again = readShelf(written)
      expect(again.ok && [again.refused, again.skipped], text).toEqual([[], []])
      expect(again.ok && writeShelf(again.shelf), text).toBe(written)
      const twice = importShelf(shelf, written)
      expect(twice.ok && [twice.added, twice.refused, twice.shelf.entries], text).toEqual([[], [], shelf.entries])
    }
    // What is bent must reach every outcome, or the test proves less than it says.
    expect([...seen].sort()).toEqual(['BAD_HEADING', 'BAD_VALUE', 'BAD_VERSION', 'HANGER_FILE', 'NAME_TAKEN', 'NEWER_VERSION', 'NOTHING_IN_IT', 'NOT_AN_ENTRY', 'NOT_A_GROUP', 'NOT_A_LOG', 'NOT_A_SHELF', 'NOT_JSON', 'NOT_TEXT', 'NO_LIST', 'NO_NAME', 'UNKNOWN_KIND'])
  })
})
