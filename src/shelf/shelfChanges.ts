import { checkEntry } from './checkEntry'
import type { EntryProblem } from './problem'
import type { Shelf, ShelfEntry } from './shelf'
import type { ShelfKind } from './shelfKinds'
import { entryJson } from './writeShelf'

export type ShelfOutcome =
  | { readonly ok: true; readonly shelf: Shelf }
  | { readonly ok: false; readonly problems: readonly EntryProblem[] }

/** The same for names that a person would take for the same thing's: capitals and blanks do not count. */
export const nameKey = ({ kind, name }: Pick<ShelfEntry, 'kind' | 'name'>): string => `${kind} ${name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase()}`

function found(shelf: Shelf, kind: ShelfKind, name: string): ShelfEntry | undefined {
  const key = nameKey({ kind, name })
  return shelf.entries.find((entry) => entry.kind === kind && nameKey(entry) === key)
}

const contentOf = (entry: ShelfEntry): string => JSON.stringify(entryJson({ ...entry, name: '' }))

/** What keeps an entry away from one that has its name. */
export const clash = (there: ShelfEntry, entry: ShelfEntry): EntryProblem =>
  ({ code: contentOf(there) === contentOf(entry) ? 'SAME_THERE' : 'NAME_TAKEN', kind: there.kind, name: there.name })

/** The shelf with one more entry at its end; nothing that is there is replaced (NAME_TAKEN, SAME_THERE, and what checkEntry finds). */
export function addEntry(shelf: Shelf, entry: ShelfEntry): ShelfOutcome {
  const problems = checkEntry(entry)
  if (problems.length > 0) return { ok: false, problems }
  const other = found(shelf, entry.kind, entry.name)
  if (other !== undefined) return { ok: false, problems: [clash(other, entry)] }
  return { ok: true, shelf: { ...shelf, entries: [...shelf.entries, { ...entry, name: entry.name.trim() }] } }
}

/** The shelf with one entry under another name. Throws RangeError where there is no such entry. */
export function renameEntry(shelf: Shelf, index: number, name: string): ShelfOutcome {
  const renamed = { ...entryAt(shelf, index), name: name.trim() }
  const problems = checkEntry(renamed)
  if (problems.length > 0) return { ok: false, problems }
  const other = found(removeEntry(shelf, index), renamed.kind, name)
  if (other !== undefined) return { ok: false, problems: [{ code: 'NAME_TAKEN', kind: other.kind, name: other.name }] }
  return { ok: true, shelf: { ...shelf, entries: shelf.entries.map((entry, i) => (i === index ? renamed : entry)) } }
}

/** The shelf without one entry. Throws RangeError where there is no such entry. */
export function removeEntry(shelf: Shelf, index: number): Shelf {
  entryAt(shelf, index)
  return { ...shelf, entries: shelf.entries.filter((_, i) => i !== index) }
}

function entryAt(shelf: Shelf, index: number): ShelfEntry {
  const entry = shelf.entries[index]
  if (entry === undefined) throw new RangeError(`The shelf has no entry ${index}.`)
  return entry
}

/** A name not yet taken by another of its kind: the one wished for, else with a number after it. */
export function freeName(shelf: Shelf, kind: ShelfKind, wished: string): string {
  const names = [wished, ...shelf.entries.map((_, i) => `${wished} ${i + 2}`)]
  return names.find((name) => found(shelf, kind, name) === undefined) ?? wished
}
