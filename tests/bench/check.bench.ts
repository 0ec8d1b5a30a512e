import { bench, describe } from 'vitest'
import { checkHanger } from '../../src/check/checkHanger'
import { solve } from '../../src/check/solve'
import { slingInput } from '../../src/check/slingBattery'
import type { SlingInput } from '../../src/statics/sling/result'
import { solveSling } from '../../src/statics/sling/solveSling'
import { hangerOf, ORDINARY } from '../unit/hanger/hangerOf'
import { matrixSling } from './matrixSling'

/** Shortest time of one call in ms, of several. */
function shortest(work: () => void, calls: number): number {
  return Math.min(...Array.from({ length: calls }, () => {
    const began = performance.now()
    work()
    return performance.now() - began
  }))
}

/** More hangers than those whose slings are kept, in turn: each is checked as if for the first time. */
function inTurn(legs: number): () => ReturnType<typeof hangerOf> {
  const hangers = Array.from({ length: 12 }, (_, i) => hangerOf({ ...ORDINARY, 'make.legs': String(legs), 'pot.rim': `${170 + i} mm` }))
  let next = 0
  return () => {
    next = (next + 1) % hangers.length
    const hanger = hangers[next]
    if (hanger === undefined) throw new Error('no such hanger')
    return hanger
  }
}

/** The slings that a check of this hanger solves whole: as drawn, off centre, and with legs longer and shorter, in every case. */
function slingsOf(hanger: ReturnType<typeof hangerOf>): readonly SlingInput[] {
  const { plan, loads, potted, wholeCases } = solve(hanger)
  if (plan === null) return []
  const { 'make.tolerance': tolerance, 'seat.offset': offset } = hanger.answers
  return wholeCases.flatMap((code) => {
    const { centre } = potted[loads[code].case.state]
    const input = { plan, stiffness: 20_000, bedded: 60_000, mass: loads[code].weight / 9.80665, centre, offset, tolerance }
    return [
      slingInput(input, input.stiffness, [0, 0, centre], []),
      ...plan.asides.map((aside) => slingInput(input, input.stiffness, [offset * Math.cos(aside), offset * Math.sin(aside), centre], [])),
      ...plan.uneven.map((longer) => slingInput(input, input.bedded, [0, 0, centre], longer.map((share) => share * tolerance))),
    ]
  })
}

// A full check beside the same check with its slings solved by a general matrix library, in one run. Where the library's
// straightforward steps end without a rest, its time counts all the same.
for (const legs of [3, 4]) {
  const hanger = hangerOf({ ...ORDINARY, 'make.legs': String(legs) })
  const another = inTurn(legs)
  const slings = slingsOf(hanger)
  const byMatrices = (): void => { for (const sling of slings) try { matrixSling(sling) } catch { /* no rest found */ } }
  const [whole, ours, theirs] = [shortest(() => { checkHanger(another()) }, 50), shortest(() => { for (const sling of slings) solveSling(sling) }, 50), shortest(byMatrices, 5)]
  console.log(`full check, ${legs} legs: ${whole.toFixed(2)} ms, of it ${slings.length} slings ${ours.toFixed(2)} ms; with these by a general matrix library ${(whole - ours + theirs).toFixed(1)} ms, ${((whole - ours + theirs) / whole).toFixed(0)} times as long`)
}

describe('a full check', () => {
  for (const legs of [3, 4, 12]) {
    const another = inTurn(legs)
    bench(`${legs} legs, all cases and links`, () => { checkHanger(another()) })
    bench(`${legs} legs, loads and slings only`, () => { solve(another()) })
  }
})
