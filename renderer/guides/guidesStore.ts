import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import { useDocument } from '../stores/document'
import type { MeasuredPath } from './families'
import { STEPS, WRITES, type Step, type StepGuide } from './stepGuides'

/** What a guide shows: where a tape goes, or what to do step by step. */
export type GuidePage =
  | { readonly kind: 'measure', readonly path: MeasuredPath }
  | { readonly kind: 'steps', readonly guide: StepGuide }

/** Which guide is open, and where each was left. */
export const useGuides = defineStore('guides', () => {
  const source = useDocument()
  const page = shallowRef<GuidePage | null>(null)
  const left = shallowRef<Readonly<Partial<Record<StepGuide, Step | undefined>>>>({})
  watch(() => source.opened, () => { left.value = {} }, { flush: 'sync' })

  /** Where it was left; else where something of it is written down already, at the writing, for a test hang outlasts a day at the bench. */
  function stepOf(guide: StepGuide): Step {
    const isBegun = guide === 'pullTest' ? source.document.pullTests.length > 0 : WRITES[guide].fields.some((path) => source.document.typed[path] !== undefined)
    return left.value[guide] ?? (isBegun ? 'writing' : 'need')
  }

  const measure = (path: MeasuredPath): void => { page.value = { kind: 'measure', path } }
  const follow = (guide: StepGuide): void => { page.value = { kind: 'steps', guide } }
  const goTo = (guide: StepGuide, step: Step): void => { left.value = { ...left.value, [guide]: step } }
  function close(): void {
    const { value } = page
    page.value = null
    // Whoever read it to its end begins anew.
    if (value?.kind === 'steps' && left.value[value.guide] === STEPS.at(-1)) left.value = { ...left.value, [value.guide]: undefined }
  }

  return { page: computed(() => page.value), stepOf, measure, follow, goTo, close }
})
