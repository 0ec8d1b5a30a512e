import { describe, expect, test } from 'vitest'
import { BUMP_FACTOR, BUMP_SIDE_PULL, SET_DOWN_FACTOR } from '../../../src/load/loadCases'
import { metres, newtons, radians, STANDARD_GRAVITY } from '../../../src/quantity/si'
import { dropFactor } from '../../../src/statics/drop'
import { pendulumPeriod } from '../../../src/statics/pendulum'
import { suddenAside, suddenSwing } from '../../../src/statics/wind'

/*
 * The closed forms of the jolts against the motions themselves, stepped through by Stoermer and Verlet's leapfrog
 * (Hairer, Lubich and Wanner, Geometric Numerical Integration, I.1.4), which keeps the energy and knows none of them.
 */
function leapfrog(from: number, force: (x: number) => number, step: number, steps: number, at: (x: number, v: number, t: number) => void): void {
  let [x, v] = [from, 0]
  for (let i = 0; i < steps; i++) {
    const half = v + (force(x) * step) / 2
    x += half * step
    v = half + (force(x) * step) / 2
    at(x, v, (i + 1) * step)
  }
}

const LENGTH = 0.73

describe('a pendulum let go', () => {
  // Textbook mechanics (Goldstein, Classical Mechanics, chapter 1): T = m g (3 cos t - 2 cos a).
  test('from 30 degrees pulls 3 - 2 cos a of its weight at the bottom, and sin a cos a aside at the end', () => {
    const a = Math.PI / 6
    let [most, aside] = [0, 0]
    leapfrog(a, (t) => (-STANDARD_GRAVITY / LENGTH) * Math.sin(t), 1e-4, 20_000, (t, v) => {
      const pull = Math.cos(t) + (LENGTH * v * v) / STANDARD_GRAVITY
      most = Math.max(most, pull)
      if (Math.abs(v) < 2e-3) aside = Math.max(aside, pull * Math.abs(Math.sin(t)))
    })
    expect(most / BUMP_FACTOR).toBeCloseTo(1, 6)
    expect(aside / BUMP_SIDE_PULL).toBeCloseTo(1, 5)
  })

  test.each([8, 30, 75])('from %d degrees comes back after its period, whatever its weight', (degrees) => {
    const a = (degrees * Math.PI) / 180
    const crossings: number[] = []
    let before = a
    leapfrog(a, (t) => (-STANDARD_GRAVITY / LENGTH) * Math.sin(t), 1e-4, 42_000, (t, v, time) => {
      if (before > 0 && t <= 0) crossings.push(time + t / -v)
      before = t
    })
    expect(((crossings[1] ?? NaN) - (crossings[0] ?? NaN)) / pendulumPeriod(metres(LENGTH), radians(a))).toBeCloseTo(1, 6)
  })
})

describe('a weight on an elastic leg', () => {
  // Gere, Mechanics of Materials, 7th ed., 2.8: falling weight on a bar; a load put on at once pulls twice.
  const mass = 5.3
  const W = mass * STANDARD_GRAVITY
  const mostPull = (height: number, stiffness: number): number => {
    let most = 0
    // Downwards from where the leg is just taut; above it nothing pulls.
    leapfrog(-height, (x) => STANDARD_GRAVITY - (stiffness * Math.max(0, x)) / mass, 2e-6, 120_000, (x) => { most = Math.max(most, stiffness * x) })
    return most / W
  }

  test.each([[0.01, 9_000], [0.004, 31_000], [0.023, 2_400]])('dropped %d m on to %d N/m pulls 1 + sqrt(1 + 2 h K / W)', (height, stiffness) => {
    expect(mostPull(height, stiffness) / dropFactor(height, stiffness, W)).toBeCloseTo(1, 5)
  })

  test('put on at once pulls twice its weight', () => {
    expect(mostPull(0, 14_000)).toBeCloseTo(SET_DOWN_FACTOR, 5)
  })

  test('of which a part goes at once jolts the rest to T0 + 2 (T1 - T0)', () => {
    // Two springs of unlike stiffness side by side; the stiffer one goes.
    const [stays, goes] = [11_000, 17_000]
    const rest = W / (stays + goes)
    let most = 0
    leapfrog(rest, (x) => STANDARD_GRAVITY - (stays * x) / mass, 1e-5, 20_000, (x) => { most = Math.max(most, stays * x) })
    const [before, after] = [stays * rest, W]
    expect(most / (before + 2 * (after - before))).toBeCloseTo(1, 6)
  })
})

// The pendulum with a level force besides: m L t'' = F cos t - W sin t, pull W cos t + F sin t + m L t'^2.
test.each([[41, 9], [41, 38], [26, 61]])('wind all at once, %d N of weight and %d N of wind: farthest swing, greatest pull and greatest pull aside', (W, F) => {
  let [most, far, aside] = [0, 0, 0]
  leapfrog(0, (t) => (STANDARD_GRAVITY / LENGTH) * ((F / W) * Math.cos(t) - Math.sin(t)), 1e-4, 30_000, (t, v) => {
    const pull = W * Math.cos(t) + F * Math.sin(t) + (W / STANDARD_GRAVITY) * LENGTH * v * v
    most = Math.max(most, pull)
    far = Math.max(far, t)
    aside = Math.max(aside, pull * Math.sin(t))
  })
  const swing = suddenSwing(newtons(W), newtons(F))
  expect(far / swing.lean).toBeCloseTo(1, 6)
  expect(most / swing.tension).toBeCloseTo(1, 6)
  expect(aside / suddenAside(newtons(W), newtons(F))).toBeCloseTo(1, 6)
})
