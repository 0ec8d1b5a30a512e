import { writingHabits } from '#core'
import { heard } from '../faults/heard'
import type { Answered, Asked, JobName, Step } from './jobs'
import type { JobQuestion, JobReply } from './messages'

/** The part of a worker that jobs use. */
export interface JobWorker {
  postMessage(question: JobQuestion): void
  onmessage: ((event: MessageEvent<JobReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** How a job ended. */
export type Ended<Answer> =
  | { readonly how: 'answered', readonly answer: Answer }
  | { readonly how: 'calledOff' }
  /** The detail is for a report of a fault, never the whole sentence shown. */
  | { readonly how: 'failed', readonly detail: string }

export interface RunningJob<Name extends JobName> {
  readonly ended: Promise<Ended<Answered<Name>>>
  readonly callOff: () => void
}

/** Starts a job; `onSteps` gets what it hands over in between, never after it ended. */
export type StartJob = <Name extends JobName>(name: Name, asked: Asked<Name>, onSteps: (steps: readonly Step<Name>[]) => void) => RunningJob<Name>

interface Waiting {
  readonly onSteps: (steps: readonly never[]) => void
  readonly end: (ended: Ended<never>) => void
}

/** Jobs done in one worker, which is started when the first is asked for. One for each worker wanted. */
export function jobsIn(start: () => JobWorker): StartJob {
  const waiting = new Map<number, Waiting>()
  let worker: JobWorker | null = null
  let last = 0

  function end(id: number, ended: Ended<unknown>): void {
    const one = waiting.get(id)
    waiting.delete(id)
    one?.end(ended as Ended<never>)
  }

  function started(): JobWorker {
    const one = start()
    one.onmessage = ({ data }) => {
      if (data.kind === 'steps') waiting.get(data.id)?.onSteps(data.steps as readonly never[])
      else if (data.kind === 'answer') end(data.id, { how: 'answered', answer: data.answer })
      else end(data.id, { how: 'failed', detail: data.detail })
    }
    // A worker that broke is of no further use: the next job gets a new one.
    one.onerror = ({ message }) => {
      worker = null
      for (const id of [...waiting.keys()]) end(id, { how: 'failed', detail: message })
    }
    return one
  }

  return (name, asked, onSteps) => {
    worker ??= started()
    const mine = worker
    last += 1
    const id = last
    const ended = new Promise<Ended<Answered<typeof name>>>((done) => { waiting.set(id, { onSteps, end: done }) })
    mine.postMessage({ kind: 'job', id, name, asked, habits: { ...writingHabits() } })
    return {
      ended,
      callOff: () => {
        mine.postMessage({ kind: 'callOff', id })
        end(id, { how: 'calledOff' })
      },
    }
  }
}

const startWorker = (): JobWorker => heard(new Worker(new URL('./job.worker.ts', import.meta.url), { type: 'module' }))

/** One worker more than one of whose jobs may run side by side, in turns. */
export const startJob: StartJob = jobsIn(startWorker)

/** So many workers, for what is to use several cores. */
export const jobPool = (workers: number): readonly StartJob[] => Array.from({ length: workers }, () => jobsIn(startWorker))
