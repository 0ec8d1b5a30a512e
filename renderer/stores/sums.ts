import { defineStore } from 'pinia'
import { shallowRef } from 'vue'
import { fieldOf, readField, type FieldPath } from '#core'
import { workOut } from '../arithmetic/workOut'
import { useDocument } from './document'

/** A sum that was worked out: what was typed in a field, and what it came to. */
export interface WorkedSum {
  readonly path: FieldPath
  readonly typed: string
  readonly result: string
}

/** Sums typed where a quantity is asked: worked out when the field is left, and told beside it. */
export const useSums = defineStore('sums', () => {
  const source = useDocument()
  const last = shallowRef<WorkedSum | null>(null)

  /** Puts what a sum comes to in the place of the sum; nothing else is touched, nor a text that changed meanwhile. */
  async function settle(path: FieldPath): Promise<void> {
    const field = fieldOf(path)
    const typed = source.document.typed[path]
    if (typed === undefined || !('kind' in field) || readField(path, typed).ok) return
    const result = await workOut(typed, field.kind)
    if (result === null || source.document.typed[path] !== typed) return
    // A step of its own, so that undo brings the sum back.
    source.patch({ [path]: result })
    last.value = { path, typed, result }
  }

  /** The sum behind a field’s text, while that text stands. */
  const behind = (path: FieldPath): string | null =>
    (last.value?.path === path && source.document.typed[path] === last.value.result ? `${last.value.typed} = ${last.value.result}` : null)

  return { settle, behind }
})
