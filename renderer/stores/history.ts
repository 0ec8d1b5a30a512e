import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'
import type { HangerDocument } from '#core'

/** Edits of one field that follow each other within this time are one step, ms. */
const PAUSE = 2000

/** Steps that are kept; they share all that did not change. */
const MOST_STEPS = 1000

/**
 * What can be undone: the documents before the present one and those taken back from it. Edits under
 * the same key are one step until the key changes, `endStep` is called (the field was left) or time
 * passes. `clock` in ms.
 */
export function createHistory(clock: () => number) {
  const past = shallowRef<readonly HangerDocument[]>([])
  const future = shallowRef<readonly HangerDocument[]>([])
  let step: { readonly key: string, readonly at: number } | null = null

  /** Remembers the document as it was before an edit. `key` null: a step of its own. */
  function record(before: HangerDocument, key: string | null): void {
    const at = clock()
    const joins = step !== null && step.key === key && at - step.at <= PAUSE
    if (!joins) past.value = [...past.value, before].slice(-MOST_STEPS)
    future.value = []
    step = key === null ? null : { key, at }
  }

  const endStep = (): void => { step = null }

  /** The document one step back, or null at the beginning. */
  function undo(present: HangerDocument): HangerDocument | null {
    const before = past.value.at(-1)
    if (before === undefined) return null
    past.value = past.value.slice(0, -1)
    future.value = [present, ...future.value]
    step = null
    return before
  }

  /** The document one step forth, or null at the end. */
  function redo(present: HangerDocument): HangerDocument | null {
    const [after, ...later] = future.value
    if (after === undefined) return null
    past.value = [...past.value, present]
    future.value = later
    step = null
    return after
  }

  function forget(): void {
    past.value = []
    future.value = []
    step = null
  }

  const canUndo = computed(() => past.value.length > 0)
  const canRedo = computed(() => future.value.length > 0)
  /** The document before the last step; null at the beginning. */
  const last = computed(() => past.value.at(-1) ?? null)
  return { canUndo, canRedo, last, record, endStep, undo, redo, forget }
}

export const useHistory = defineStore('history', () => createHistory(() => performance.now()))
