import { describe, expect, test } from 'vitest'
import { metres, radians } from '../../../../src/quantity/si'
import { slidingHeightLimit } from '../../../../src/statics/seat/slidingHeightLimit'
import { roundSeat } from './randomSeat'

const [LEAVE, RISE, RADIUS, BASE] = [0.13, 0.587, 0.108, 0.0756]
const seat = roundSeat({ legs: 4, ring: 0, leaveRadius: RADIUS, leaveHeight: LEAVE, baseRadius: BASE, rise: RISE, EA: 1e6, weight: 60, centre: 0.1 })
const range = { least: metres(-0.1), most: metres(0.55), within: metres(1e-4), mostTilt: radians(0.02) }

// Energy of inextensible strands: y = h q / (1 + q) over the leave points, q = a^2/(2 l b) - a^2/(2 l^2).
const free = Math.hypot(RADIUS, RISE)
const q = RADIUS ** 2 / (2 * free * BASE) - RADIUS ** 2 / (2 * free * free)
const byHand = LEAVE + (RISE * q) / (1 + q)

describe('how high the centre of gravity may stand on strands that slide', () => {
  test('is by hand h q / (1 + q) over where they leave, told as closely as asked and never above it', () => {
    const close = slidingHeightLimit(seat, { ...range, within: metres(1e-7) })
    expect(close).toMatchObject({ ok: true, beyond: false })
    const limit = close.ok ? close.limit : NaN
    expect(Math.abs(limit - byHand)).toBeLessThan(5e-4)
    for (const within of [0.2, 0.01]) {
      const coarse = slidingHeightLimit(seat, { ...range, within: metres(within) })
      expect(coarse.ok && coarse.limit <= limit + 1e-7 && coarse.limit > limit - within).toBe(true)
    }
    // Halves of 0.65 m until they are no longer than 0.01 m: 0.65 / 2^7 = 0.0051, and the answer stands on one of them.
    const coarse = slidingHeightLimit(seat, { ...range, within: metres(0.01) })
    expect((((coarse.ok ? coarse.limit : NaN) + 0.1) * 2 ** 7) / 0.65).toBeCloseTo(Math.floor(((limit + 0.1) * 2 ** 7) / 0.65), 6)
  })

  test('is all that is looked at where nothing tips it up to there, none where it tips at once', () => {
    expect(slidingHeightLimit(seat, { ...range, most: metres(byHand - 0.01) })).toEqual({ ok: true, limit: byHand - 0.01, beyond: true })
    expect(slidingHeightLimit(seat, { ...range, least: metres(byHand + 0.01) })).toEqual({ ok: false, reason: 'TIPS_AT_LEAST', least: byHand + 0.01 })
  })

  test('is none for a weight so far aside that it leans too much', () => {
    const aside = { ...seat, cg: [0.06, 0, 0.1] as const }
    expect(slidingHeightLimit(aside, range)).toMatchObject({ ok: false, reason: 'TIPS_AT_LEAST' })
  })

  test('is not told of a seat that makes no sense', () => {
    expect(slidingHeightLimit({ ...seat, mass: 0 }, range)).toEqual({ ok: false, reason: 'ERROR', error: 'BAD_MASS' })
  })
})
