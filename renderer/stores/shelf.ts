import { defineStore } from 'pinia'
import { computed, inject, shallowRef } from 'vue'
import {
  addEntry, EMPTY_SHELF, entryProblemText, halfReadShelfText, importShelf, importText, putOnHanger, putText, refusedEntryText, removeEntry, renameEntry, setAsideText, shelfFileText, shelfOutcomeText,
  SHELF_KIND_NAMES, SHELF_MERGED_TEXT, takeFromHanger, unreadShelfText, writeShelf, type HangerDocument, type Shelf, type ShelfDeed, type ShelfEntry, type ShelfKind,
} from '#core'
import type { FileFailure } from '../../electron/contract'
import type { Platform } from '../platform/platform'
import { texts } from '../texts/texts'
import { useDocument } from './document'
import { PLATFORM, type FileMessage } from './file'

const t = texts.shelf

/** What an import came to: the sum of it, and a sentence for each entry that did not come in. */
export interface ImportReport {
  readonly text: string
  readonly refused: readonly string[]
}

/**
 * The maker's own shelf: what is on it, and the ways between it, the hanger and its file. Every change
 * is kept at once; where that fails the shelf stays here and it is said. What cannot be read is put
 * aside before anything is written in its place.
 */
export function createShelf(platform: Platform) {
  const source = useDocument()
  const shelf = shallowRef<Shelf>(EMPTY_SHELF)
  /** What the last change can be taken back to: the shelf before it, or the hanger that got an entry. */
  const before = shallowRef<Shelf | null>(null)
  const served = shallowRef<HangerDocument | null>(null)
  const message = shallowRef<FileMessage | null>(null)
  const report = shallowRef<ImportReport | null>(null)
  /** Why what is kept could be neither read nor put aside: then nothing is written over it. */
  let stuck: FileFailure | null = null

  const say = (text: string): void => { message.value = { isProblem: false, text } }
  const complain = (text: string): void => { message.value = { isProblem: true, text } }
  const complainOf = (deed: ShelfDeed, { problem: { code, detail } }: FileFailure): void => complain(shelfOutcomeText({ code, deed, detail }))

  /** Frees the place of what cannot be read; false, and said, where that fails. */
  async function putAside(why: string): Promise<boolean> {
    const outcome = await platform.setAsideShelf()
    stuck = outcome.ok ? null : outcome
    if (!outcome.ok) complainOf('load', outcome)
    else complain(outcome.name === null ? why : setAsideText(why, outcome.name))
    return outcome.ok
  }

  /** Adds what is kept to what is here; true where the two differ now. */
  async function takeIn(): Promise<boolean> {
    const outcome = await platform.loadShelf()
    if (!outcome.ok) {
      return await putAside(unreadShelfText(outcome.problem.code, outcome.problem.detail)) && shelf.value.entries.length > 0
    }
    if (outcome.text === null) return shelf.value !== EMPTY_SHELF
    const read = importShelf(shelf.value, outcome.text)
    if (!read.ok) return await putAside(shelfFileText(read.problem)) && shelf.value.entries.length > 0
    const isMore = shelf.value.entries.length > 0
    shelf.value = read.shelf
    before.value = null // to go back there would take off what has just come
    if (read.refused.length === 0) return isMore
    return putAside(halfReadShelfText(read.refused.map(refusedEntryText)))
  }

  async function write(mayTakeIn: boolean): Promise<void> {
    if (stuck !== null) return complainOf('save', stuck)
    const outcome = await platform.saveShelf(writeShelf(shelf.value))
    if (outcome.ok) return
    if (outcome.problem.code !== 'CHANGED_ON_DISK' || !mayTakeIn) return complainOf('save', outcome)
    say(SHELF_MERGED_TEXT)
    if (await takeIn()) await write(false)
  }

  // One after the other, the first reading before all: two that overlap would take each other for somebody else.
  let turn: Promise<void> = takeIn().then((differs) => (differs ? write(false) : undefined))
  const save = (): Promise<void> => (turn = turn.then(() => write(true)))

  function change(next: Shelf): Promise<void> {
    before.value = shelf.value
    served.value = null
    shelf.value = next
    report.value = null
    return save()
  }

  /** Keeps the hanger's own; false, and said, where that cannot stand on the shelf. */
  async function keep(kind: ShelfKind, name: string, date: string, note: string): Promise<boolean> {
    const entry = takeFromHanger(source.document, kind, name, date, note)
    const outcome = addEntry(shelf.value, entry)
    if (!outcome.ok) {
      complain(outcome.problems.map(entryProblemText).join(' '))
      return false
    }
    say(t.kept(SHELF_KIND_NAMES[kind].one, entry.name))
    await change(outcome.shelf)
    return true
  }

  function use(entry: ShelfEntry): void {
    source.replace(putOnHanger(source.document, entry))
    served.value = source.document
    say(putText(entry, source.document.typed))
  }

  async function rename(index: number, name: string): Promise<boolean> {
    const outcome = renameEntry(shelf.value, index, name)
    if (!outcome.ok) {
      complain(outcome.problems.map(entryProblemText).join(' '))
      return false
    }
    say(t.renamed(outcome.shelf.entries[index]?.name ?? name))
    await change(outcome.shelf)
    return true
  }

  async function remove(index: number): Promise<void> {
    const name = shelf.value.entries[index]?.name ?? ''
    say(t.removed(name))
    await change(removeEntry(shelf.value, index))
  }

  /** Only the hanger just as it was left: later changes of it are not this panel's to take back. */
  const canTakeOff = computed(() => served.value !== null && served.value === source.document)

  /** Takes back what was done here last: an entry put on the hanger, or a change of the shelf. */
  async function undo(): Promise<void> {
    if (canTakeOff.value) {
      source.undo()
      served.value = null
      say(t.hangerAsBefore)
      return
    }
    if (before.value === null) return
    const last = before.value
    say(t.shelfAsBefore)
    await change(last)
    before.value = null
  }

  async function importFile(): Promise<void> {
    const outcome = await platform.importShelfText()
    if (!outcome.ok) return complainOf('import', outcome)
    if (outcome.imported === null) return
    await turn
    const read = importShelf(shelf.value, outcome.imported.text)
    if (!read.ok) return complain(t.ofFile(outcome.imported.name, shelfFileText(read.problem)))
    message.value = null
    if (read.added.length > 0) await change(read.shelf)
    report.value = { text: t.ofFile(outcome.imported.name, importText(read)), refused: read.refused.map(refusedEntryText) }
  }

  async function exportFile(): Promise<void> {
    const outcome = await platform.exportText(t.exportName, 'json', writeShelf(shelf.value))
    if (!outcome.ok) complainOf('export', outcome)
    else if (outcome.name !== null) say(t.written(outcome.name))
  }

  return {
    entries: computed(() => shelf.value.entries),
    canUndo: computed(() => canTakeOff.value || before.value !== null),
    message: computed(() => message.value), report: computed(() => report.value),
    keep, use, rename, remove, undo, importFile, exportFile,
    /** Resolves once all that was begun is kept, or has failed. */
    settled: () => turn,
    /** What was said has been read. */
    hush: () => { message.value = null },
    putReportAway: () => { report.value = null },
  }
}

export const useShelf = defineStore('shelf', () => {
  const platform = inject(PLATFORM)
  if (platform === undefined) throw new Error('The app was started without a platform.')
  return createShelf(platform)
})
