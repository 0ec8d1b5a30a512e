import { defineStore } from 'pinia'
import { computed, shallowRef, watch } from 'vue'
import { chanceProblemText, chanceReport, mergeTallies, readChance, USUAL_SAMPLES, USUAL_SEED, type ChanceReport, type ChanceTally, type HangerDocument } from '#core'
import { jobPool, type RunningJob, type StartJob } from '../jobs/startJob'
import { useDocument } from '../stores/document'

/** Figures are renewed this long after the last, ms, or after so many times as long as they took to reckon. */
const PAUSE = 250
const SHARE = 6

type State = 'idle' | 'drawing' | 'done' | 'calledOff' | 'refused' | 'failed'

/**
 * Hangers drawn by chance on all workers of the pool, each taking its share of the chunks, so that the figures do not depend on how
 * many there are. They are merged and shown as they come; what was drawn stays when the rest is called off. `now` in ms.
 */
export function createChance(pool: () => readonly StartJob[], document: () => HangerDocument, now: () => number) {
  const samples = shallowRef(String(USUAL_SAMPLES))
  const seed = shallowRef(String(USUAL_SEED))
  const state = shallowRef<State>('idle')
  const problems = shallowRef<readonly string[]>([])
  const asked = shallowRef<{ readonly document: HangerDocument, readonly samples: number, readonly seed: number } | null>(null)
  const drawn = shallowRef(0)
  const report = shallowRef<ChanceReport | null>(null)
  let running: readonly RunningJob<'sampleHangers'>[] = []
  let tally: ChanceTally | null = null
  let next = 0

  function show(): void {
    const begun = now()
    report.value = tally === null ? null : chanceReport(tally)
    next = now() + Math.max(PAUSE, SHARE * (now() - begun))
  }

  function gather(steps: readonly ChanceTally[]): void {
    tally = [...(tally === null ? [] : [tally]), ...steps].reduce(mergeTallies)
    drawn.value += steps.flatMap(({ chunks }) => chunks).reduce((sum, { hangers }) => sum + hangers, 0)
    if (now() >= next) show()
  }

  async function draw(): Promise<void> {
    const read = readChance(samples.value, seed.value)
    problems.value = read.ok ? [] : read.problems.map(chanceProblemText)
    if (!read.ok) return
    drop()
    const what = { document: document(), samples: read.samples, seed: read.seed }
    asked.value = what
    state.value = 'drawing'
    const starts = pool()
    const mine = starts.map((start, worker) => start('sampleHangers', { ...what, worker, workers: starts.length }, gather))
    running = mine
    const all = await Promise.all(mine.map(async ({ ended }) => {
      const one = await ended
      // What one cannot do the others need not go on with.
      if (one.how === 'failed') for (const { callOff } of mine) callOff()
      return one
    }))
    if (running !== mine) return
    running = []
    show()
    const refusal = all.flatMap((one) => (one.how === 'answered' && !one.answer.ok ? [one.answer.problems] : []))[0]
    problems.value = (refusal ?? []).map(chanceProblemText)
    state.value = all.some(({ how }) => how === 'failed') ? 'failed' : refusal !== undefined ? 'refused' : all.some(({ how }) => how === 'calledOff') ? 'calledOff' : 'done'
  }

  const callOff = (): void => { for (const one of running) one.callOff() }

  /** Puts away what was drawn before. */
  function drop(): void {
    const before = running
    running = []
    for (const one of before) one.callOff()
    tally = null
    next = 0
    drawn.value = 0
    report.value = null
    asked.value = null
    state.value = 'idle'
  }

  return {
    samples, seed, draw, callOff, drop,
    state: computed(() => state.value),
    problems: computed(() => problems.value),
    /** Hangers drawn so far, of how many, from which seed. */
    drawn: computed(() => drawn.value),
    asked: computed(() => asked.value),
    report: computed(() => report.value),
    /** Whether the hanger is another by now than the one drawn. */
    isOld: computed(() => asked.value !== null && asked.value.document !== document()),
  }
}

/** As many as the machines that makers have can feed at least. */
const WORKERS = 2

export const useChance = defineStore('chance', () => {
  const source = useDocument()
  let pool: readonly StartJob[] | null = null
  const chance = createChance(() => (pool ??= jobPool(WORKERS)), () => source.document, () => performance.now())
  watch(() => source.opened, chance.drop)
  return chance
})
