import { describe, expect, test } from 'vitest'
import { metres, metresPerSecond, newtons, pascals, radians } from '../../../src/quantity/si'
import { overBeam } from '../../../src/statics/overBeam'
import { equivalentLength, pendulumPeriod } from '../../../src/statics/pendulum'
import { dynamicPressure, steadySwing, suddenSwing, windForce } from '../../../src/statics/wind'

describe('wind', () => {
  // ASCE 7, velocity pressure: 0.613 V2 (SI), 0.00256 V2 in lb/ft2 and miles an hour.
  test.each([[10, 61], [20, 245], [30, 552], [35, 751], [40, 981]])('%d m/s: %d Pa', (speed, pressure) => {
    expect(Math.round(dynamicPressure(metresPerSecond(speed)))).toBe(pressure)
  })

  test('agrees with its form in pounds and miles', () => {
    expect(dynamicPressure(metresPerSecond(44.704)) / 47.880259).toBeCloseTo(0.00256 * 100 ** 2, 1)
  })

  // Pot 0.033 m2 of drag 0.7 and plant 0.15 m2 of drag 0.5 at 15 m/s, 50 N, worked by hand.
  test('a pot and its plant at 15 m/s: 13.5 N, 51.8 N in the cord, 15 degrees', () => {
    const force = windForce(pascals(0.613 * 225), [{ area: 0.033, drag: 0.7, share: 1 }, { area: 0.15, drag: 0.5, share: 1 }])
    expect(force).toBeCloseTo(13.5, 1)
    const { tension, lean } = steadySwing(newtons(50), force)
    expect(tension).toBeCloseTo(51.8, 1)
    expect((lean * 180) / Math.PI).toBeCloseTo(15.1, 1)
  })

  // The pendulum's own equation stepped through (Runge and Kutta, fourth order): a'' = (F cos a - W sin a) / (m L), T = W cos a + F sin a + m L a'2.
  test('a sudden wind: greatest pull and farthest swing by stepping through the motion', () => {
    const [W, F] = [37, 16]
    const bend = (a: number): number => (F * Math.cos(a) - W * Math.sin(a)) / W
    const dt = 1e-3
    let [a, v, most, far] = [0, 0, 0, 0]
    for (let i = 0; i < 8000; i++) {
      const [a1, v1] = [v, bend(a)]
      const [a2, v2] = [v + (v1 * dt) / 2, bend(a + (a1 * dt) / 2)]
      const [a3, v3] = [v + (v2 * dt) / 2, bend(a + (a2 * dt) / 2)]
      const [a4, v4] = [v + v3 * dt, bend(a + a3 * dt)]
      a += ((a1 + 2 * a2 + 2 * a3 + a4) * dt) / 6
      v += ((v1 + 2 * v2 + 2 * v3 + v4) * dt) / 6
      most = Math.max(most, W * Math.cos(a) + F * Math.sin(a) + W * v * v)
      far = Math.max(far, a)
    }
    const swing = suddenSwing(newtons(W), newtons(F))
    expect(swing.tension / most).toBeCloseTo(1, 6)
    expect(swing.lean / far).toBeCloseTo(1, 6)
  })
})

describe('a pendulum', () => {
  test('beats seconds at 0.994 m (Huygens; the seconds pendulum)', () => {
    expect(pendulumPeriod(metres(0.99362), radians(0))).toBeCloseTo(2, 4)
  })

  // Abramowitz and Stegun, table 17.1: K(m = 0.5) = 1.85407 46773, K(m = sin2 30) = 1.68575 03548; over pi / 2.
  test.each([[90, 1.8540746773], [60, 1.6857503548]])('let go from %d degrees it is slower by the elliptic integral', (degrees, K) => {
    expect(pendulumPeriod(metres(0.7), radians((degrees * Math.PI) / 180)) / pendulumPeriod(metres(0.7), radians(0))).toBeCloseTo(K / (Math.PI / 2), 9)
  })

  test('a rod hung from its end swings as two thirds of its length (textbook mechanics)', () => {
    expect(equivalentLength(metres(0.45), metres(0.9 / Math.sqrt(12)))).toBeCloseTo(0.6, 12)
  })
})

// Euler and Eytelwein: half a turn at 0.3 holds e^(0.3 pi) = 2.566 times, at 0.2 e^(0.2 pi) = 1.874 times.
test.each([[0.3, 2.566], [0.2, 1.874]])('a cord over half a beam with friction %d holds %d times', (friction, ratio) => {
  expect(overBeam({ pulls: [newtons(20), newtons(31)], friction, turn: radians(Math.PI) }).largestRatio).toBeCloseTo(ratio, 3)
})
