import { bench, describe } from 'vitest'
import { metres, radians } from '../../src/quantity/si'
import { slidingHeightLimit } from '../../src/statics/seat/slidingHeightLimit'
import { pinnedAt, solveSlidingSeat } from '../../src/statics/seat/slidingSeat'
import { slidingTipPush } from '../../src/statics/seat/tipPush'
import { withoutEachLeg } from '../../src/statics/seat/withoutEach'
import { seededRandom } from '../unit/quantity/seededRandom'
import { randomSeat, roundSeat } from '../unit/statics/seat/randomSeat'

/** Solves so many random seats and counts by status; the time of one in the middle, and of the slowest in a hundred. */
function census(count: number, seed: number, leaning: boolean): string {
  const random = seededRandom(seed)
  const counts = new Map<string, number>()
  const times: number[] = []
  let worst = 0
  for (let i = 0; i < count; i++) {
    const seat = randomSeat(random, leaning)
    const began = performance.now()
    const result = solveSlidingSeat(seat)
    times.push(1000 * (performance.now() - began))
    counts.set(result.status, (counts.get(result.status) ?? 0) + 1)
    if ('residualRel' in result && result.residualRel !== null && result.status !== 'NOT_CONVERGED') worst = Math.max(worst, result.residualRel)
  }
  times.sort((a, b) => a - b)
  const at = (share: number): string => (times[Math.floor(share * count)] ?? 0).toFixed(0)
  const kinds = [...counts].map(([status, n]) => `${status} ${n}`).join(', ')
  return `${count} random sliding seats ${leaning ? 'at a wall' : 'hanging free'}: ${kinds}; worst imbalance ${worst.toExponential(1)}; median ${at(0.5)} us, 90 % within ${at(0.9)} us, 99 % within ${at(0.99)} us`
}
console.log([census(20_000, 2003, false), census(4_000, 2011, true)].join('\n'))

const seat = roundSeat({ legs: 4, ring: 0.04, leaveRadius: 0.11, leaveHeight: 0.15, baseRadius: 0.08, rise: 0.6, EA: 2900, weight: 60, centre: 0.1 })
const directions = [0, 1, 2, 3].map((i) => radians((i * Math.PI) / 2))

describe('the seat of one hanger of four legs from a ring', () => {
  bench('does it stand on sliding strands', () => { solveSlidingSeat(seat) }, { time: 200 })
  bench('how high may its centre of gravity stand, to 0.1 mm', () => { slidingHeightLimit(seat, { least: metres(0), most: metres(0.6), within: metres(1e-4), mostTilt: radians(0.26) }) }, { time: 200 })
  bench('the push that tips it, four directions', () => { slidingTipPush(seat, { height: metres(0.15), directions, tipsAbove: radians(0.26) }) }, { time: 200 })
  bench('without each leg in turn', () => { withoutEachLeg(pinnedAt(seat), radians(0.26)) }, { time: 200 })
})
