import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { FIELD_PATHS } from '../../../src/hanger/fields'
import { parseDocument, writeDocument } from '../../../src/hanger/parse'
import { resolveDocument } from '../../../src/hanger/resolve'
import { VERSION } from '../../../src/hanger/schema'

// A file of every version there ever was, as it was written then, and what its answers meant, in SI. A change of meaning
// needs a new version, a migration and a new pair beside these; the old ones stay as they are.

const kept = (name: string): string => join(import.meta.dirname, 'kept', name)
const VERSIONS = Array.from({ length: VERSION }, (_, i) => i + 1)

describe.each(VERSIONS)('a file of version %i', (version) => {
  const text = readFileSync(kept(`hanger-${version}.strandwise`), 'utf8')
  const meant = JSON.parse(readFileSync(kept(`hanger-${version}.answers.json`), 'utf8')) as Record<string, unknown>

  test('says what it said then', () => {
    const parsed = parseDocument(text)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const resolved = resolveDocument(parsed.document)
    if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems))
    const { answers, given, pullTests, inspections } = resolved.hanger
    const now: Record<string, unknown> = answers
    for (const [path, value] of Object.entries(meant)) {
      if (typeof value === 'number') expect(now[path], path).toBeCloseTo(value, 12)
      else expect(now[path], path).toBe(value)
    }
    expect([...given].sort()).toEqual(Object.keys(meant).sort())
    expect(pullTests).toHaveLength(2)
    expect(inspections).toHaveLength(1)
  })

  test('is written back with all that was in it, what is not known among it', () => {
    const parsed = parseDocument(text)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const then = JSON.parse(text) as object
    expect(JSON.parse(writeDocument(parsed.document))).toEqual({ ...then, version: VERSION })
  })
})

test('there is none of a version to come, and the latest answers nearly every field', () => {
  expect(existsSync(kept(`hanger-${VERSION + 1}.strandwise`))).toBe(false)
  const meant = Object.keys(JSON.parse(readFileSync(kept(`hanger-${VERSION}.answers.json`), 'utf8')) as object)
  // A field that came later is optional; with many of them the next kept file is due.
  expect(meant.length).toBeGreaterThan(0.8 * FIELD_PATHS.length)
})
