import type { BatchResult } from '../../batch/result'
import { workOn, type BatchSetting, type BatchTask } from './work'

/** Hangers that are handed to a worker at once: enough that handing over takes little of the time. */
const AT_ONCE = 32
/** Lots that wait for each worker, so that none stands idle and memory does not grow. */
const AHEAD = 2

/** The part of a worker thread that is used. */
export interface BatchWorker {
  postMessage(lot: readonly BatchTask[]): void
  on(event: 'message', listener: (results: readonly BatchResult[]) => void): unknown
  on(event: 'error', listener: (error: Error) => void): unknown
  terminate(): Promise<unknown>
}

async function* lotsOf(tasks: AsyncIterable<readonly BatchTask[]>): AsyncGenerator<readonly BatchTask[], void, void> {
  let lot: BatchTask[] = []
  for await (const more of tasks) {
    for (const task of more) {
      lot.push(task)
      if (lot.length < AT_ONCE) continue
      yield lot
      lot = []
    }
  }
  if (lot.length > 0) yield lot
}

/** One worker, asked one lot after the other. */
function asking(worker: BatchWorker): (lot: readonly BatchTask[]) => Promise<readonly BatchResult[]> {
  const waiting: { readonly done: (results: readonly BatchResult[]) => void; readonly failed: (error: Error) => void }[] = []
  worker.on('message', (results) => { waiting.shift()?.done(results) })
  worker.on('error', (error) => { for (const one of waiting.splice(0)) one.failed(error) })
  return (lot) => new Promise((done, failed) => {
    waiting.push({ done, failed })
    worker.postMessage(lot)
  })
}

/**
 * Checks many hangers, in this thread or by workers, and hands the results over in the order of the tasks. No more tasks are
 * taken than the workers can soon work on, however many there are.
 */
export async function* checkedInOrder(tasks: AsyncIterable<readonly BatchTask[]>, setting: BatchSetting, workers: readonly BatchWorker[]): AsyncGenerator<readonly BatchResult[], void, void> {
  if (workers.length === 0) {
    for await (const lot of lotsOf(tasks)) yield lot.map((task) => workOn(task, setting))
    return
  }
  const asks = workers.map(asking)
  const underWay: Promise<readonly BatchResult[]>[] = []
  let turn = 0
  try {
    for await (const lot of lotsOf(tasks)) {
      const ask = asks[turn % asks.length] as (typeof asks)[number]
      turn += 1
      const answer = ask(lot)
      // A failure is met where the answer is waited for.
      answer.catch(() => undefined)
      underWay.push(answer)
      if (underWay.length >= asks.length * AHEAD) yield await (underWay.shift() as (typeof underWay)[number])
    }
    for (const answer of underWay) yield await answer
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()))
  }
}
