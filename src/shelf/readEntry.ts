import type { Extra } from '../hanger/extra'
import type { FieldPath } from '../hanger/fields'
import { pullTestRows } from '../hanger/parse'
import { splitPath } from '../hanger/schema'
import { checkEntry } from './checkEntry'
import { ENTRY_HEADING_NAMES } from './entryHeadings'
import { isRecord, shown } from './json'
import type { EntryProblem } from './problem'
import type { ShelfEntry } from './shelf'
import { hasPullTests, isShelfKind, SHELF_PATHS, type ShelfKind } from './shelfKinds'
import { ENTRY_SCHEMAS } from './shelfSchema'

export type ReadEntry =
  | { readonly ok: true; readonly entry: ShelfEntry }
  | { readonly ok: false; readonly kind: ShelfKind | null; readonly name: string | null; readonly why: readonly EntryProblem[] }

const own = (record: Record<string, unknown>, key: string): unknown => (Object.hasOwn(record, key) ? record[key] : undefined)
const textOf = (value: unknown): string => (typeof value === 'string' ? value : '')

/** Reads one entry of a shelf file from parsed JSON, value by value; keys it does not know are kept. */
export function readEntry(json: unknown): ReadEntry {
  if (!isRecord(json)) return { ok: false, kind: null, name: null, why: [{ code: 'NOT_AN_ENTRY', found: shown(json) }] }
  const kind = own(json, 'kind')
  const name = textOf(own(json, 'name')).trim() || null
  if (!isShelfKind(kind)) return { ok: false, kind: null, name, why: [{ code: 'UNKNOWN_KIND', found: shown(kind) }] }
  const faults = shapeProblems(json, kind)
  if (faults.length > 0) return { ok: false, kind, name, why: faults }
  const entry: ShelfEntry = {
    kind,
    name: textOf(own(json, 'name')).trim(),
    date: textOf(own(json, 'date')),
    note: textOf(own(json, 'note')),
    typed: typedTexts(json, kind),
    pullTests: hasPullTests(kind) ? pullTestRows(own(json, 'pullTests')) : [],
    extra: unknownKeys(json, kind),
  }
  const why = checkEntry(entry)
  return why.length > 0 ? { ok: false, kind, name, why } : { ok: true, entry }
}

function shapeProblems(json: Record<string, unknown>, kind: ShelfKind): readonly EntryProblem[] {
  const shape = ENTRY_SCHEMAS[kind].safeParse(json)
  if (shape.success) return []
  return shape.error.issues.map(({ path }): EntryProblem => {
    const found = shown(path.reduce<unknown>((at, key) => (Array.isArray(at) || isRecord(at) ? (at as Record<PropertyKey, unknown>)[key] : null), json))
    if (path[0] === kind && path.length < 2) return { code: 'NOT_A_GROUP', kind, found }
    if (path[0] === 'pullTests' && path.length < 3) return { code: 'NOT_A_LOG', found }
    return { code: 'NOT_TEXT', path: path.map((key) => (typeof key === 'number' ? key + 1 : key)).join('.'), found }
  })
}

function typedTexts(json: Record<string, unknown>, kind: ShelfKind): ShelfEntry['typed'] {
  const group = own(json, kind)
  const typed: Partial<Record<FieldPath, string>> = {}
  for (const path of SHELF_PATHS[kind]) {
    const text = isRecord(group) ? own(group, splitPath(path)[1]) : undefined
    if (typeof text === 'string' || typeof text === 'number') typed[path] = String(text)
  }
  return typed
}

function unknownKeys(json: Record<string, unknown>, kind: ShelfKind): Extra {
  const known = new Set<string>(['kind', ...ENTRY_HEADING_NAMES, ...(hasPullTests(kind) ? ['pullTests'] : [])])
  const inGroup = new Set(SHELF_PATHS[kind].map((path) => splitPath(path)[1]))
  return Object.fromEntries(Object.entries(json).flatMap(([key, value]): [string, unknown][] => {
    if (known.has(key)) return []
    if (key !== kind || !isRecord(value)) return [[key, value]]
    const kept = Object.entries(value).filter(([inner]) => !inGroup.has(inner))
    return kept.length === 0 ? [] : [[key, Object.fromEntries(kept)]]
  }))
}
