import { writingHabits } from '#core'
import type { ChartQuestion, PotOutcome, PotQuestion, RowOutcome, SheetOutcome, SheetQuestion, SheetReply } from './messages'

/** The part of a worker that is used. */
export interface SheetsWorker {
  postMessage(question: SheetQuestion | ChartQuestion | PotQuestion): void
  onmessage: ((event: MessageEvent<SheetReply>) => void) | null
  onerror: ((event: ErrorEvent) => void) | null
}

/** Asks for one sheet, for one hanger's row of a chart, or how one takes a pot; null where the worker failed. */
export interface SheetsAsker {
  readonly sheet: (question: Pick<SheetQuestion, 'source' | 'sheet' | 'options'>) => Promise<SheetOutcome | null>
  readonly row: (question: Pick<ChartQuestion, 'text' | 'file'>) => Promise<RowOutcome | null>
  readonly pot: (question: Pick<PotQuestion, 'text' | 'file' | 'pot'>) => Promise<PotOutcome | null>
}

/** Questions to a worker that is started at the first of them. */
export function askSheets(start: () => SheetsWorker): SheetsAsker {
  const waiting = new Map<number, (reply: SheetReply | null) => void>()
  let revision = 0
  let worker: SheetsWorker | null = null

  function hand(number: number, reply: SheetReply | null): void {
    waiting.get(number)?.(reply)
    waiting.delete(number)
  }
  function started(): SheetsWorker {
    const one = start()
    one.onmessage = ({ data }) => hand(data.revision, data)
    one.onerror = () => { for (const number of [...waiting.keys()]) hand(number, null) }
    return one
  }
  function ask(question: Omit<SheetQuestion, 'revision' | 'habits'> | Omit<ChartQuestion, 'revision' | 'habits'> | Omit<PotQuestion, 'revision' | 'habits'>): Promise<SheetReply | null> {
    worker ??= started()
    revision += 1
    const mine = revision
    const answer = new Promise<SheetReply | null>((done) => { waiting.set(mine, done) })
    worker.postMessage({ ...question, revision: mine, habits: { ...writingHabits() } })
    return answer
  }

  return {
    sheet: async (question) => {
      const reply = await ask({ kind: 'sheet', ...question })
      return reply?.kind === 'sheet' ? reply.outcome : null
    },
    row: async (question) => {
      const reply = await ask({ kind: 'chartRow', ...question })
      return reply?.kind === 'chartRow' ? reply.outcome : null
    },
    pot: async (question) => {
      const reply = await ask({ kind: 'potTaken', ...question })
      return reply?.kind === 'potTaken' ? reply.outcome : null
    },
  }
}
