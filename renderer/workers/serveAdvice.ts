import type { HangerDocument, Remedy } from '#core'
import { adviceJob } from './adviceJob'
import type { AdviceQuestion, AdviceReply } from './messages'

/**
 * The worker's side of the talk: takes questions, sends replies, and drops a job between two remedies
 * once a later question or a cancel has come. `breathe` lets waiting messages in.
 */
export function serveAdvice(reply: (message: AdviceReply) => void, breathe: () => Promise<void>): (question: AdviceQuestion) => void {
  let current: AdviceQuestion | null = null

  async function work(question: Extract<AdviceQuestion, { kind: 'ask' }>, document: HangerDocument): Promise<void> {
    const { revision } = question
    const job = adviceJob(document)
    const remedies: Remedy[] = []
    for (;;) {
      await breathe()
      if (current !== question) return
      const step = job.next()
      if (step.done) {
        reply({ kind: 'answer', revision, advice: step.value })
        return
      }
      remedies.push(step.value)
      reply({ kind: 'progress', revision, remedies: [...remedies] })
    }
  }

  return (question) => {
    current = question
    if (question.kind === 'cancel') return
    work(question, question.document).catch((error: unknown) => {
      reply({ kind: 'failed', revision: question.revision, detail: error instanceof Error ? error.message : String(error) })
    })
  }
}
