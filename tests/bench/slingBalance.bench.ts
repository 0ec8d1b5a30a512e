import { bench, describe } from 'vitest'
import { solveSling } from '../../src/statics/sling/solveSling'
import { generalRest } from '../reference/sling/generalMinimiser'
import { seededRandom } from '../unit/quantity/seededRandom'
import { imbalance } from '../unit/statics/sling/imbalance'
import { randomHanger } from '../unit/statics/sling/randomHanger'

/** Solves so many random hangers and counts by status, with the worst imbalance computed anew from the answers. */
function census(count: number, seed: number, leaning: boolean): string {
  const random = seededRandom(seed)
  const counts = new Map<string, number>()
  let worst = 0
  let wrong = 0
  const began = performance.now()
  for (let i = 0; i < count; i++) {
    const input = randomHanger(random, leaning)
    const result = solveSling(input)
    counts.set(result.status, (counts.get(result.status) ?? 0) + 1)
    const balance = 'T' in result ? result : result.status === 'UNSTABLE' ? result.upright : null
    if (balance === null) continue
    const left = imbalance(input, balance)
    worst = Math.max(worst, left)
    if (!(left <= 1e-9)) wrong++
  }
  const each = (1000 * (performance.now() - began)) / count
  const kinds = [...counts].map(([status, n]) => `${status} ${n}`).join(', ')
  return `${count} random hangers ${leaning ? 'at a wall' : 'hanging free'}: ${kinds}; worst imbalance ${worst.toExponential(1)}, above 1e-9: ${wrong}; ${each.toFixed(0)} us each with checking`
}
console.log([census(100_000, 1009, false), census(20_000, 1013, true)].join('\n'))

const random = seededRandom(1019)
const byLegs = Array.from({ length: 10 }, (_, i) => ({ legs: i + 3, inputs: [] as ReturnType<typeof randomHanger>[] }))
while (byLegs.some(({ inputs }) => inputs.length < 100)) {
  const input = randomHanger(random, false)
  const { inputs } = byLegs[input.A.length - 3]!
  if (inputs.length < 100) inputs.push(input)
}
for (const { legs, inputs } of byLegs) {
  describe(`100 random hangers of ${legs} legs, the same by both`, () => {
    bench('solveSling', () => { inputs.forEach(solveSling) }, { time: 200 })
    bench('NLopt, sequential quadratic programming', () => { inputs.forEach(generalRest) }, { time: 200 })
  })
}
