import { describe, expect, test } from 'vitest'
import { metres } from '../../../src/quantity/si'
import { lockedSeatLimit, slidingSeatLimit } from '../../../src/statics/seat'
import { strandedSeatLimit, type SeatStrand } from '../../../src/statics/strandedSeat'

const RISE = 0.587

/** Strands over points of a rim and of a base edge, each bearing so much of the weight. */
const strandsAt = (points: readonly (readonly [number, number])[], base: number, shares: readonly number[], strain: number): readonly SeatStrand[] =>
  points.map(([x, y], i) => ({ leave: [x, y], edge: [x * base, y * base], share: shares[i] ?? NaN, strain, stretches: Math.hypot(x, y, RISE) }))

const circle = (count: number, radius: number): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_, i) => [radius * Math.cos(0.4 + (2 * Math.PI * i) / count), radius * Math.sin(0.4 + (2 * Math.PI * i) / count)])
const even = (count: number): readonly number[] => new Array<number>(count).fill(1 / count)
const limit = (strands: readonly SeatStrand[], locked: boolean): number => strandedSeatLimit({ strands, rise: metres(RISE), locked })

describe('equal strands round a circle: the limits derived for round pots (energy, symbolic; sway and tilt block of a symmetric sling)', () => {
  test.each([3, 4, 5, 8, 12])('%d strands', (count) => {
    const free = metres(Math.hypot(0.108, RISE))
    const seat = { leaveRadius: metres(0.108), baseRadius: metres(0.0756), free, rise: metres(RISE) }
    expect(limit(strandsAt(circle(count, 0.108), 0.7, even(count), 0), false)).toBeCloseTo(slidingSeatLimit(seat), 6)
    for (const strain of [0.004, 0.03]) {
      expect(limit(strandsAt(circle(count, 0.108), 0.7, even(count), strain), true)).toBeCloseTo(lockedSeatLimit(metres(0.108), free, metres(RISE), strain), 12)
    }
  })
})

describe('a rectangle, by hand', () => {
  // Four strands over corners (X, Y), ridges down to corners of the base: a hook moved by u along x lets the knot go
  // by -(X / l) / cos(f) u, f the direction of a base corner, so that D > h / (1 + q), q = X^2 tan(f)^2 / (b l) - X^2 / l^2;
  // the same along y with the other side. The least of both counts.
  test.each([[0.19, 0.08, 0.75], [0.15, 0.15, 0.6], [0.11, 0.07, 1]])('%d by %d m at its corners', (X, Y, base) => {
    const corners = ([[1, 1], [-1, 1], [-1, -1], [1, -1]] as const).map(([x, y]) => [x * X, y * Y] as const)
    const [l, b] = [Math.hypot(X, Y, RISE), base * Math.hypot(X, Y)]
    const along = (across: number, side: number): number => {
      const q = (across * side) ** 2 / (side * side * b * l) - side ** 2 / l ** 2
      return (RISE * q) / (1 + q)
    }
    const byHand = Math.min(along(Y, X), along(X, Y))
    expect(limit(strandsAt(corners, base, even(4), 0), false)).toBeCloseTo(byHand, 6)
  })

  // Locked, along the shorter side: D > h / (1 + (Y / l)^2 / eps).
  test('locked, it tips over its long side', () => {
    const [X, Y] = [0.19, 0.08]
    const corners = ([[1, 1], [-1, 1], [-1, -1], [1, -1]] as const).map(([x, y]) => [x * X, y * Y] as const)
    const q = Y ** 2 / (0.01 * Math.hypot(X, Y, RISE) ** 2)
    expect(limit(strandsAt(corners, 0.8, even(4), 0.01), true)).toBeCloseTo((RISE * q) / (1 + q), 12)
  })
})

test('turning all strands about the axis changes nothing', () => {
  const turned = (angle: number): number => limit([[0.16, 0.05], [-0.11, 0.09], [-0.02, -0.13]].map(([x = 0, y = 0]): SeatStrand => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    return { leave: [c * x - s * y, s * x + c * y], edge: [0.7 * (c * x - s * y), 0.7 * (s * x + c * y)], share: 1 / 3, strain: 0.01, stretches: 0.9 }
  }), false)
  for (const angle of [0.3, 1.1, 4]) expect(turned(angle)).toBeCloseTo(turned(0), 12)
})
