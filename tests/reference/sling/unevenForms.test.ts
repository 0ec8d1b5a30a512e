import { describe, expect, it } from 'vitest'
import type { SlingInput, Vec3 } from '../../../src/statics/sling/result'
import { solveSling } from '../../../src/statics/sling/solveSling'
import { distance, GRAVITY, lowerEnds, restOf, ringed, sum } from './hangers'

// Closed forms of textbook statics for hangers that are not evenly loaded. Each expected value is the
// hand formula. Stiff legs (EA up to 1e8 N) stand for inextensible ones where the formula is for those.
const STIFF = 1e8

describe('two unequal legs', () => {
  // Two parallel planes with the same pair of legs in each: T1 = W sin b2 / sin(b1 + b2) for both planes together.
  it('share the weight by the sines of each other\'s angles', () => {
    const W = 53
    const input: SlingInput = {
      A: [[-0.3, -0.05, 1.2], [-0.3, 0.05, 1.2], [0.45, -0.05, 1.35], [0.45, 0.05, 1.35]],
      B: [[-0.02, -0.05, 0.1], [-0.02, 0.05, 0.1], [0.02, -0.05, 0.1], [0.02, 0.05, 0.1]],
      L0: [0.7, 0.7, 0.95, 0.95], EA: [3000, 3000, 2200, 2200],
      mass: W / GRAVITY, cg: [0.004, 0, 0.02], ell: 0.05, gravity: GRAVITY, wall: null,
    }
    const rest = restOf(input)
    const ends = lowerEnds(input, rest)
    const angle = (i: number): number => Math.atan2(Math.abs(input.A[i]![0] - ends[i]![0]), input.A[i]![2] - ends[i]![2])
    const b1 = angle(0)
    const b2 = angle(2)
    expect(2 * rest.T[0]!).toBeCloseTo((W * Math.sin(b2)) / Math.sin(b1 + b2), 8)
    expect(2 * rest.T[2]!).toBeCloseTo((W * Math.sin(b1)) / Math.sin(b1 + b2), 8)
    expect(rest.T[1]! / rest.T[0]!).toBeCloseTo(1, 8)
  })
})

describe('two legs left of three on one hook', () => {
  const { a, zb, L, W } = { a: 0.14, zb: 0.21, L: 0.8, W: 44 }
  const whole = ringed({ legs: 3, a, r0: 0, L0: L, EA: STIFF, weight: W, zb, ell: 0.1 })

  it('turn the pot about their chord until hook, middle of the chord and centre of gravity are in line', () => {
    const rest = restOf({ ...whole, L0: [5, L, L] })
    const height = Math.sqrt(L ** 2 - (Math.sqrt(3) * a / 2) ** 2) // chord a sqrt 3
    expect(rest.status).toBe('LOST_SUPPORT')
    expect(rest.slack).toEqual([true, false, false])
    expect(rest.tiltRadians).toBeCloseTo(Math.atan(a / 2 / zb), 6)
    expect(rest.T[1]).toBeCloseTo((W * L) / (2 * height), 4)
    expect(rest.T[2]).toBeCloseTo((W * L) / (2 * height), 4)
  })

  it('cannot be asked for as a sling of two', () => {
    expect(solveSling({ ...whole, A: whole.A.slice(1), B: whole.B.slice(1), L0: whole.L0.slice(1), EA: whole.EA.slice(1) })).toEqual({ status: 'ERROR', error: 'TOO_FEW_LEGS' })
  })
})

describe('three vertical legs', () => {
  const upper: Vec3[] = [[0.13, 0.01, 1.4], [-0.05, 0.12, 1.4], [-0.07, -0.09, 1.4]]
  const input = (x: number, y: number): SlingInput => ({
    A: upper, B: upper.map(([bx, by]): Vec3 => [bx, by, 0.2]), L0: [1, 1, 1], EA: [STIFF, STIFF, STIFF],
    mass: 6, cg: [x, y, 0.08], ell: 0.12, gravity: GRAVITY, wall: null,
  })
  const cross = (a: Vec3, b: Vec3, x: number, y: number): number => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])
  const [b1, b2, b3] = upper as [Vec3, Vec3, Vec3]
  const whole = cross(b1, b2, b3[0], b3[1])
  const shares = (x: number, y: number): number[] => [cross(b2, b3, x, y) / whole, cross(b3, b1, x, y) / whole, cross(b1, b2, x, y) / whole]

  it('carry the barycentric coordinates of the centre of gravity', () => {
    const { T } = restOf(input(0.017, 0.031))
    shares(0.017, 0.031).forEach((share, i) => expect(T[i]! / (6 * GRAVITY)).toBeCloseTo(share, 5))
  })

  it('lose the leg whose coordinate is negative', () => {
    const outside = shares(-0.09, 0.03)
    expect(outside.map((share) => share < 0)).toEqual([true, false, false])
    const rest = restOf(input(-0.09, 0.03))
    expect(rest.status).toBe('LOST_SUPPORT')
    expect(rest.slack).toEqual([true, false, false])
  })
})

describe('four vertical legs on a square', () => {
  const { a, L, k, W } = { a: 0.12, L: 1, k: 3e5, W: 80 }
  const input = (delta: number, ex: number, ey: number, zb: number): SlingInput => {
    const even = ringed({ legs: 4, a, r0: a, L0: L, EA: k * L, weight: W, zb, ell: a })
    return { ...even, cg: [ex, ey, 0.1], L0: [L + delta, L, L, L] }
  }

  it('share a longer leg and an offset: W/4 -+ k delta/4 +- W e/(2a), tilt delta/(2a)', () => {
    const { delta, ex, ey } = { delta: 4e-5, ex: 0.009, ey: -0.005 }
    const { T } = restOf(input(delta, ex, ey, 0))
    const expected = [
      W / 4 - (k * delta) / 4 + (W * ex) / (2 * a), W / 4 + (k * delta) / 4 + (W * ey) / (2 * a),
      W / 4 - (k * delta) / 4 - (W * ex) / (2 * a), W / 4 + (k * delta) / 4 - (W * ey) / (2 * a),
    ]
    T.forEach((value, i) => expect(Math.abs(value - expected[i]!) / W).toBeLessThan(1e-4))
    expect(restOf(input(delta, 0, 0, 0)).tiltRadians / (delta / (2 * a))).toBeCloseTo(1, 3)
  })

  it('shift by W zb theta / (2a) when the attachments stand above the centre of gravity', () => {
    const { delta, zb } = { delta: 1e-4, zb: 5 } // far above, so that the shift is large enough to see
    const { T, tiltRadians } = restOf(input(delta, 0, 0, zb))
    const theta = (k * delta * a) / (2 * a ** 2 * k + W * zb)
    const shift = (W * zb * theta) / (2 * a)
    expect(tiltRadians / theta).toBeCloseTo(1, 3)
    expect(shift / W).toBeGreaterThan(0.005)
    expect(T[0]! / (W / 4 - (k * delta) / 4 - shift)).toBeCloseTo(1, 3)
    expect(T[2]! / (W / 4 - (k * delta) / 4 + shift)).toBeCloseTo(1, 3)
  })

  it('go slack in pairs when one leg is longer by four stretches, W/k', () => {
    const before = restOf(input(0.98 * (W / k), 0, 0, 1e-4))
    const after = restOf(input(1.05 * (W / k), 0, 0, 1e-4))
    expect(before.slack).toEqual([false, false, false, false])
    expect(after.slack[0]).toBe(true)
    expect(after.T[2]! / W).toBeLessThan(1e-5) // all that holds the pot from rocking on the other two
    expect(after.T[1]! / W).toBeCloseTo(0.5, 5)
    expect(after.T[3]! / W).toBeCloseTo(0.5, 5)
  })
})

describe('vertical legs with one cut', () => {
  // T_j = (W/m) [1 + (1 + 2 cos phi_j) / (m - 3)], phi_j from the cut leg.
  it.each([[4, 2], [5, 1.809017], [6, 1.666667], [8, 1.482843]])('of %i: the peak is %f of W/m', (m, peak) => {
    const W = 70
    const whole = ringed({ legs: m, a: 0.15, r0: 0.15, L0: 0.9, EA: STIFF, weight: W, zb: 0, ell: 0.15 })
    const { T } = restOf({ ...whole, A: whole.A.slice(1), B: whole.B.slice(1), L0: whole.L0.slice(1), EA: whole.EA.slice(1) })
    const expected = T.map((_, j) => (W / m) * (1 + (1 + 2 * Math.cos((2 * Math.PI * (j + 1)) / m)) / (m - 3)))
    T.forEach((value, j) => expect(Math.abs(value - expected[j]!) / W).toBeLessThan(2e-6))
    expect(Math.max(...T) / (W / m)).toBeCloseTo(peak, 4)
    expect(sum(T) / W).toBeCloseTo(1, 6)
  })
})

describe('a pot on one hook with its centre of gravity off the axis', () => {
  it('tilts by atan(e/D), D from hook to centre of gravity along the axis', () => {
    const e = 0.013
    const a = 0.11
    const L = 0.75
    const even = ringed({ legs: 5, a, r0: 0, L0: L, EA: STIFF, weight: 60, zb: 0.06, ell: 0.1 })
    const rest = restOf({ ...even, cg: [e * Math.cos(0.7), e * Math.sin(0.7), 0.1] })
    const D = Math.sqrt(L ** 2 - a ** 2) + 0.06
    expect(rest.slack).not.toContain(true)
    expect(rest.tiltRadians).toBeCloseTo(Math.atan(e / D), 6)
    expect(distance(rest.cg, [0, 0, rest.cg[2]])).toBeLessThan(1e-9)
  })
})
