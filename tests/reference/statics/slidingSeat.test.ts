import nlopt from 'nlopt-js'
import { describe, expect, test } from 'vitest'
import { metres, radians } from '../../../src/quantity/si'
import { slidingSeatLimit } from '../../../src/statics/seat'
import { slidingHeightLimit, type HeightLimit } from '../../../src/statics/seat/slidingHeightLimit'
import { solveSlidingSeat, type SlidingSeat } from '../../../src/statics/seat/slidingSeat'
import type { Vec3 } from '../../../src/statics/sling/result'
import { seededRandom } from '../../unit/quantity/seededRandom'
import { randomSeat, roundSeat, wholeLengths } from '../../unit/statics/seat/randomSeat'

await nlopt.ready

const RISE = 0.587
const LEAVE = 0.13

function limitOf(found: HeightLimit): number {
  if (!found.ok || found.beyond) throw new Error(JSON.stringify(found))
  return found.limit - LEAVE
}
const limit = (seat: SlidingSeat): number => limitOf(slidingHeightLimit(seat, { least: metres(-0.5), most: metres(0.55), within: metres(1e-6), mostTilt: radians(0.02) }))

describe('equal strands from one point: y = h q / (1 + q), q = a^2/(2 l b) - a^2/(2 l^2) (energy of inextensible strands, derived symbolically)', () => {
  test.each([[3, 0.108, 0.0756], [4, 0.14, 0.0911], [5, 0.083, 0.08], [8, 0.16, 0.07]])('%d strands over a rim of %d m, base %d m', (legs, a, b) => {
    const seat = (EA: number): SlidingSeat => roundSeat({ legs, ring: 0, leaveRadius: a, leaveHeight: LEAVE, baseRadius: b, rise: RISE, EA, weight: 60, centre: 0.1 })
    const closed = slidingSeatLimit({ leaveRadius: metres(a), baseRadius: metres(b), free: metres(Math.hypot(a, RISE)), rise: metres(RISE) })
    expect(Math.abs(limit(seat(1e6)) - closed)).toBeLessThan(5e-4)
    // Ordinary cord gives way a little: some millimetres, to the unsafe side of the closed form.
    expect(closed - limit(seat(2900))).toBeGreaterThan(0)
    expect(closed - limit(seat(2900))).toBeLessThan(0.008)
  })
})

describe('four strands over the corners of a rectangle, by hand', () => {
  const atCorners = (X: number, Y: number, share: number): SlidingSeat => {
    const corners = ([[1, 1], [-1, 1], [-1, -1], [1, -1]] as const)
    const shape = {
      A: corners.map((): Vec3 => [0, 0, LEAVE + RISE]), B: corners.map(([x, y]): Vec3 => [x * X, y * Y, LEAVE]),
      edge: corners.map(([x, y]): Vec3 => [share * x * X, share * y * Y, 0]), knot: [0, 0, 0] as const, EA: [1e6, 1e6, 1e6, 1e6],
    }
    return { ...shape, L0: wholeLengths(shape, 60), mass: 60 / 9.80665, cg: [0, 0, 0], ell: X, gravity: 9.80665, wall: null }
  }

  // A hook moved by u along x lets the knot go by -(X / l) / cos(f) u, f the direction of a base corner, so that
  // q = X^2 tan(f)^2 / (b l) - X^2 / l^2; the same along y; the least counts.
  test.each([[0.19, 0.08, 0.75], [0.11, 0.07, 1]])('%d by %d m', (X, Y, share) => {
    const [l, b] = [Math.hypot(X, Y, RISE), share * Math.hypot(X, Y)]
    const along = (across: number, side: number): number => {
      const q = (across * side) ** 2 / (side * side * b * l) - side ** 2 / l ** 2
      return (RISE * q) / (1 + q)
    }
    expect(Math.abs(limit(atCorners(X, Y, share)) - Math.min(along(Y, X), along(X, Y)))).toBeLessThan(1e-3)
  })

  // Two strands: the centre of gravity must lie at least a^2 / h below the leave points (q = -a^2 / l^2).
  test('so narrow that they are two, it must lie a^2 / h below', () => {
    expect(limit(atCorners(0.17, 0.002, 0.7))).toBeCloseTo(-(0.17 ** 2) / RISE, 3)
  })
})

describe('beside a general minimiser (NLopt), which knows the energy alone and moves pot and knot, nine numbers, at once', () => {
  const turned = ([w, x, y, z]: readonly number[], [a, b, c]: readonly number[]): readonly number[] => {
    const [W, X, Y, Z, A, B, C] = [w, x, y, z, a, b, c] as [number, number, number, number, number, number, number]
    const n = W * W + X * X + Y * Y + Z * Z
    return [
      ((W * W + X * X - Y * Y - Z * Z) * A + 2 * (X * Y - W * Z) * B + 2 * (X * Z + W * Y) * C) / n,
      (2 * (X * Y + W * Z) * A + (W * W - X * X + Y * Y - Z * Z) * B + 2 * (Y * Z - W * X) * C) / n,
      (2 * (X * Z - W * Y) * A + 2 * (Y * Z + W * X) * B + (W * W - X * X - Y * Y + Z * Z) * C) / n,
    ]
  }

  function energy({ A, B, edge, knot, L0, EA, mass, gravity, cg }: SlidingSeat, x: readonly number[]): number {
    const apart = (p: readonly number[], q: readonly number[]): number => Math.hypot(...p.map((value, i) => value - q[i]!))
    const at = [knot[0] + x[7]!, knot[1] + x[8]!, knot[2]]
    return A.reduce((sum, a, i) => {
      const b = turned(x.slice(3, 7), B[i]!.map((value, j) => value - cg[j]!)).map((value, j) => value + x[j]!)
      const way = apart(a, b) + apart(B[i]!, edge[i]!) + apart(edge[i]!, at)
      return sum + (EA[i]! / (2 * L0[i]!)) * Math.max(0, way - L0[i]!) ** 2
    }, mass * gravity * x[2]!)
  }

  /** Rest found by sequential quadratic programming with slopes from differences; null where it gave up. */
  function rest(seat: SlidingSeat): { readonly cg: readonly number[]; readonly tilt: number; readonly energy: number } | null {
    const opt = new nlopt.Optimize(nlopt.Algorithm.LD_SLSQP, 9)
    opt.setMinObjective((x, gradient) => {
      if (gradient !== null) for (let i = 0; i < 9; i++) gradient[i] = (energy(seat, x.map((v, j) => (i === j ? v + 1e-6 : v))) - energy(seat, x.map((v, j) => (i === j ? v - 1e-6 : v)))) / 2e-6
      return energy(seat, x)
    }, 1e-13)
    opt.setMaxeval(1000)
    try {
      const found = opt.optimize([0, 0, seat.cg[2], 1, 0.001, -0.0007, 0, 0, 0])
      const axis = turned(found.x.slice(3, 7), [0, 0, 1])
      return found.success ? { cg: found.x.slice(0, 3), tilt: Math.acos(axis[2]!), energy: found.value } : null
    } catch {
      return null
    } finally {
      nlopt.GC.flush()
    }
  }

  test('random seats come to rest in the same place, and those that will not last end elsewhere', () => {
    const random = seededRandom(71)
    let [same, gone] = [0, 0]
    for (let i = 0; i < 60; i++) {
      const seat = randomSeat(random, false)
      const ours = solveSlidingSeat(seat)
      const theirs = rest(seat)
      if (theirs === null) continue
      if ('T' in ours && ours.stable) {
        expect(theirs.cg[2]!, `${i}`).toBeCloseTo(ours.cg[2], 4)
        expect(theirs.tilt).toBeCloseTo(ours.tiltRadians, 2)
        same++
      } else if (ours.status === 'UNSTABLE') {
        expect(theirs.tilt).toBeGreaterThan(0.2)
        gone++
      }
    }
    expect(same).toBeGreaterThan(25)
    expect(gone).toBeGreaterThan(3)
  })

  test('it tips where the limit says, of strands from a ring', () => {
    for (const [legs, ring] of [[4, 0.04], [5, 0.09]] as const) {
      const seat = (centre: number): SlidingSeat => roundSeat({ legs, ring, leaveRadius: 0.12, leaveHeight: LEAVE, baseRadius: 0.085, rise: RISE, EA: 4000, weight: 60, centre })
      const at = LEAVE + limit(seat(0.1))
      expect(rest(seat(at - 0.01))!.tilt).toBeLessThan(0.01)
      expect(rest(seat(at + 0.01))!.tilt).toBeGreaterThan(0.05)
    }
  })
})
