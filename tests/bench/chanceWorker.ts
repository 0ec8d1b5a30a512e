import { parentPort } from 'node:worker_threads'
import { type ChanceShare, type ChanceTally, sampleHangers } from '../../src/index'

// Draws a share for the bench and hands its tally back; once to warm up, then as often as asked.
parentPort?.on('message', (share: ChanceShare) => {
  const steps = sampleHangers(share)
  const chunks: ChanceTally[] = []
  let step = steps.next()
  for (; step.done !== true; step = steps.next()) chunks.push(step.value)
  parentPort?.postMessage(step.value.ok ? step.value.tally : null)
})
