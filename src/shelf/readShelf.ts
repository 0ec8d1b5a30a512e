import { FORMAT as HANGER_FORMAT } from '../hanger/schema'
import { isRecord, shown } from './json'
import type { RefusedEntry, ShelfFileProblem } from './problem'
import { readEntry } from './readEntry'
import { EMPTY_SHELF, type Shelf, type ShelfEntry } from './shelf'
import { clash, nameKey } from './shelfChanges'
import { SHELF_FORMAT, SHELF_VERSION } from './shelfSchema'

export type ImportOutcome =
  | {
    readonly ok: true
    readonly shelf: Shelf
    readonly added: readonly ShelfEntry[]
    /** Those that were there already, the very same. */
    readonly skipped: readonly ShelfEntry[]
    readonly refused: readonly RefusedEntry[]
  }
  | { readonly ok: false; readonly problem: ShelfFileProblem }

const KNOWN_TOP = new Set(['format', 'version', 'entries'])

type ParsedFile = { readonly ok: true; readonly file: Record<string, unknown>; readonly entries: readonly unknown[] } | { readonly ok: false; readonly problem: ShelfFileProblem }

function parseFile(text: string): ParsedFile {
  const refuse = (problem: ShelfFileProblem): ParsedFile => ({ ok: false, problem })
  let file: unknown
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refuse({ code: 'NOT_JSON', detail: error instanceof Error ? error.message : 'unreadable' })
  }
  if (!isRecord(file)) return refuse({ code: 'NOT_A_SHELF', found: shown(file) })
  const { format, version, entries } = file
  if (format === HANGER_FORMAT) return refuse({ code: 'HANGER_FILE' })
  if (format !== SHELF_FORMAT) return refuse({ code: 'NOT_A_SHELF', found: shown(format) })
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return refuse({ code: 'BAD_VERSION', found: shown(version) })
  if (version > SHELF_VERSION) return refuse({ code: 'NEWER_VERSION', version })
  return Array.isArray(entries) ? { ok: true, file, entries } : refuse({ code: 'NO_LIST', found: shown(entries) })
}

/**
 * The shelf with the entries of a shelf file added, each for itself: those that cannot be read, or
 * whose name another of their kind has, are refused with the reasons; those that are there already are
 * skipped. Nothing on the shelf is changed.
 */
export function importShelf(shelf: Shelf, text: string): ImportOutcome {
  const parsed = parseFile(text)
  if (!parsed.ok) return parsed
  const unknown = Object.entries(parsed.file).filter(([key]) => !KNOWN_TOP.has(key))
  const byName = new Map(shelf.entries.map((entry) => [nameKey(entry), entry]))
  const added: ShelfEntry[] = []
  const skipped: ShelfEntry[] = []
  const refused: RefusedEntry[] = []
  parsed.entries.forEach((json, i) => {
    const read = readEntry(json)
    if (!read.ok) {
      refused.push({ position: i + 1, kind: read.kind, name: read.name, why: read.why })
      return
    }
    const { entry } = read
    const there = byName.get(nameKey(entry))
    const problem = there === undefined ? null : clash(there, entry)
    if (problem === null) {
      byName.set(nameKey(entry), entry)
      added.push(entry)
    } else if (problem.code === 'SAME_THERE') skipped.push(entry)
    else refused.push({ position: i + 1, kind: entry.kind, name: entry.name, why: [problem] })
  })
  const now = { entries: [...shelf.entries, ...added], extra: { ...Object.fromEntries(unknown), ...shelf.extra } }
  return { ok: true, shelf: now, added, skipped, refused }
}

/**
 * Reads the text of a shelf file.
 * @example readShelf('{"format": "strandwise-hanger", "version": 1}') // { ok: false, problem: { code: 'HANGER_FILE' } }
 */
export const readShelf = (text: string): ImportOutcome => importShelf(EMPTY_SHELF, text)
