import { describe, expect, it } from 'vitest'
import type { SlingInput } from '../../../src/statics/sling/result'
import { solveSling } from '../../../src/statics/sling/solveSling'
import { seededRandom } from '../../unit/quantity/seededRandom'
import { randomHanger } from '../../unit/statics/sling/randomHanger'
import { energyOf, generalRest } from './generalMinimiser'

// The outside world here is NLopt's sequential quadratic programming (Kraft 1994), a general library
// that knows nothing of slings: generalMinimiser.ts. It stops by energy, so forces agree to some 1e-7
// of the weight. Each of its failures is counted, as is each place where the two rest elsewhere.
const SAME = 2e-6

interface Tally { same: number; elsewhere: number; noAnswer: number; worst: number }

function compare(inputs: readonly SlingInput[]): Tally {
  const tally: Tally = { same: 0, elsewhere: 0, noAnswer: 0, worst: 0 }
  for (const input of inputs) {
    const ours = solveSling(input)
    const theirs = generalRest(input)
    if (!('T' in ours) || theirs === null) {
      tally.noAnswer++
      continue
    }
    const weight = input.mass * input.gravity
    const apart = Math.max(...ours.T.map((T, i) => Math.abs(T - theirs.T[i]!))) / weight
    if (apart < 1e-3) {
      tally.same++
      tally.worst = Math.max(tally.worst, apart, Math.abs(energyOf(input, ours) - energyOf(input, theirs)) / weight)
    } else tally.elsewhere++
  }
  return tally
}

const hangers = (count: number, seed: number, leaning: boolean): SlingInput[] => {
  const random = seededRandom(seed)
  return Array.from({ length: count }, () => randomHanger(random, leaning))
}

describe('solveSling against a general minimiser', () => {
  it('rests in the same place, hanging free', () => {
    const { worst, ...counts } = compare(hangers(300, 271, false))
    expect(counts).toEqual({ same: 300, elsewhere: 0, noAnswer: 0 })
    expect(worst).toBeLessThan(SAME)
  })

  it('rests in the same place against a wall, but for a few pots with more than one rest', () => {
    const { same, elsewhere, noAnswer, worst } = compare(hangers(300, 271, true))
    expect(same + elsewhere + noAnswer).toBe(300)
    expect(same).toBeGreaterThanOrEqual(285)
    expect(worst).toBeLessThan(SAME)
  })
})
