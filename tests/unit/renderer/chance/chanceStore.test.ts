import { describe, expect, it } from 'vitest'
import { shallowRef } from 'vue'
import { EMPTY_DOCUMENT, type ChanceTally, type HangerDocument } from '#core'
import { createChance } from '../../../../renderer/chance/chanceStore'
import type { Ended, StartJob } from '../../../../renderer/jobs/startJob'

const FRAME = { parts: ['leg'], byModel: [], leftOut: [], inputs: [], slings: 'solved', checkedWeight: 5, life: 1e8 } as const
const RANK = { pairs: 0, sum: 0, squares: 0, own: [], others: [] }

/** A chunk of four hangers, one of which is overloaded just watered. */
function chunk(index: number, samples: number): ChanceTally {
  const one = { use: [0.2, 0.3, 0.4, 0.5], nearest: [4], overloaded: [0] }
  const cases = { dry: one, watered: { ...one, use: [0.4, 0.6, 0.8, 1.2], overloaded: [1] }, flooded: one, bump: one }
  return { frame: { ...FRAME, samples, seed: 7 }, chunks: [{ index, hangers: 4, cases, atRest: 1, watered: [4, 5, 5, 6 + index], rank: RANK }] }
}

/** Two workers that do as they are told; a clock that stands still unless moved. */
function setUp(document: () => HangerDocument = () => EMPTY_DOCUMENT) {
  const clock = { now: 0 }
  const workers = [0, 1].map(() => ({ asked: null as unknown, step: (() => undefined) as (steps: readonly ChanceTally[]) => void, end: (() => undefined) as (ended: Ended<unknown>) => void, calledOff: 0 }))
  const pool = workers.map((worker): StartJob => ((_name: string, asked: unknown, onSteps: (steps: readonly ChanceTally[]) => void) => {
    worker.asked = asked
    worker.step = onSteps
    const ended = new Promise<Ended<unknown>>((done) => { worker.end = done })
    return { ended, callOff: () => { worker.calledOff += 1; worker.end({ how: 'calledOff' }) } }
  }) as unknown as StartJob)
  const chance = createChance(() => pool, document, () => clock.now)
  const [first, second] = workers
  if (first === undefined || second === undefined) throw new Error('two workers')
  chance.samples.value = '16'
  chance.seed.value = '7'
  return { chance, clock, first, second }
}
const answered = (): Ended<unknown> => ({ how: 'answered', answer: { ok: true, tally: null } })

describe('hangers drawn on two workers', () => {
  it('gives each its share, and merges what comes in whatever order into the same figures', async () => {
    const { chance, first, second } = setUp()
    const end = chance.draw()
    expect([first.asked, second.asked]).toMatchObject([{ samples: 16, seed: 7, worker: 0, workers: 2 }, { worker: 1, workers: 2 }])
    second.step([chunk(1, 16), chunk(3, 16)])
    expect(chance.drawn.value).toBe(8)
    first.step([chunk(0, 16)])
    first.step([chunk(2, 16)])
    first.end(answered())
    second.end(answered())
    await end
    const ordered = setUp()
    const other = ordered.chance.draw()
    ordered.first.step([chunk(0, 16), chunk(2, 16)])
    ordered.second.step([chunk(1, 16), chunk(3, 16)])
    ordered.first.end(answered())
    ordered.second.end(answered())
    await other
    expect(chance.state.value).toBe('done')
    expect(chance.report.value).toMatchObject({ hangers: 16, complete: true, atRest: { overloaded: 4 } })
    expect(ordered.chance.report.value).toEqual(chance.report.value)
  })

  it('shows figures as they come, but no more often than they are read', () => {
    const { chance, clock, first } = setUp()
    void chance.draw()
    first.step([chunk(0, 16)])
    expect(chance.report.value).toMatchObject({ hangers: 4, complete: false })
    first.step([chunk(2, 16)])
    expect([chance.report.value?.hangers, chance.drawn.value]).toEqual([4, 8])
    clock.now = 1000
    first.step([chunk(4, 16)])
    expect(chance.report.value?.hangers).toBe(12)
  })

  it('keeps what was drawn when it is called off, all of it', async () => {
    const { chance, first, second } = setUp()
    const end = chance.draw()
    first.step([chunk(0, 16)])
    second.step([chunk(1, 16)])
    chance.callOff()
    await end
    expect(chance.state.value).toBe('calledOff')
    expect(chance.report.value).toMatchObject({ hangers: 8, complete: false })
  })

  it('says why nothing can be drawn, once, and when a worker breaks lets the other rest', async () => {
    const { chance, first, second } = setUp()
    const end = chance.draw()
    const refusal: Ended<unknown> = { how: 'answered', answer: { ok: false, problems: [{ code: 'NO_POT' }] } }
    first.end(refusal)
    second.end(refusal)
    await end
    expect([chance.state.value, chance.problems.value.length, chance.report.value]).toEqual(['refused', 1, null])
    const again = chance.draw()
    first.end({ how: 'failed', detail: 'broken' })
    await again
    expect([chance.state.value, second.calledOff]).toEqual(['failed', 1])
  })

  it('draws nothing for numbers that are none, and keeps what was typed and shown', async () => {
    const { chance, first, second } = setUp()
    const end = chance.draw()
    first.step([chunk(0, 16)])
    first.end(answered())
    second.end(answered())
    await end
    chance.samples.value = '1e4'
    chance.seed.value = '-1'
    await chance.draw()
    expect(chance.problems.value).toHaveLength(2)
    expect(chance.problems.value[0]).toContain('1e4')
    expect([chance.samples.value, chance.report.value?.hangers]).toEqual(['1e4', 4])
  })

  it('knows when the hanger is another by now, and lets a new drawing take the place of one that still runs', async () => {
    const document = shallowRef<HangerDocument>(EMPTY_DOCUMENT)
    const { chance, first, second } = setUp(() => document.value)
    const late = chance.draw()
    first.step([chunk(0, 16)])
    expect(chance.isOld.value).toBe(false)
    document.value = { ...EMPTY_DOCUMENT, name: 'another' }
    expect(chance.isOld.value).toBe(true)
    void chance.draw()
    await late
    expect([first.calledOff, second.calledOff]).toEqual([1, 1])
    expect([chance.state.value, chance.drawn.value, chance.report.value, chance.isOld.value]).toEqual(['drawing', 0, null, false])
  })
})
