import { describe, expect, it } from 'vitest'
import { USUAL_HABITS } from '#core'
import type { JobQuestion, JobReply } from '../../../../renderer/jobs/messages'
import { serveJobs } from '../../../../renderer/jobs/serveJobs'
import { jobsIn, type JobWorker } from '../../../../renderer/jobs/startJob'

const settled = async (): Promise<void> => { for (let i = 0; i < 50; i++) await Promise.resolve() }

const JOBS = {
  * count(to: number) {
    for (let i = 1; i <= to; i++) yield i
    return to * 10
  },
  * broken() {
    yield 1
    throw new Error('a fault')
  },
  * endless() {
    for (let i = 1; ; i++) yield i
  },
}

/** A clock that moves on by 10 ms at each look: three steps to a spell. */
function serve() {
  const replies: JobReply[] = []
  let time = 0
  const take = serveJobs(JOBS, (reply) => { replies.push(reply) }, () => Promise.resolve(), () => (time += 10))
  const ask = (id: number, name: string, asked: unknown): void => take({ kind: 'job', id, name, asked, habits: USUAL_HABITS } as JobQuestion)
  return { ask, take, replies }
}

describe('the worker’s side', () => {
  it('hands over every step once and in order, several at a time, then the answer', async () => {
    const { ask, replies } = serve()
    ask(1, 'count', 7)
    await settled()
    const steps = replies.flatMap((reply) => (reply.kind === 'steps' ? [reply.steps] : []))
    expect(steps.flat()).toEqual([1, 2, 3, 4, 5, 6, 7])
    expect(steps.length).toBeGreaterThan(1)
    expect(steps.length).toBeLessThan(7)
    expect(replies.at(-1)).toEqual({ kind: 'answer', id: 1, answer: 70 })
  })

  it('drops a job that is called off, and goes on with the others', async () => {
    const { ask, take, replies } = serve()
    ask(1, 'endless', null)
    ask(2, 'count', 2)
    for (let i = 0; i < 9; i++) await Promise.resolve()
    take({ kind: 'callOff', id: 1 })
    await settled()
    const before = replies.length
    await settled()
    expect(replies.length).toBe(before)
    expect(replies.find((reply) => reply.kind === 'answer')).toEqual({ kind: 'answer', id: 2, answer: 20 })
  })

  it('says that a job failed, and which', async () => {
    const { ask, replies } = serve()
    ask(5, 'broken', null)
    ask(6, 'unheard', null)
    await settled()
    expect(replies.filter((reply) => reply.kind === 'failed')).toEqual([
      { kind: 'failed', id: 6, detail: 'No job goes by this name' },
      { kind: 'failed', id: 5, detail: 'a fault' },
    ])
  })
})

describe('the page’s side', () => {
  function start() {
    const asked: JobQuestion[] = []
    const workers: JobWorker[] = []
    const startJob = jobsIn(() => {
      const worker: JobWorker = { postMessage: (question) => { asked.push(question) }, onmessage: null, onerror: null }
      workers.push(worker)
      return worker
    })
    const reply = (message: JobReply): void => workers.at(-1)?.onmessage?.(new MessageEvent('message', { data: message }))
    return { startJob, asked, workers, reply }
  }

  it('starts one worker, when the first job is asked for', async () => {
    const { startJob, workers, reply, asked } = start()
    expect(workers).toHaveLength(0)
    const steps: unknown[] = []
    const one = startJob('count' as never, 3 as never, (more) => { steps.push(...more) })
    startJob('count' as never, 3 as never, () => undefined)
    expect(workers).toHaveLength(1)
    expect(asked.map(({ kind, id }) => [kind, id])).toEqual([['job', 1], ['job', 2]])
    reply({ kind: 'steps', id: 1, steps: ['a', 'b'] })
    reply({ kind: 'answer', id: 1, answer: 'holds' })
    expect(await one.ended).toEqual({ how: 'answered', answer: 'holds' })
    reply({ kind: 'steps', id: 1, steps: ['c'] })
    expect(steps).toEqual(['a', 'b'])
  })

  it('ends a job that is called off at once, whatever still comes of it', async () => {
    const { startJob, asked, reply } = start()
    const steps: unknown[] = []
    const job = startJob('count' as never, 3 as never, (more) => { steps.push(...more) })
    job.callOff()
    reply({ kind: 'steps', id: 1, steps: ['late'] })
    expect(await job.ended).toEqual({ how: 'calledOff' })
    expect(asked.at(-1)).toEqual({ kind: 'callOff', id: 1 })
    expect(steps).toEqual([])
  })

  it('tells all that wait when the worker breaks, and takes a new one for the next', async () => {
    const { startJob, workers } = start()
    const job = startJob('count' as never, 3 as never, () => undefined)
    workers[0]?.onerror?.(new ErrorEvent('error', { message: 'out of memory' }))
    expect(await job.ended).toEqual({ how: 'failed', detail: 'out of memory' })
    startJob('count' as never, 3 as never, () => undefined)
    expect(workers).toHaveLength(2)
  })
})
