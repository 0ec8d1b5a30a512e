import { describe, expect, it } from 'vitest'
import type { SlingInput } from '../../../src/statics/sling/result'
import { restOf, ringed, sum, type Ringed } from './hangers'

// A pot on one hook that stands p off the wall y = 0, nearer than the pot's radius: with legs that do
// not stretch, pot and legs are one pendulum. With D the depth of the touching circle under the hook
// along the axis, r its radius, G that of the centre of gravity, leaning by t:
// r cos t - D sin t = p, and moments about the hook give N (D cos t + r sin t) = W G sin t.
// (Textbook statics; the nail with a leaning pot, H = W e / L.)
const { W, L, a, zb } = { W: 57, L: 0.85, a: 0.12, zb: 0.06 }
const pendulum: Ringed = { legs: 5, a, r0: 0, L0: L, EA: 1e8, weight: W, zb, ell: 0.12 }
const hookAboveLeave = Math.sqrt(L ** 2 - a ** 2)
const leave = 0.1 + zb

const leaning = (p: number, z: number, r: number): SlingInput => {
  const even = ringed(pendulum)
  return { ...even, A: even.A.map(([x, y, height]) => [x, y - p, height]), wall: { n: [0, 1, 0], d: 0, contacts: [{ type: 'circle', z, r }, { type: 'circle', z: 0, r: 0.01 }] } }
}

describe('a pot on a hook, leaning on the wall', () => {
  it.each([[0.07, 0.17, 0.13], [0.1, 0.05, 0.115], [0.02, 0.12, 0.125]])('hook %d m off, touching at height %d with radius %d', (p, z, r) => {
    const D = hookAboveLeave + leave - z
    const G = hookAboveLeave + zb
    const t = Math.acos(p / Math.hypot(r, D)) - Math.atan2(D, r)
    const N = (W * G * Math.sin(t)) / (D * Math.cos(t) + r * Math.sin(t))
    const rest = restOf(leaning(p, z, r))
    expect(rest.status).toBe('OK_NEUTRAL_TWIST') // free to roll about its own axis
    expect(rest.tiltRadians).toBeCloseTo(t, 6)
    expect(rest.wallN[0]! / N).toBeCloseTo(1, 5)
    expect(rest.wallN[1]).toBe(0)
    expect(rest.cg[1]).toBeCloseTo(-p - G * Math.sin(t), 6)
  })

  it('does not touch from further off than its radius', () => {
    const rest = restOf(leaning(0.131, 0.17, 0.13))
    expect(rest.wallN).toEqual([0, 0])
    expect(rest.tiltRadians).toBeLessThan(1e-9)
    expect(sum(rest.T) / W).toBeCloseTo(L / hookAboveLeave, 6)
  })
})
