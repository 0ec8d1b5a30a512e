import { describe, expect, it } from 'vitest'
import { metres, newtons } from '../../../src/quantity/si'
import { criticalHeight } from './criticalHeight'
import { heaveStiffness } from '../../../src/statics/heave'
import type { SlingInput } from '../../../src/statics/sling/result'
import { solveSling } from '../../../src/statics/sling/solveSling'
import { symmetricSling } from './symmetricSling'
import { distance, lowerEnds, restOf, ringed, type Ringed } from './hangers'

// Closed forms of textbook statics for m equal legs: attachment radius a, ring radius r0, s = a - r0,
// loaded height h and length l, strain eps, attachments zb above the centre of gravity. Each expected
// value is the hand formula; h and l come from the closed sling, not from the solver under test.
const hangers: readonly Ringed[] = [
  { legs: 3, a: 0.11, r0: 0.03, L0: 0.72, EA: 2900, weight: 61, zb: 0.07, ell: 0.11 },
  { legs: 4, a: 0.13, r0: 0.13, L0: 0.95, EA: 4100, weight: 88, zb: 0.05, ell: 0.1 },
  { legs: 5, a: 0.09, r0: 0, L0: 0.55, EA: 1500, weight: 37, zb: -0.02, ell: 0.09 },
  { legs: 8, a: 0.08, r0: 0.16, L0: 0.8, EA: 2000, weight: 140, zb: 0.11, ell: 0.13 },
  { legs: 12, a: 0.2, r0: 0.05, L0: 1.3, EA: 900, weight: 215, zb: -0.04, ell: 0.17 },
]
const closed = ({ legs, a, r0, L0, EA, weight }: Ringed): ReturnType<typeof symmetricSling> =>
  symmetricSling({ legs, radius: metres(a), ring: metres(r0), unstretched: metres(L0), stiffness: newtons(EA), weight: newtons(weight) })

describe.each(hangers)('$legs legs from ring $r0 to radius $a', (hanger) => {
  const { legs: m, a, r0, L0, EA, weight: W, zb, ell } = hanger
  const { height: h, length: l, tension, angle, inwardPull } = closed(hanger)
  const s = a - r0
  const k = EA / L0
  const eps = l / L0 - 1
  const rest = restOf(ringed(hanger))

  it('stretches until m EA (l/L0 - 1) h/l = W, with T = W l/(m h) and (W/m) tan b inward', () => {
    expect(((m * EA * (l / L0 - 1) * h) / l / W)).toBeCloseTo(1, 12)
    expect(tension).toBeCloseTo((W * l) / (m * h), 12)
    expect(tension).toBeCloseTo(W / (m * Math.cos(angle)), 10)
    expect(inwardPull).toBeCloseTo((W / m) * Math.tan(angle), 10)
    rest.T.forEach((T) => expect(T / tension).toBeCloseTo(1, 10))
    lowerEnds(ringed(hanger), rest).forEach((end, i) => expect(distance(end, ringed(hanger).A[i]!)).toBeCloseTo(l, 11))
  })

  it('has the stiffnesses of heave, twist and twice sway with tilt', () => {
    const heave = m * ((k * h * h) / l ** 2 + ((tension / l) * s * s) / l ** 2)
    const twist = (W * r0 * a) / h
    const q = s * zb + h * a
    const f = W / h
    const sway = f * (1 + s ** 2 / (2 * eps * l ** 2))
    const mixed = (f * (zb + (s * q) / (2 * eps * l ** 2))) / ell
    const tilt = (f * (zb ** 2 + (a * r0) / 2 + h * zb + q ** 2 / (2 * eps * l ** 2))) / ell ** 2
    const mean = (sway + tilt) / 2
    const half = Math.hypot((sway - tilt) / 2, mixed)
    const expected = [heave, twist / ell ** 2, mean - half, mean - half, mean + half, mean + half].sort((x, y) => x - y)
    const largest = expected[5]!
    rest.eigenvalues.forEach((value, i) => expect(Math.abs(value - expected[i]!) / largest).toBeLessThan(1e-10))
    expect(heaveStiffness({ legs: m, stiffness: newtons(EA), length: l, height: h, run: metres(s), tension }) / heave).toBeCloseTo(1, 12)
  })

  it('turns freely only from one point', () => {
    expect(rest.status).toBe(r0 === 0 ? 'OK_NEUTRAL_TWIST' : 'OK')
    expect(rest.zeroIsSymmetry).toBe(r0 === 0)
  })
})

describe('criticalHeight', () => {
  const height = (a: number, r0: number, h: number, strain: number): number => criticalHeight({ radius: metres(a), ring: metres(r0), height: metres(h), strain })

  it('agrees with its three plain cases', () => {
    const { a, h, eps } = { a: 0.12, h: 0.83, eps: 0.013 }
    expect(height(a, 0, h, 0)).toBeCloseTo(-h, 14) // a hook, no stretch: the centre of gravity below the hook
    expect(height(a, 0.03, h, 0)).toBeCloseTo(-((a * 0.03) / (2 * h) + (h * a ** 2) / (a - 0.03) ** 2), 14)
    // Vertical legs: zb > -m k a^2 / (2 W), with k = EA/L0 = (1 + eps) EA/l and W = m EA eps, and the ring's own a^2/(2 h).
    expect(height(a, a, h, eps)).toBeCloseTo(-((a ** 2 * (1 + eps)) / (2 * eps * h)), 14)
    expect(height(0, 0.05, h, eps)).toBe(0)
  })

  // Hangers whose critical height lies a little below the attachments, so that both sides can be built.
  const soft: readonly Ringed[] = [
    { legs: 3, a: 0.02, r0: 0.02, L0: 0.8, EA: 1500, weight: 49, zb: 0, ell: 0.1 },
    { legs: 4, a: 0.021, r0: 0.015, L0: 0.7, EA: 1100, weight: 72, zb: 0, ell: 0.08 },
    { legs: 6, a: 0.03, r0: 0.045, L0: 1.1, EA: 700, weight: 95, zb: 0, ell: 0.06 },
  ]

  it.each(soft)('parts stable from unstable: $legs legs from $r0 to $a', (hanger) => {
    const { height: h, length } = closed(hanger)
    const limit = height(hanger.a, hanger.r0, h, length / hanger.L0 - 1)
    const above: SlingInput = ringed({ ...hanger, zb: limit + 0.0005 })
    const below = solveSling(ringed({ ...hanger, zb: limit - 0.0005 }))
    expect(limit).toBeLessThan(-0.01)
    expect(restOf(above).status).toBe('OK')
    expect(below.status).toBe('UNSTABLE')
    expect(below.status === 'UNSTABLE' && below.upright?.negative).toBe(2)
  })
})

describe('a pot on a hook at its critical height', () => {
  // zb = -h a^2 / (2 eps l^2 + a^2), r0 = 0: both tilts lose their stiffness, and with the free turn three
  // zeros are left: a mechanism, which must not be taken for the free turn alone.
  const hung = { legs: 4, a: 0.12, r0: 0, L0: 0.7, EA: 2900, weight: 40, ell: 0.12 }
  const h = 2.5 - 0.05 - restOf(ringed({ ...hung, zb: 0.05 })).cg[2]
  const l = Math.hypot(h, hung.a)
  const critical = (-h * hung.a ** 2) / (2 * (l / hung.L0 - 1) * l ** 2 + hung.a ** 2)

  it('is a mechanism there, turns freely just below and tips just above', () => {
    expect(solveSling(ringed({ ...hung, zb: critical }))).toMatchObject({ status: 'UNSTABLE', upright: { negative: 0, zeroIsSymmetry: false, stable: false } })
    expect(restOf(ringed({ ...hung, zb: critical + 1e-3 }))).toMatchObject({ status: 'OK_NEUTRAL_TWIST', zeroIsSymmetry: true })
    expect(solveSling(ringed({ ...hung, zb: critical - 1e-3 }))).toMatchObject({ status: 'UNSTABLE', upright: { negative: 2, zeroIsSymmetry: true } })
  })
})
