import { computed, inject, type ComputedRef } from 'vue'
import { MARKED } from '../inGuide'

/** The number a measure has on the drawing shown, or null where it is not asked there; and whether the tape lies at it. */
export function useMark(mark: () => string): { readonly number: ComputedRef<number | null>, readonly chosen: ComputedRef<boolean> } {
  const marked = inject(MARKED, null)
  return {
    number: computed(() => marked?.value.numbers.get(mark()) ?? null),
    chosen: computed(() => marked?.value.at === mark()),
  }
}
