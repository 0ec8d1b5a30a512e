import { describe, expect, it } from 'vitest'
import { evaluate } from '../../../../src/statics/sling/energy'
import { newPoint, type Point } from '../../../../src/statics/sling/point'
import { copyPose, movePose } from '../../../../src/statics/sling/pose'
import { sceneOf, sceneWallOf, type Scene } from '../../../../src/statics/sling/scene'
import { hangUpright } from '../../../../src/statics/sling/hangUpright'
import { seededRandom } from '../../quantity/seededRandom'
import { randomHanger } from './randomHanger'

const random = seededRandom(17)
const STEP = 1e-6

/** A pose near, but not at, rest, turned about no axis in particular. */
function somewhere(scene: Scene): Point {
  const point = newPoint()
  hangUpright(scene, point.pose)
  const motion = Float64Array.from({ length: 6 }, (_, i) => (i === 2 ? -0.02 : 0.05 * (random() - 0.5)))
  movePose(point.pose, motion, scene.ell, point.pose)
  evaluate(scene, point)
  return point
}

function moved(scene: Scene, from: Point, direction: number, by: number): Point {
  const step = new Float64Array(6)
  step[direction] = by
  const point = newPoint()
  movePose(from.pose, step, scene.ell, point.pose)
  evaluate(scene, point)
  return point
}

/** Gradient and Hessian from differences. Turning in steps that do not commute adds half the gradient's turn, which the sum of both orders leaves out. */
function expectDerivatives(scene: Scene, point: Point): void {
  const largest = Math.max(...point.hessian)
  for (let a = 0; a < 6; a++) {
    const slope = (moved(scene, point, a, STEP).energy - moved(scene, point, a, -STEP).energy) / (2 * STEP)
    expect(Math.abs(slope - point.gradient[a]!) / scene.weight).toBeLessThan(1e-6)
    for (let b = 0; b < 6; b++) {
      const change = (from: number, along: number): number =>
        (moved(scene, point, along, STEP).gradient[from]! - moved(scene, point, along, -STEP).gradient[from]!) / (2 * STEP)
      expect(Math.abs((change(a, b) + change(b, a)) / 2 - point.hessian[6 * a + b]!) / largest).toBeLessThan(1e-7)
    }
  }
}

describe('evaluate', () => {
  it.each(Array.from({ length: 12 }, (_, i) => i))('has the derivatives of its energy, hanging free (%i)', () => {
    const scene = sceneOf(randomHanger(random, false))
    expectDerivatives(scene, somewhere(scene))
  })

  it.each([0, 4e4])('has the derivatives of its energy with the wall\'s Lagrangian, penalty %d', (penalty) => {
    for (let i = 0; i < 8; i++) {
      const input = randomHanger(random, true)
      const scene = sceneOf({ ...input, A: input.A.map(([x, y, z]) => [x, y + 0.03, z]) })
      const wall = sceneWallOf({ ...input, wall: { ...input.wall!, n: [0.2, 1, -0.1], d: -0.1, contacts: [...input.wall!.contacts, { type: 'corner', at: [0.08, 0.11, 0.2] }] } })!
      wall.penalty = penalty
      wall.force.splice(0, 3, 11, 23, 5)
      scene.wall = wall
      expectDerivatives(scene, somewhere(scene))
    }
  })

  it('counts slack legs for nothing', () => {
    const scene = sceneOf(randomHanger(random, false))
    const point = newPoint()
    copyPose(somewhere(scene).pose, point.pose)
    point.pose.p[2] = 2
    evaluate(scene, point)
    expect([...point.gradient]).toEqual([0, 0, scene.weight, 0, 0, 0])
    expect(point.hessian.every((entry) => entry === 0)).toBe(true)
    expect(point.energy).toBe(2 * scene.weight)
  })
})
