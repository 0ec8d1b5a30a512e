import { describe, expect, it } from 'vitest'
import { metres, newtons, radians } from '../../../../src/quantity/si'
import { heldOffset, knotFriction } from '../../../../src/statics/seat/knotFriction'
import { solveSling } from '../../../../src/statics/sling/solveSling'
import { pinnedAt } from '../../../../src/statics/seat/slidingSeat'
import { seededRandom } from '../../quantity/seededRandom'
import { roundSeat } from './randomSeat'

const at = (angle: number, tension: number): { tension: ReturnType<typeof newtons>; turn: ReturnType<typeof radians>; edge: readonly [number, number] } =>
  ({ tension: newtons(tension), turn: radians(1.7), edge: [0.08 * Math.cos(angle), 0.08 * Math.sin(angle)] })

describe('friction at the knot', () => {
  it('holds one opposite pair up to e/a = tanh(mu alpha): T1 / T2 = (1 + e/a) / (1 - e/a) <= e^(2 mu alpha)', () => {
    const most = Math.tanh(0.13 * 1.7)
    for (const [share, held] of [[0, true], [0.98, true], [1.02, false]] as const) {
      expect(knotFriction([at(0.4, 30 * (1 + share * most)), at(0.4 + Math.PI, 30 * (1 - share * most))], 0.13).held).toBe(held)
    }
  })

  it('agrees with pulls tried at random: any that balance mean it is held', () => {
    const random = seededRandom(97)
    const seen = { held: 0, not: 0 }
    for (let n = 0; n < 120; n++) {
      const strands = Array.from({ length: 3 + (n % 3) }, (_, i) => at(i * 2.1 + 0.8 * random(), 10 + 20 * random()))
      const { held, spare } = knotFriction(strands, 0.15)
      if (Math.abs(spare) < 0.02) continue
      // Least imbalance over the box of pulls, by going round one pull after another; the sum is convex in them.
      const [low, high] = [Math.exp(-0.15 * 1.7), Math.exp(0.15 * 1.7)]
      const factors = strands.map(() => 1)
      let sum = [0, 0]
      for (let round = 0; round < 400; round++) {
        const i = round % strands.length
        const part = (j: number, factor: number): [number, number] => {
          const { tension, edge: [x, y] } = strands[j]!
          return [(factor * tension * x) / 0.08, (factor * tension * y) / 0.08]
        }
        sum = [0, 1].map((axis) => strands.reduce((all, _, j) => all + (j === i ? 0 : part(j, factors[j]!)[axis as 0 | 1]), 0))
        const [px, py] = part(i, 1)
        factors[i] = Math.min(high, Math.max(low, -(sum[0]! * px + sum[1]! * py) / (px * px + py * py)))
        sum = [sum[0]! + factors[i] * px, sum[1]! + factors[i] * py]
      }
      expect(Math.hypot(...sum) < 0.05).toBe(held)
      seen[held ? 'held' : 'not']++
    }
    expect(Math.min(seen.held, seen.not)).toBeGreaterThan(20)
  })

  it('is not held without any pull, or where an edge has no direction', () => {
    expect(knotFriction([], 0.2).held).toBe(false)
    expect(knotFriction([at(0, 0), at(2, 0), at(4, 0)], 0.2).held).toBe(false)
    expect(knotFriction([at(0, 3), { ...at(2, 3), edge: [0, 0] }, at(4, 3)], 0.2)).toMatchObject({ held: false, spare: -1 })
  })

  it('tells nothing of a grip beyond all numbers', () => {
    expect(knotFriction([0.4, 2.5, 4.6].map((angle) => ({ ...at(angle, 20), turn: radians(9000) })), 0.2)).toEqual({ held: false, spare: -1 })
  })

  // Square to a strand the other two give 2 sinh cos 30 of 3 cosh; along it all three give 2 sinh.
  it('of three equal strands a third of a turn apart has tanh(mu alpha) / sqrt(3) to spare, whatever they pull', () => {
    for (const pull of [2, 30]) expect(knotFriction([0, 1, 2].map((i) => at(0.4 + (i * 2 * Math.PI) / 3, pull)), 0.13).spare).toBeCloseTo(Math.tanh(0.13 * 1.7) / Math.sqrt(3), 12)
  })
})

describe('the offset that friction holds', () => {
  const directions = [0, 1, 2, 3].map((i) => radians(0.3 + (i * Math.PI) / 4))
  const seat = roundSeat({ legs: 4, ring: 0.113, leaveRadius: 0.113, leaveHeight: 0.15, baseRadius: 0.08, rise: 0.63, EA: 1e6, weight: 50, centre: 0.149 })
  const input = { sling: pinnedAt(seat), turns: seat.A.map(() => radians(1.6)), edges: seat.edge.map(([x, y]) => [x, y] as const), friction: 0.12, directions, most: metres(0.113) }

  // Upright legs: T = W/4 (1 + 2 (e/a) cos); along a strand only its own pair is uneven, (1 + 2 e/a) / (1 - 2 e/a) = e^(2 mu alpha).
  it('of four upright strands is half that of a pair, along a strand', () => {
    const { offset, direction } = heldOffset(input)
    expect(offset / (0.113 * 0.5 * Math.tanh(0.12 * 1.6))).toBeCloseTo(1, 2)
    expect(direction).toBeCloseTo(0.3, 9)
    expect(heldOffset(input).held).toBe(true)
  })

  it('is all that is asked where friction would hold more', () => {
    const most = metres(0.3 * heldOffset(input).offset)
    expect(heldOffset({ ...input, most })).toEqual({ held: true, offset: most, direction: null })
  })

  // Upright legs of strain e and length h right a pot up to a^2 / (2 e h) over their attachments (least eigenvalue of its tilt): with W / (4 EA) = 0.025 some 0.41 m.
  it('is nothing where the pot tips over, however even its strands pull', () => {
    const soft = pinnedAt(roundSeat({ legs: 4, ring: 0.113, leaveRadius: 0.113, leaveHeight: 0.15, baseRadius: 0.08, rise: 0.63, EA: 500, weight: 50, centre: 0.149 }))
    const heldAt = (above: number): boolean => heldOffset({ ...input, sling: { ...soft, cg: [soft.cg[0], soft.cg[1], 0.15 + above] }, directions: [] }).held
    expect([0.3, 0.6].map(heldAt)).toEqual([true, false])
  })

  it('is nothing where only two opposite strands carry, though their pulls balance at the knot', () => {
    const { sling } = input
    const sagging = { ...sling, cg: [sling.cg[0], sling.cg[1], 0.1] as const, L0: sling.L0.map((length, i) => length + (i % 2) * 0.01) }
    expect(solveSling(sagging)).toMatchObject({ status: 'LOST_SUPPORT', stable: true, slack: [false, true, false, true] })
    expect(heldOffset({ ...input, sling: sagging }).held).toBe(false)
  })

  it('grows with friction, is nothing where the knot slips as it is', () => {
    expect(heldOffset({ ...input, friction: 0.2 }).offset).toBeGreaterThan(heldOffset(input).offset)
    expect(heldOffset({ ...input, sling: { ...input.sling, cg: [0.05, 0, 0.149] } })).toEqual({ held: false, offset: 0, direction: null })
  })
})
