import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'
import { CHOICES, putOnHanger, resolveDocument, withChange, type Choice, type ChoiceCode, type ChoiceFound, type ChoicesAsked, type ChoosingStep, type HangerDocument, type OwnCord } from '#core'
import { startJob, type RunningJob, type StartJob } from '../jobs/startJob'
import { useDocument } from '../stores/document'
import { useShelf } from '../stores/shelf'

/** A job under way: for which choices, that is, which answers it brings anew. */
interface Running {
  readonly job: RunningJob<'chooseSizes'>
  readonly choices: readonly ChoiceCode[]
}

/** Pots that are tried for the widest; null stands for that of the hanger. */
export type RimAsked = Pick<ChoicesAsked, 'material' | 'mix'>

/**
 * What was found for a hanger, from the worker. It is of the document as it was asked about; one answer at a time is tried
 * on over that document, as one step.
 */
export function createChoosing(start: StartJob, document: () => HangerDocument, replace: (next: HangerDocument) => void, own: (document: HangerDocument) => readonly OwnCord[]) {
  const asked = shallowRef<HangerDocument | null>(null)
  const found = shallowRef<readonly Choice[]>([])
  const state = shallowRef<'idle' | 'asking' | 'done' | 'calledOff' | 'failed' | 'unread'>('idle')
  const at = shallowRef<ChoiceCode | null>(null)
  const checks = shallowRef(0)
  const rim = shallowRef<RimAsked>({ material: null, mix: null })
  const tried = shallowRef<{ readonly choice: Choice, readonly document: HangerDocument } | null>(null)
  let running: Running | null = null

  function take(steps: readonly ChoosingStep[]): void {
    const more = steps.flatMap((step) => (step.kind === 'chosen' ? [step.choice] : []))
    checks.value += steps.length - more.length
    if (more.length > 0) found.value = [...found.value, ...more]
    const last = steps.at(-1)
    if (last !== undefined) at.value = last.kind === 'tried' ? last.choice : last.choice.choice
  }

  function run(document: HangerDocument, choices: readonly ChoiceCode[]): void {
    running?.job.callOff()
    found.value = found.value.filter(({ choice }) => !choices.includes(choice))
    state.value = 'asking'
    at.value = null
    checks.value = 0
    const mine: Running = { choices, job: start('chooseSizes', { document, choices, own: own(document), ...rim.value }, take) }
    running = mine
    void mine.job.ended.then((ended) => {
      if (running !== mine) return
      running = null
      state.value = ended.how === 'answered' ? 'done' : ended.how
    })
  }

  /** Finds everything anew for the hanger as it is. */
  function begin(): void {
    running?.job.callOff()
    running = null
    found.value = []
    tried.value = null
    asked.value = document()
    if (resolveDocument(asked.value).ok) run(asked.value, CHOICES)
    else state.value = 'unread'
  }

  /** What was asked is kept while the hanger is as it was. */
  function look(): void {
    if (state.value !== 'done' || !isOfNow()) begin()
  }

  const callOff = (): void => running?.job.callOff()

  /** Asks for the widest pot again, of another material or in another mix. */
  function askRim(next: RimAsked): void {
    rim.value = next
    if (asked.value === null || state.value === 'unread') return
    run(asked.value, running === null ? ['largestRim'] : CHOICES.filter((choice) => choice === 'largestRim' || running?.choices.includes(choice)))
  }

  const isTried = (choice: Choice): boolean => tried.value?.choice === choice && tried.value.document === document()
  const isOfNow = (): boolean => document() === asked.value || (tried.value !== null && document() === tried.value.document)

  /** Lays an answer over the hanger as it was asked about, as one step; another one that was tried on gives way to it. */
  function tryOn(choice: ChoiceFound): void {
    if (asked.value === null || !isOfNow()) return
    tried.value = { choice, document: withChange(asked.value, choice.change) }
    replace(tried.value.document)
  }

  function takeBack(): void {
    if (asked.value !== null && tried.value !== null) replace(asked.value)
    tried.value = null
  }

  return {
    found: computed(() => found.value), state: computed(() => state.value), at: computed(() => at.value), checks: computed(() => checks.value), rim: computed(() => rim.value),
    asked: computed(() => asked.value), isChanged: computed(() => asked.value !== null && !isOfNow()),
    look, begin, callOff, askRim, tryOn, takeBack, isTried,
  }
}

export const useChoosing = defineStore('choosing', () => {
  const source = useDocument()
  const shelf = useShelf()
  const own = (document: HangerDocument): readonly OwnCord[] =>
    shelf.entries.filter(({ kind }) => kind === 'cord').map((entry) => ({ name: entry.name, document: putOnHanger(document, entry) }))
  return createChoosing(startJob, () => source.document, source.replace, own)
})
