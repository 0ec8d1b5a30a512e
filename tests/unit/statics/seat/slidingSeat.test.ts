import { describe, expect, it } from 'vitest'
import { symmetricEigenvalues } from '../../../../src/statics/linear/symmetricEigenvalues'
import { evaluate } from '../../../../src/statics/sling/energy'
import { hangUpright } from '../../../../src/statics/sling/hangUpright'
import { newPoint, type Point } from '../../../../src/statics/sling/point'
import { movePose } from '../../../../src/statics/sling/pose'
import type { Scene } from '../../../../src/statics/sling/scene'
import { poseOf } from '../../../../src/statics/sling/freeTurn'
import type { Vec3 } from '../../../../src/statics/sling/result'
import { slidingScene, solveSlidingSeat, type SlidingSeat, type SlidingSeatResult } from '../../../../src/statics/seat/slidingSeat'
import { seededRandom } from '../../quantity/seededRandom'
import { randomSeat, roundSeat } from './randomSeat'

const random = seededRandom(41)
const STEP = 1e-6
const plain = { legs: 5, ring: 0.03, leaveRadius: 0.117, leaveHeight: 0.14, baseRadius: 0.081, rise: 0.63, EA: 2700, weight: 71, centre: 0.09 }

function moved(scene: Scene, from: Point, direction: number, by: number): Point {
  const step = new Float64Array(6)
  step[direction] = by
  const point = newPoint()
  movePose(from.pose, step, scene.ell, point.pose)
  evaluate(scene, point)
  return point
}

function somewhere(scene: Scene): Point {
  const point = newPoint()
  hangUpright(scene, point.pose)
  movePose(point.pose, Float64Array.from({ length: 6 }, (_, i) => (i === 2 ? -0.02 : 0.03 * (random() - 0.5))), scene.ell, point.pose)
  evaluate(scene, point)
  return point
}

/** Energy of pot and knot, all eight unknowns free, written anew from the model: V = sum EA/(2 L0) (S - L0)^2 + W z. */
function wholeEnergy(seat: SlidingSeat, { pose }: Point, motion: readonly number[]): number {
  const to = newPoint().pose
  movePose(pose, Float64Array.from(motion.slice(0, 6)), seat.ell, to)
  const [u = 0, v = 0] = motion.slice(6)
  let energy = seat.mass * seat.gravity * to.p[2]!
  seat.A.forEach((A, i) => {
    const b = seat.B[i]!, e = seat.edge[i]!
    const arm = b.map((x, j) => x - seat.cg[j]!)
    const at = [0, 1, 2].map((j) => to.p[j]! + to.R[3 * j]! * arm[0]! + to.R[3 * j + 1]! * arm[1]! + to.R[3 * j + 2]! * arm[2]! - A[j]!)
    const way = Math.hypot(...at) + Math.hypot(...b.map((x, j) => x - e[j]!)) + Math.hypot(e[0] - seat.knot[0] - u, e[1] - seat.knot[1] - v, e[2] - seat.knot[2])
    energy += (seat.EA[i]! / (2 * seat.L0[i]!)) * Math.max(0, way - seat.L0[i]!) ** 2
  })
  return energy
}

describe('the energy of a pot on sliding strands', () => {
  it.each(Array.from({ length: 10 }, (_, i) => i))('has the gradient and Hessian that it says, pushed or not (%i)', (i) => {
    const scene = slidingScene(randomSeat(random, false))
    if (i % 2 === 1) scene.push = { force: [7, -3, 2], arm: [0.02, -0.05, 0.13] }
    const point = somewhere(scene)
    const largest = Math.max(...point.hessian)
    for (let a = 0; a < 6; a++) {
      expect(Math.abs((moved(scene, point, a, STEP).energy - moved(scene, point, a, -STEP).energy) / (2 * STEP) - point.gradient[a]!) / scene.weight).toBeLessThan(1e-6)
      for (let b = 0; b < 6; b++) {
        const change = (from: number, along: number): number => (moved(scene, point, along, STEP).gradient[from]! - moved(scene, point, along, -STEP).gradient[from]!) / (2 * STEP)
        expect(Math.abs((change(a, b) + change(b, a)) / 2 - point.hessian[6 * a + b]!) / largest).toBeLessThan(1e-6)
      }
    }
  })

  it('is the least over the places of the knot, and bends down in as many directions as that of all eight unknowns', () => {
    let unstable = 0
    for (let n = 0; n < 40; n++) {
      const seat = n % 3 > 0 ? randomSeat(random, false) : roundSeat({ ...plain, legs: 3 + (n % 4), ring: 0.09 * random(), centre: 0.2 + 0.2 * random() })
      const result = solveSlidingSeat(seat)
      const balance = 'T' in result ? result : result.status === 'UNSTABLE' ? result.upright : null
      if (balance === null) continue
      const scene = slidingScene(seat)
      const point = newPoint()
      point.pose.p.set(balance.cg)
      point.pose.R.set(poseOf(balance).R)
      evaluate(scene, point)
      const knot = [...scene.knot!.at]
      const at = (motion: readonly number[]): number => wholeEnergy(seat, point, motion.map((x, i) => (i < 6 ? x : x + knot[i - 6]!)))
      const none = new Array<number>(8).fill(0)
      expect(Math.abs(at(none) - point.energy)).toBeLessThan(1e-6)
      const h = 2e-4
      const by = (a: number, x: number, b: number, y: number): number => at(none.map((_, i) => (i === a ? x : 0) + (i === b ? y : 0)))
      for (const a of [6, 7]) expect(Math.abs(by(a, STEP, a, 0) - by(a, -STEP, a, 0)) / (2 * STEP) / scene.weight).toBeLessThan(1e-4)
      const whole = Float64Array.from({ length: 64 }, (_, i) => {
        const [a, b] = [Math.floor(i / 8), i % 8]
        return (by(a, h, b, h) - by(a, h, b, -h) - by(a, -h, b, h) + by(a, -h, b, -h)) / (4 * h * h)
      })
      // Clear of zero, and of strands on the verge of going slack, differences tell the sign.
      if (Math.abs(balance.eigMinNonzero) < 0.2 || balance.slack.includes(true)) continue
      const negative = symmetricEigenvalues(8, whole).filter((x) => x < -0.02).length
      expect(negative).toBe(balance.negative)
      unstable += Math.min(1, negative)
    }
    expect(unstable).toBeGreaterThan(2)
  })
})

describe('a rest on sliding strands', () => {
  const turned = (angle: number, flip: 1 | -1): ((point: Vec3) => Vec3) => ([x, y, z]) => [Math.cos(angle) * x - flip * Math.sin(angle) * y, Math.sin(angle) * x + flip * Math.cos(angle) * y, z]
  const mapped = (seat: SlidingSeat, map: (point: Vec3) => Vec3): SlidingSeat =>
    ({ ...seat, A: seat.A.map(map), B: seat.B.map(map), edge: seat.edge.map(map), knot: map(seat.knot), cg: map(seat.cg) })
  const told = (result: SlidingSeatResult): { status: string; T: readonly number[]; tilt: number } => {
    const tilt = 'tiltRadians' in result ? result.tiltRadians : 0
    return { status: result.status, T: 'T' in result ? result.T : [], tilt }
  }
  const same = (a: SlidingSeatResult, b: SlidingSeatResult, factor: number): void => {
    const [one, other] = [told(a), told(b)]
    expect(other.status).toBe(one.status)
    one.T.forEach((t, i) => expect(other.T[i]! / factor).toBeCloseTo(t, 5))
    expect(other.tilt).toBeCloseTo(one.tilt, 6)
  }

  it('does not mind being turned, mirrored, or made larger or heavier with its strands', () => {
    for (let i = 0; i < 30; i++) {
      const seat = randomSeat(random, false)
      const rest = solveSlidingSeat(seat)
      same(rest, solveSlidingSeat(mapped(seat, turned(1.234, 1))), 1)
      same(rest, solveSlidingSeat(mapped(seat, turned(0.6, -1))), 1)
      same(rest, solveSlidingSeat({ ...seat, mass: 3 * seat.mass, EA: seat.EA.map((x) => 3 * x) }), 3)
      const longer = mapped(seat, ([x, y, z]) => [2 * x, 2 * y, 2 * z])
      same(rest, solveSlidingSeat({ ...longer, L0: seat.L0.map((x) => 2 * x), ell: 2 * seat.ell }), 1)
    }
  })

  it('lasts no less with its centre of gravity lower', () => {
    for (let i = 0; i < 60; i++) {
      const seat = randomSeat(random, false)
      const high = solveSlidingSeat(seat)
      if (!('T' in high && high.stable)) continue
      expect(solveSlidingSeat({ ...seat, cg: [seat.cg[0], seat.cg[1], 0.7 * seat.cg[2]] }).status, JSON.stringify(seat)).not.toBe('UNSTABLE')
    }
  })

  it('leans on a wall as any sling does', () => {
    const result = solveSlidingSeat({ ...roundSeat(plain), wall: { n: [0, 1, 0], d: 0.09, contacts: [{ type: 'circle', z: 0.14, r: 0.12 }, { type: 'circle', z: 0, r: 0.08 }] } })
    expect('wallN' in result && result.wallN.some((N) => N > 0.5)).toBe(true)
  })

  it('is answered for a thousand random hangers', () => {
    for (let i = 0; i < 1000; i++) {
      const result = solveSlidingSeat(randomSeat(random, false))
      expect(['ERROR', 'NOT_CONVERGED']).not.toContain(result.status)
      if (result.status !== 'NOT_CONVERGED' && result.status !== 'ERROR') expect(result.residualRel).toBeLessThan(1e-9)
    }
  })
})

describe('what cannot hang so', () => {
  const seat = roundSeat(plain)
  const error = (change: Partial<SlidingSeat>): string => {
    const result = solveSlidingSeat({ ...seat, ...change })
    return result.status === 'ERROR' ? result.error : result.status
  }
  const two = <T>(list: readonly T[]): readonly T[] => list.slice(0, 2)

  it.each<[string, Partial<SlidingSeat>]>([
    ['TOO_FEW_LEGS', { A: two(seat.A), B: two(seat.B), edge: two(seat.edge), L0: two(seat.L0), EA: two(seat.EA) }],
    ['ATTACHMENTS_COLLINEAR', { B: seat.B.map((_, i): Vec3 => [0.02 * i, 0, 0.14]) }],
    ['ATTACHMENTS_COINCIDE', { B: seat.B.map((): Vec3 => [0, 0, 0.14]) }],
    ['ZERO_STIFFNESS', { EA: [2700, 0, 2700, 2700, 2700] }],
    ['BAD_MASS', { mass: 0 }],
    ['BAD_LENGTH', { L0: [0, 1, 1, 1, 1] }],
    // So short below nothing that not even their free parts would meet.
    ['BAD_LENGTH', { A: seat.B.map(([x, y]): Vec3 => [3 * x, 3 * y, 0.9]), L0: seat.B.map(([x, y, z]) => -0.95 * Math.hypot(2 * x, 2 * y, 0.9 - z)) }],
    ['NOT_FINITE', { edge: seat.edge.map((): Vec3 => [NaN, 0, 0]) }],
    ['NOT_FINITE', { L0: seat.L0.slice(1) }],
    ['SHORTER_THAN_WAY_ROUND', { L0: seat.L0.map(() => 0.2) }],
    ['NO_WAY_UNDER_BASE', { edge: seat.edge.map((): Vec3 => [0, 0, 0]) }],
  ])('%s', (code, change) => expect(error(change)).toBe(code))

  it('is told, or answered without NaN and without end, whatever the numbers', () => {
    const wild = (): number => [0, 1e-9, 1, -1, 1e9, NaN, Infinity, 0.1][Math.floor(24 * random())] ?? random() - 0.3
    const point = (): Vec3 => [wild(), wild(), wild()]
    for (let i = 0; i < 2000; i++) {
      const good = randomSeat(random, i % 8 === 0)
      const bad: SlidingSeat = {
        ...good, cg: i % 2 === 0 ? point() : good.cg, knot: i % 5 === 0 ? point() : good.knot, mass: i % 7 === 0 ? wild() : good.mass,
        A: good.A.map((a) => (random() < 0.05 ? point() : a)), B: good.B.map((b) => (random() < 0.05 ? point() : b)),
        EA: good.EA.map((x) => (random() < 0.02 ? wild() : x)), L0: good.L0.map((x) => (random() < 0.05 ? x * random() : x)),
      }
      const result = solveSlidingSeat(bad)
      if ('T' in result) expect(result.T.every(Number.isFinite) && result.eigenvalues.every(Number.isFinite)).toBe(true)
    }
  })
})
