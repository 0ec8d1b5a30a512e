import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import type { FieldPath, FixingFound, HangerDocument, PlaceNeed } from '#core'
import { heard } from '../faults/heard'
import type { PlaceAnswer, PlaceQuestion, PlaceReply } from '../place/messages'
import { useDocument, type Changes } from './document'

/** The part of a worker that the store uses. */
export interface PlaceWorker {
  postMessage(question: PlaceQuestion): void
  onmessage: ((event: MessageEvent<PlaceReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/**
 * What the document needs of its place, from a worker started when it is first looked for, and asked again
 * while it is looked at. Replies to an earlier document are dropped; what was known stays until the new answer comes.
 */
export function createPlaceNeeds(document: () => HangerDocument, start: () => PlaceWorker) {
  const answer = shallowRef<PlaceAnswer | null>(null)
  const found = shallowRef<readonly PlaceNeed[]>([])
  const state = shallowRef<'idle' | 'asking' | 'done' | 'noWeight' | 'unread' | 'failed'>('idle')
  const looked = shallowRef(false)
  let revision = 0
  let asked: HangerDocument | null = null
  let worker: PlaceWorker | null = null

  function started(): PlaceWorker {
    const one = start()
    one.onmessage = ({ data: reply }) => {
      if (reply.revision !== revision) return
      if (reply.kind === 'placeProgress') {
        if (answer.value === null) found.value = reply.found
        return
      }
      if (reply.kind === 'placeFailed') state.value = 'failed'
      else if (reply.answer === null) state.value = 'unread'
      else if (reply.answer === 'noWeight') {
        state.value = 'noWeight'
        answer.value = null
        found.value = []
      } else {
        answer.value = reply.answer
        found.value = reply.answer.needs.needs
        state.value = 'done'
      }
    }
    one.onerror = () => { state.value = 'failed' }
    return one
  }

  function ask(): void {
    if (!looked.value || document() === asked) return
    asked = document()
    revision += 1
    state.value = 'asking'
    worker ??= started()
    worker.postMessage({ kind: 'place', revision, document: asked })
  }

  watch(document, ask)

  function look(): void {
    looked.value = true
    ask()
  }
  const leave = (): void => { looked.value = false }
  /** Another hanger is looked at: what was known of the last is of no use. */
  function forget(): void {
    answer.value = null
    found.value = []
    asked = null
    ask()
  }

  return { answer: computed(() => answer.value), needs: computed(() => found.value), state: computed(() => state.value), look, leave, forget }
}

const startWorker = (): PlaceWorker => heard(new Worker(new URL('../workers/advice.worker.ts', import.meta.url), { type: 'module' }))

export const usePlaceNeeds = defineStore('placeNeeds', () => {
  const source = useDocument()
  const place = createPlaceNeeds(() => source.document, startWorker)
  watch(() => source.opened, place.forget)

  /** A fixing laid over the document, and what stood in its fields before. */
  const tried = shallowRef<{ readonly changes: Changes, readonly before: Changes } | null>(null)
  watch(() => source.opened, () => { tried.value = null })

  const stands = ({ changes }: FixingFound): boolean => (Object.keys(changes) as FieldPath[]).every((path) => (source.document.typed[path] ?? null) === changes[path])
  const canTakeBack = (fixing: FixingFound): boolean => tried.value !== null && stands(fixing)

  /** Puts a fixing into the document, as one step. */
  function tryOn({ changes }: FixingFound): void {
    const { typed } = source.document
    tried.value = { changes, before: Object.fromEntries((Object.keys(changes) as FieldPath[]).map((path) => [path, typed[path] ?? null])) }
    source.patch(changes)
  }

  /** Puts back what stood there before, as one step. */
  function takeBack(): void {
    const last = tried.value
    tried.value = null
    if (last !== null) source.patch(last.before)
  }

  return { ...place, tryOn, takeBack, stands, canTakeBack }
})
