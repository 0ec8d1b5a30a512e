import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import type { HangerDocument, Remedy } from '#core'
import { heard } from '../faults/heard'
import type { Advice, AdviceQuestion, AdviceReply } from '../workers/messages'
import { useDocument } from './document'

/** Answers that are kept for when a change is taken back, or tried again. */
const KEPT = 8
/** Time after the last edit before the worker is asked, ms. */
const QUIET = 150

/** The part of a worker that the store uses. */
export interface AdviceWorker {
  postMessage(question: AdviceQuestion): void
  onmessage: ((event: MessageEvent<AdviceReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/**
 * Advice on the document from a worker: remedies as they are found, the heaviest pot. Asked once the
 * typing has been quiet for a moment; replies to an earlier revision are dropped. What is known of an
 * earlier document stays until the new answer comes, and `isFresh` says which it is.
 */
export function createAdvice(document: () => HangerDocument, start: () => AdviceWorker) {
  const answer = shallowRef<Advice | null>(null)
  const found = shallowRef<readonly Remedy[]>([])
  const state = shallowRef<'asking' | 'done' | 'failed'>('asking')
  let revision = 0
  let present = document()
  let timer: ReturnType<typeof setTimeout> | undefined
  // By the document itself, which never changes: undo brings the very same one back.
  const known = new Map<HangerDocument, Advice | null>()

  function show(advice: Advice | null): void {
    answer.value = advice
    found.value = advice?.remedies ?? []
    state.value = 'done'
  }

  function keep(asked: HangerDocument, advice: Advice | null): void {
    known.set(asked, advice)
    const [oldest] = known.keys()
    if (known.size > KEPT && oldest !== undefined) known.delete(oldest)
  }

  const worker = start()
  worker.onmessage = ({ data: reply }) => {
    if (reply.revision !== revision) return
    if (reply.kind === 'progress') found.value = reply.remedies
    else if (reply.kind === 'failed') state.value = 'failed'
    else {
      keep(present, reply.advice)
      show(reply.advice)
    }
  }
  worker.onerror = () => { state.value = 'failed' }

  watch(document, (asked) => {
    revision += 1
    present = asked
    state.value = 'asking'
    worker.postMessage({ kind: 'cancel' })
    clearTimeout(timer)
    const kept = known.get(asked)
    if (kept !== undefined) return show(kept)
    timer = setTimeout(() => worker.postMessage({ kind: 'ask', revision, document: asked }), QUIET)
  }, { immediate: true })

  /** Another hanger is looked at: what was known of the last is of no use. */
  function forget(): void {
    answer.value = null
    found.value = []
  }

  return {
    answer: computed(() => answer.value),
    remedies: computed(() => found.value),
    isFresh: computed(() => state.value === 'done'),
    hasFailed: computed(() => state.value === 'failed'),
    forget,
  }
}

const startWorker = (): AdviceWorker => heard(new Worker(new URL('../workers/advice.worker.ts', import.meta.url), { type: 'module' }))

export const useAdvice = defineStore('advice', () => {
  const source = useDocument()
  const advice = createAdvice(() => source.document, startWorker)
  watch(() => source.opened, advice.forget)
  return advice
})
