import { chanceReport, mergeTallies, sampleHangers, type ChanceOutcome, type ChanceReport, type ChanceShare, type ChanceTally, type HangerDocument, type Patch } from '#core'
import { documentOf } from '../hanger/hangerOf'

const runOf = (share: ChanceShare): { readonly steps: readonly ChanceTally[]; readonly outcome: ChanceOutcome } => {
  const job = sampleHangers(share)
  const steps: ChanceTally[] = []
  let step = job.next()
  for (; step.done !== true; step = job.next()) steps.push(step.value)
  return { steps, outcome: step.value }
}

export const outcomeOf = (patch: Patch, samples = 250, seed = 1): ChanceOutcome => runOf({ document: documentOf(patch), samples, seed, worker: 0, workers: 1 }).outcome

/** A patch without some of its answers. */
export const without = (patch: Patch, ...paths: readonly string[]): Patch => Object.fromEntries(Object.entries(patch).filter(([path]) => !paths.includes(path)))

export const reportOf = (patch: Patch, options: { readonly samples?: number, readonly seed?: number, readonly workers?: number } = {}): ChanceReport => reportOfDocument(documentOf(patch), options)

/** The report of so many hangers drawn, shared among workers whose steps are merged in an order of their own. */
export function reportOfDocument(document: HangerDocument, { samples = 250, seed = 1, workers = 1 } = {}): ChanceReport {
  const runs = Array.from({ length: workers }, (_, worker) => runOf({ document, samples, seed, worker, workers }))
  for (const { outcome } of runs) if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  const report = chanceReport(runs.flatMap(({ steps }) => steps).reverse().reduce(mergeTallies))
  if (report === null) throw new Error('nothing was drawn')
  return report
}
