import { bench, describe } from 'vitest'
import type { SlingInput } from '../../src/statics/sling/result'
import { slingRests } from '../../src/statics/sling/slingRests'
import { solveSling } from '../../src/statics/sling/solveSling'
import { solveSlingNear } from '../../src/statics/sling/solveSlingNear'
import reference from '../reference/sling/independentSolver.json'
import { seededRandom } from '../unit/quantity/seededRandom'
import { randomHanger } from '../unit/statics/sling/randomHanger'
import { matrixSling } from './matrixSling'

const cases = (reference.cases as unknown as { id: string; input: SlingInput }[]).map(({ id, input }) => ({
  id, input: { ...input, gravity: reference.gravity, wall: (input as Partial<SlingInput>).wall ?? null },
}))
const random = seededRandom(43)
const free = Array.from({ length: 2000 }, () => randomHanger(random, false))
const leaning = Array.from({ length: 500 }, () => randomHanger(random, true))

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!

/** Median time of one call on a warm solver, microseconds. */
function microseconds(solve: (input: SlingInput) => unknown, input: SlingInput, calls: number): number {
  for (let i = 0; i < calls; i++) solve(input)
  return median(Array.from({ length: calls }, () => {
    const began = performance.now()
    solve(input)
    return 1000 * (performance.now() - began)
  }))
}

// The same cases by both, in one run; the yardstick's tensions are compared first, so that it is no straw man.
const lines: string[] = []
const ours: number[] = []
const ratios: number[] = []
for (const { id, input } of cases) {
  const result = solveSling(input)
  if (result.status === 'ERROR') continue
  const own = microseconds(solveSling, input, 2000)
  ours.push(own)
  let beside = ''
  if ('T' in result && input.wall === null) {
    const { T } = matrixSling(input)
    const apart = Math.max(...T.map((value, i) => Math.abs(value - result.T[i]!)))
    if (apart > 1e-6) throw new Error(`${id}: the yardstick is ${apart} N apart`)
    const theirs = microseconds(matrixSling, input, 30)
    ratios.push(theirs / own)
    beside = `${theirs.toFixed(0).padStart(8)} us with a general matrix library, ${(theirs / own).toFixed(0)} times as long`
  }
  lines.push(`${id.padEnd(18)} ${own.toFixed(1).padStart(7)} us${beside}`)
}
console.log([...lines, `median of a case ${median(ours).toFixed(1)} us; median ratio ${median(ratios).toFixed(0)}`].join('\n'))

describe('the sling, 2,000 random free hangers', () => {
  bench('solveSling', () => { free.forEach(solveSling) }, { iterations: 5 })
})
describe('the sling, 500 random hangers leaning on a wall', () => {
  bench('solveSling', () => { leaning.forEach(solveSling) }, { iterations: 5 })
  bench('slingRests', () => { leaning.forEach(slingRests) }, { iterations: 5 })
})

// One step of a sweep: each hanger a little heavier than the one whose rest is known.
const steps = [...free.slice(0, 500), ...leaning].flatMap((input) => {
  const rest = solveSling(input)
  return 'T' in rest ? [{ next: { ...input, mass: 1.02 * input.mass }, rest }] : []
})
describe('a step of a sweep, 500 free and 500 leaning', () => {
  bench('solveSling', () => { steps.forEach(({ next }) => solveSling(next)) }, { iterations: 5 })
  bench('solveSlingNear', () => { steps.forEach(({ next, rest }) => solveSlingNear(next, rest)) }, { iterations: 5 })
})
