import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import type { FieldPath, HangerDocument, Remedy } from '#core'
import { useDocument, type Changes } from './document'

/** A remedy laid over the document, and what stood in its fields before. */
export interface Tried {
  readonly remedy: Remedy
  readonly before: Changes
}

const paths = (remedy: Remedy): readonly FieldPath[] => Object.keys(remedy.patch) as FieldPath[]
const stands = (remedy: Remedy, { typed }: HangerDocument): boolean => paths(remedy).every((path) => typed[path] === remedy.patch[path])

/** Remedies tried on. One counts as tried while the document reads as it left it, so undo and redo agree with it. */
export const useTried = defineStore('tried', () => {
  const source = useDocument()
  const all = shallowRef<readonly Tried[]>([])
  watch(() => source.opened, () => { all.value = [] })

  const current = computed(() => all.value.filter(({ remedy }) => stands(remedy, source.document)))

  /** Lays the remedy over the document, as one step. */
  function tryOn(remedy: Remedy): void {
    const { typed } = source.document
    const before: Changes = Object.fromEntries(paths(remedy).map((path) => [path, typed[path] ?? null]))
    all.value = [...all.value.filter((tried) => tried.remedy.code !== remedy.code), { remedy, before }]
    source.patch(remedy.patch)
  }

  /** Puts back what stood in the remedy's fields, as one step; what was changed elsewhere stays. */
  const takeBack = (tried: Tried): void => source.patch(tried.before)

  return { current, tryOn, takeBack }
})
