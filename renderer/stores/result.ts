import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import { assess, resolveDocument, solve, type AnswerProblem, type CheckResult, type FieldPath, type FieldProblem, type Solved } from '#core'
import { useAdvice } from './advice'
import { useDocument } from './document'

/** A result, and the count of the hanger it belongs to. */
interface Of<T> {
  readonly opened: number
  readonly value: T
}

/**
 * The check of the document: read, solved, assessed, at most once a frame. While an answer cannot be
 * read the last good check of the same hanger stays, marked stale. With no pot yet the check shown is
 * the worker's, with the heaviest pot the hanger may carry.
 */
export const useResult = defineStore('result', () => {
  const source = useDocument()
  const advice = useAdvice()
  const seen = shallowRef({ document: source.document, opened: source.opened })
  let frame: number | null = null

  watch(() => [source.document, source.opened] as const, () => {
    frame ??= requestAnimationFrame(() => {
      frame = null
      seen.value = { document: source.document, opened: source.opened }
    })
  }, { flush: 'sync' })

  const outcome = computed(() => resolveDocument(seen.value.document))
  const solved = computed<Of<Solved> | null>((last) => {
    const { opened } = seen.value
    if (outcome.value.ok) return { opened, value: solve(outcome.value.hanger) }
    return last?.opened === opened ? last : null
  })
  const assessed = computed(() => (solved.value === null ? null : assess(solved.value.value)))
  const withoutPot = computed(() => assessed.value?.solved.hanger.answers['pot.have'] === 'no')
  const check = computed<CheckResult | null>(() => (withoutPot.value ? advice.answer?.loaded ?? assessed.value : assessed.value))

  const problems = computed<readonly AnswerProblem[]>(() => (outcome.value.ok ? [] : outcome.value.problems))
  const problemsByPath = computed<ReadonlyMap<FieldPath, FieldProblem>>(() => new Map(problems.value.flatMap((problem) => ('path' in problem ? [[problem.path, problem]] : []))))
  const unreadable = computed(() => problems.value.length > 0)
  /** Whether the check shown is not that of the document as it stands. */
  const stale = computed(() => unreadable.value || (withoutPot.value && !advice.isFresh))

  return { check, problems, problemsByPath, unreadable, stale }
})
