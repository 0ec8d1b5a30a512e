import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { Worker } from 'node:worker_threads'
import { build, type Rollup } from 'vite'
import { bench, describe } from 'vitest'
import { chanceReport, checkHanger, mergeTallies, parseDocument, resolveDocument, sampleHangers, type ChanceShare, type ChanceTally, type HangerDocument } from '../../src/index'

const SAMPLES = 10_000
const DEMOS = ['fern-over-the-sideboard', 'glazed-pot-by-the-reading-chair', 'spider-plant-on-the-study-wall', 'two-tiers-at-the-landing-window']

function demo(name: string): HangerDocument {
  const parsed = parseDocument(readFileSync(resolve(import.meta.dirname, `../../src/hanger/demos/${name}.strandwise`), 'utf8'))
  if (!parsed.ok) throw new Error(name)
  return parsed.document
}

function drawn(document: HangerDocument, samples: number): ChanceTally {
  const steps = sampleHangers({ document, samples, seed: 1, worker: 0, workers: 1 })
  let step = steps.next()
  while (step.done !== true) step = steps.next()
  if (!step.value.ok) throw new Error(JSON.stringify(step.value.problems))
  return step.value.tally
}

const now = (): number => performance.now()

/** Time of one full check, ms, on a warm core. */
function checkTime(document: HangerDocument): number {
  const resolved = resolveDocument(document)
  if (!resolved.ok) throw new Error('unread')
  for (let i = 0; i < 50; i += 1) checkHanger(resolved.hanger)
  const from = now()
  for (let i = 0; i < 100; i += 1) checkHanger(resolved.hanger)
  return (now() - from) / 100
}

/** The same answer by so many workers: shares side by side, merged. The workers are warm. */
async function byWorkers(code: string, document: HangerDocument, workers: number): Promise<{ readonly ms: number; readonly tally: ChanceTally }> {
  const pool = Array.from({ length: workers }, () => new Worker(code, { eval: true }))
  const ask = (worker: Worker, share: ChanceShare): Promise<ChanceTally> => new Promise((done) => {
    worker.once('message', done)
    worker.postMessage(share)
  })
  const all = (samples: number): Promise<readonly ChanceTally[]> => Promise.all(pool.map((worker, i) => ask(worker, { document, samples, seed: 1, worker: i, workers })))
  await all(1500)
  const from = now()
  const tallies = await all(SAMPLES)
  const ms = now() - from
  await Promise.all(pool.map((worker) => worker.terminate()))
  return { ms, tally: tallies.reduce(mergeTallies) }
}

const bundle = await build({
  configFile: false, logLevel: 'silent', root: resolve(import.meta.dirname, '../..'),
  build: { write: false, minify: false, ssr: true, rollupOptions: { input: resolve(import.meta.dirname, 'chanceWorker.ts'), output: { format: 'cjs' } } },
  ssr: { noExternal: true },
}) as Rollup.RollupOutput
const code = bundle.output[0].code

const lines: string[] = []
for (const name of DEMOS) {
  const document = demo(name)
  drawn(document, 1000)
  const from = now()
  const tally = drawn(document, SAMPLES)
  const ms = now() - from
  const check = checkTime(document)
  const [one, two] = [await byWorkers(code, document, 1), await byWorkers(code, document, 2)]
  const same = JSON.stringify(chanceReport(one.tally)) === JSON.stringify(chanceReport(two.tally)) && JSON.stringify(chanceReport(tally)) === JSON.stringify(chanceReport(one.tally))
  if (!same) throw new Error(`${name}: the answer depends on how it is shared`)
  lines.push(`${name.padEnd(34)} ${Math.round(SAMPLES / (ms / 1000)).toString().padStart(6)} hangers/s on one core, what decides among it; a full check for each ${check.toFixed(2)} ms: ${((check * SAMPLES) / ms).toFixed(1)} times as long; 1 worker ${(one.ms / 1000).toFixed(2)} s, 2 workers ${(two.ms / 1000).toFixed(2)} s: ${(one.ms / two.ms).toFixed(2)} times as fast`)
}
console.log(lines.join('\n'))

describe('chance', () => {
  const tally = drawn(demo('fern-over-the-sideboard'), SAMPLES)
  bench('250 hangers of the fern over the sideboard', () => { drawn(demo('fern-over-the-sideboard'), 250) }, { time: 1000 })
  bench('the report of 10,000', () => { chanceReport(tally) }, { time: 500 })
})
