import { writeBy } from '#core'
import type { JobQuestion, JobReply } from './messages'

/** How long a job works before waiting messages are let in, ms: short enough that calling off feels immediate. */
const SPELL = 30

type Jobs = Readonly<Record<string, (asked: never) => Generator<unknown, unknown, void>>>

/**
 * The worker's side of the talk: works on the jobs asked for in short spells, hands their steps over after each, and drops a
 * job that was called off. `breathe` lets waiting messages in, `now` is a clock in ms.
 */
export function serveJobs(jobs: Jobs, reply: (message: JobReply) => void, breathe: () => Promise<void>, now: () => number): (question: JobQuestion) => void {
  const wanted = new Set<number>()

  async function work({ id, name, asked, habits }: Extract<JobQuestion, { kind: 'job' }>): Promise<void> {
    const start = jobs[name]
    if (start === undefined) throw new Error('No job goes by this name')
    const job = start(asked as never)
    for (;;) {
      await breathe()
      if (!wanted.has(id)) return
      // How numbers are written is one state for all jobs.
      writeBy(habits)
      const steps: unknown[] = []
      const until = now() + SPELL
      let step = job.next()
      while (step.done !== true && now() < until) {
        steps.push(step.value)
        step = job.next()
      }
      if (step.done !== true) steps.push(step.value)
      if (steps.length > 0) reply({ kind: 'steps', id, steps })
      if (step.done === true) return reply({ kind: 'answer', id, answer: step.value })
    }
  }

  return (question) => {
    const { id } = question
    if (question.kind === 'callOff') {
      wanted.delete(id)
      return
    }
    wanted.add(id)
    work(question)
      .catch((error: unknown) => { reply({ kind: 'failed', id, detail: error instanceof Error ? error.message : String(error) }) })
      .finally(() => { wanted.delete(id) })
  }
}
