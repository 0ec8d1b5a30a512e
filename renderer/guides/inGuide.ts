import type { ComputedRef, InjectionKey } from 'vue'

/** Whether a field stands on the page of a guide, where it offers none. */
export const IN_GUIDE: InjectionKey<true> = Symbol('in a guide')

/** What the drawing of a measure marks: the number of each field on it, and the one the tape lies at now. */
export interface Marked {
  readonly numbers: ReadonlyMap<string, number>
  readonly at: string
}
export const MARKED: InjectionKey<ComputedRef<Marked>> = Symbol('marked on the drawing')
