import { writingHabits } from '#core'
import type { SheetOutcome, SheetQuestion, SheetReply } from './messages'

/** The part of a worker that is used. */
export interface SheetsWorker {
  postMessage(question: SheetQuestion): void
  onmessage: ((event: MessageEvent<SheetReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** Asks for one sheet; null where the worker failed. */
export type AskSheet = (question: Pick<SheetQuestion, 'source' | 'sheet' | 'options'>) => Promise<SheetOutcome | null>

/** Questions to a worker that is started at the first of them. */
export function askSheets(start: () => SheetsWorker): AskSheet {
  const waiting = new Map<number, (outcome: SheetOutcome | null) => void>()
  let revision = 0
  let worker: SheetsWorker | null = null

  function hand(number: number, outcome: SheetOutcome | null): void {
    waiting.get(number)?.(outcome)
    waiting.delete(number)
  }
  function started(): SheetsWorker {
    const one = start()
    one.onmessage = ({ data }) => hand(data.revision, data.kind === 'sheet' ? data.outcome : null)
    one.onerror = () => { for (const number of [...waiting.keys()]) hand(number, null) }
    return one
  }

  return (question) => {
    worker ??= started()
    revision += 1
    const mine = revision
    const answer = new Promise<SheetOutcome | null>((done) => { waiting.set(mine, done) })
    worker.postMessage({ kind: 'sheet', revision: mine, ...question, habits: { ...writingHabits() } })
    return answer
  }
}
