import { describe, expect, it } from 'vitest'
import { metres, radians } from '../../../../src/quantity/si'
import { pinnedAt, type SlidingSeat } from '../../../../src/statics/seat/slidingSeat'
import { pinnedTipPush, slidingTipPush, type TipPush } from '../../../../src/statics/seat/tipPush'
import { seededRandom } from '../../quantity/seededRandom'
import { randomSeat, roundSeat } from './randomSeat'

const round = { legs: 5, ring: 0, leaveRadius: 0.108, leaveHeight: 0.15, baseRadius: 0.076, rise: 0.587, EA: 2900, weight: 60, centre: 0.1 }
const at = (height: number, ...directions: number[]): Parameters<typeof pinnedTipPush>[1] => ({ height: metres(height), directions: directions.map(radians), tipsAbove: radians(0.25) })

function pushOf(push: TipPush): Extract<TipPush, { ok: true }> {
  if (!push.ok) throw new Error(push.reason)
  return push
}

describe('the push that tips', () => {
  // Upright legs keep the pot level while it swings: weight and push together lean by atan(F / W).
  it('of a pot on upright legs is its weight times the tangent of the angle', () => {
    const seat = roundSeat({ ...round, ring: 0.108, EA: 1e6 })
    const push = pushOf(pinnedTipPush(pinnedAt(seat), at(0.1, 0.4, 2)))
    expect(push.share).toBeCloseTo(Math.tan(0.25), 3)
    expect(push.how).toBe('LEANS')
    expect(push.tilt).toBeLessThan(0.002)
  })

  // Pushed at its centre of gravity under one hook it swings out in line with its strands.
  it('does not exist for a pot that swings in line with its hanger; it has done the work of lifting it', () => {
    const seat = roundSeat({ ...round, EA: 1e7 })
    const push = pushOf(pinnedTipPush(pinnedAt(seat), at(0.1, 1)))
    expect(push.tips).toBe(false)
    expect(push.tilt).toBeCloseTo(Math.atan(2), 4)
    expect(push.work).toBeCloseTo(60 * 0.637 * (1 - Math.cos(Math.atan(2))), 2)
  })

  it('is less on sliding strands, less the farther from the leave points it acts, and the same whichever way a round pot is pushed', () => {
    const seat = roundSeat(round)
    const low = pushOf(slidingTipPush(seat, at(0.15, 0.7))).share
    const high = pushOf(slidingTipPush(seat, at(0.2, 0.7))).share
    expect(high).toBeLessThan(low)
    expect(low).toBeLessThan(pushOf(pinnedTipPush(pinnedAt(seat), at(0.15, 0.7))).share)
    for (const direction of [0.3, 0.7, 2, 3.1, 5]) expect(pushOf(slidingTipPush(seat, at(0.2, direction))).share).toBeCloseTo(high, 2)
  })

  it('is the least of all directions', () => {
    const seat = roundSeat({ ...round, legs: 3, ring: 0.05 })
    const each = [0.3, 1.3, 2.4, 3.4].map((direction) => pushOf(slidingTipPush(seat, at(0.2, direction))).share)
    expect(pushOf(slidingTipPush(seat, at(0.2, 0.3, 1.3, 2.4, 3.4))).share).toBeCloseTo(Math.min(...each), 2)
    expect(Math.max(...each)).toBeGreaterThan(1.1 * Math.min(...each))
  })

  it('is not asked of what tips by itself, or cannot hang', () => {
    const seat = roundSeat({ ...round, centre: 0.3 })
    expect(slidingTipPush(seat, at(0.2, 0))).toEqual({ ok: false, reason: 'TIPS_BY_ITSELF' })
    const shorter: SlidingSeat = { ...seat, L0: seat.L0.map(() => 0.2) }
    expect(slidingTipPush(shorter, at(0.2, 0))).toEqual({ ok: false, reason: 'ERROR', error: 'SHORTER_THAN_WAY_ROUND' })
    expect(pinnedTipPush({ ...pinnedAt(seat), mass: 0 }, at(0.2, 0))).toEqual({ ok: false, reason: 'ERROR', error: 'BAD_MASS' })
  })

  it('is a number for every random hanger that stands, by itself or against a wall', () => {
    const random = seededRandom(53)
    for (let i = 0; i < 60; i++) {
      const push = slidingTipPush(randomSeat(random, i % 2 === 0), at(0.2, 1, 4))
      if (push.ok) expect([push.force, push.work, push.lean, push.tilt].every(Number.isFinite) && push.force >= 0).toBe(true)
    }
  })
})
