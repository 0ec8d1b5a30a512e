import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'
import { editField, editInspectionAt, editPullTestAt, EMPTY_DOCUMENT, renameDocument, withInspections, withPullTests, type FieldPath, type HangerDocument, type InspectionColumn, type PullTestColumn } from '#core'
import { useHistory } from './history'

/** New texts of several fields at once; null takes an answer back. */
export type Changes = Readonly<Partial<Record<FieldPath, string | null>>>

/** The hanger file as typed: the one thing the page changes. Everything shown follows from it. */
export const useDocument = defineStore('document', () => {
  const history = useHistory()
  const current = shallowRef<HangerDocument>(EMPTY_DOCUMENT)
  const opened = shallowRef(0)

  function change(next: HangerDocument, key: string | null): void {
    if (next === current.value) return
    history.record(current.value, key)
    current.value = next
  }

  /** The text of one field as typed; null or blank takes the answer back. */
  const edit = (path: FieldPath, text: string | null): void => change(editField(current.value, path, text), path)

  /** Several fields at once, as one step. */
  function patch(changes: Changes): void {
    const entries = Object.entries(changes) as [FieldPath, string | null][]
    change(entries.reduce((document, [path, text]) => editField(document, path, text), current.value), null)
  }

  /** A text of the pull-test log; the row after the last is a new one. */
  const editPullTest = (row: number, column: PullTestColumn, text: string | null): void =>
    change(editPullTestAt(current.value, row, column, text), `pullTests.${row}.${column}`)

  const removePullTest = (row: number): void => change(withPullTests(current.value, current.value.pullTests.filter((_, i) => i !== row)), null)

  /** A text of the inspection log; the row after the last is a new one. */
  const editInspection = (row: number, column: InspectionColumn, text: string | null): void =>
    change(editInspectionAt(current.value, row, column, text), `inspections.${row}.${column}`)

  const removeInspection = (row: number): void => change(withInspections(current.value, current.value.inspections.filter((_, i) => i !== row)), null)

  /** The document as something made it of the present one, as one step. */
  const replace = (next: HangerDocument): void => change(next, null)

  const rename = (name: string): void => {
    if (name !== current.value.name) change(renameDocument(current.value, name), 'name')
  }

  /** Puts another hanger in place of this one; what was done to the last cannot be undone any more. */
  function load(document: HangerDocument): void {
    history.forget()
    current.value = document
    opened.value += 1
  }

  const undo = (): void => { current.value = history.undo(current.value) ?? current.value }
  const redo = (): void => { current.value = history.redo(current.value) ?? current.value }

  return {
    document: computed(() => current.value),
    /** Counts hangers put in place, so that a result of the last is not shown for this one. */
    opened: computed(() => opened.value),
    edit, patch, editPullTest, removePullTest, editInspection, removeInspection, replace, rename, load, undo, redo,
  }
})
