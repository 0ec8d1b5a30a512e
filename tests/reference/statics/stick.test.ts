import { describe, expect, test } from 'vitest'
import { metres, newtons, pascals, type Metres } from '../../../src/quantity/si'
import { momentAt, solveBeam, type Beam, type BeamInput } from '../../../src/statics/beam'
import { largestSag, sagAt } from '../../../src/statics/deflection'
import { fibreStress, rectangleSection, roundSection, shearStress, tubeSection } from '../../../src/statics/section'
import { eulerLoad, momentUnderThrust } from '../../../src/statics/strut'

const mm = (x: number): Metres => metres(x / 1000)

function beamOf(length: number, supports: readonly [number, number], loads: readonly (readonly [number, number])[]): Beam {
  const input: BeamInput = { length: mm(length), supports: [mm(supports[0]), mm(supports[1])], loads: loads.map(([at, force]) => ({ at: mm(at), force: newtons(force) })), heldDown: true }
  const beam = solveBeam(input)
  if (!beam.ok) throw new Error(beam.reason)
  return beam
}

describe('sections', () => {
  // Z = pi d3 / 32, in mm3: 12 mm 169.6, 16 mm 402, 20 mm 785, 25 mm 1534 (textbook mechanics, to the digits given).
  test.each([[12, 169.6, 1], [16, 402, 0], [20, 785, 0], [25, 1534, 0]])('a %d mm stick has a modulus of %d mm3', (diameter, modulus, digits) => {
    expect((roundSection(mm(diameter)).modulus * 1e9).toFixed(digits)).toBe(modulus.toFixed(digits))
  })

  test('a section by strips has the same area, second moment and shear over the mean (V Q / (I b), Jourawski)', () => {
    const [D, d] = [0.034, 0.023]
    const strips = 200_000
    const sums = { area: 0, inertia: 0, first: 0 }
    for (let i = 0; i < strips; i++) {
      const y = ((i + 0.5) / strips - 0.5) * D
      const chord = (w: number): number => 2 * Math.sqrt(Math.max(0, (w / 2) ** 2 - y * y))
      const strip = ((chord(D) - chord(d)) * D) / strips
      sums.area += strip
      sums.inertia += strip * y * y
      if (y > 0) sums.first += strip * y
    }
    const tube = tubeSection(metres(D), metres(d))
    expect(tube.area / sums.area).toBeCloseTo(1, 6)
    expect(tube.inertia / sums.inertia).toBeCloseTo(1, 6)
    expect(tube.modulus / (sums.inertia / (D / 2))).toBeCloseTo(1, 6)
    expect(tube.shearPeak / (((sums.first / (sums.inertia * (D - d))) * sums.area))).toBeCloseTo(1, 6)
  })

  test('a tube without a bore is a stick; a thin one is sheared by twice the mean', () => {
    expect(tubeSection(mm(21), mm(0))).toEqual({ ...roundSection(mm(21)), modulus: expect.closeTo(roundSection(mm(21)).modulus, 18) as number })
    expect(tubeSection(mm(400), mm(399.9)).shearPeak).toBeCloseTo(2, 6)
  })

  test('a rectangle: b h2 / 6, b h3 / 12, shear 3 V / (2 A)', () => {
    const plank = rectangleSection(mm(18), mm(44))
    expect(plank.modulus).toBeCloseTo((0.018 * 0.044 ** 2) / 6, 15)
    expect(plank.inertia).toBeCloseTo((0.018 * 0.044 ** 3) / 12, 16)
    expect(shearStress(plank, newtons(77))).toBeCloseTo((3 * 77) / (2 * 0.018 * 0.044), 6)
  })

  test('round stick: 32 M / (pi d3) + 4 P / (pi d2), and 4 V / (3 A), whatever the signs', () => {
    const stick = roundSection(mm(17))
    const expected = (32 * 7.3) / (Math.PI * 0.017 ** 3) + (4 * 61) / (Math.PI * 0.017 ** 2)
    for (const [moment, thrust] of [[7.3, 61], [-7.3, 61], [7.3, -61]] as const) expect(fibreStress(stick, moment, newtons(thrust)) / expected).toBeCloseTo(1, 12)
    expect(shearStress(stick, newtons(-83)) / ((4 * 83) / (3 * Math.PI * 0.0085 ** 2))).toBeCloseTo(1, 12)
  })
})

describe('a stick on two supports', () => {
  test('600 mm, held at 100 and 500 mm, 30 N at 0, 200, 300, 400 and 600 mm: 75 N each, moments -3, 1.5, 3, 1.5, -3 N m (by hand)', () => {
    const beam = beamOf(600, [100, 500], [[0, 30], [200, 30], [300, 30], [400, 30], [600, 30]])
    beam.reactions.forEach((r) => expect(r).toBeCloseTo(75, 12))
    const moments = [100, 200, 300, 400, 500].map((x) => momentAt(beam.forces, mm(x)))
    ;[-3, 1.5, 3, 1.5, -3].forEach((m, i) => expect(moments[i]).toBeCloseTo(m, 12))
    expect(beam.sagging).toEqual({ at: mm(300), moment: expect.closeTo(3, 12) as number })
    expect(beam.hogging.moment).toBeCloseTo(-3, 12)
    // Before the second load 30 N hang on the left end, after the support 45 N are left of 75.
    expect(Math.abs(beam.shear.force)).toBeCloseTo(45, 12)
  })

  test('one load P at a from one end: R = P b / L, M = P a b / L', () => {
    const beam = beamOf(730, [0, 730], [[190, 41]])
    expect(beam.reactions[0]).toBeCloseTo((41 * 540) / 730, 12)
    expect(beam.sagging).toEqual({ at: mm(190), moment: expect.closeTo((41 * 0.19 * 0.54) / 0.73, 12) as number })
    expect(beam.hogging.moment).toBeCloseTo(0, 12)
    expect(beam.shear.force).toBeCloseTo((41 * 540) / 730, 12)
  })

  test('an even load is bent least with overhangs of 0.207 L: 0.0214 w L2 either way (textbook mechanics)', () => {
    const pieces = 2000
    const even = Array.from({ length: pieces }, (_, i) => [((i + 0.5) / pieces) * 1000, 1 / pieces] as const)
    const best = beamOf(1000, [207.107, 792.893], even)
    expect(best.sagging.moment).toBeCloseTo(0.02145, 4)
    expect(best.hogging.moment).toBeCloseTo(-0.02145, 4)
    for (const shift of [-9, 9]) {
      const other = beamOf(1000, [207.107 + shift, 792.893 - shift], even)
      expect(Math.max(other.sagging.moment, -other.hogging.moment)).toBeGreaterThan(0.0222)
    }
  })
})

describe('sag', () => {
  const I = roundSection(mm(20)).inertia

  // Yellow birch: 13.9 GPa (Wood Handbook, table 5-3a).
  test('100 N in the middle of 400 mm of a 20 mm stick of yellow birch: 12.7 N/mm2 and 1.22 mm', () => {
    const beam = beamOf(400, [0, 400], [[200, 100]])
    expect(fibreStress(roundSection(mm(20)), beam.sagging.moment, newtons(0)) / 1e6).toBeCloseTo(12.7, 1)
    expect(largestSag(beam, 13.9e9 * I).sag * 1000).toBeCloseTo(1.22, 2)
  })

  test('a load off the middle: P b (L2 - b2)^1.5 / (9 sqrt(3) L E I), at sqrt((L2 - b2) / 3) from the farther end (Shigley, table A-9; textbook)', () => {
    const [P, L, b] = [57, 0.71, 0.22]
    const { at, sag } = largestSag(beamOf(710, [0, 710], [[490, P]]), 61)
    expect(at).toBeCloseTo(Math.sqrt((L * L - b * b) / 3), 12)
    expect(sag).toBeCloseTo((P * b * (L * L - b * b) ** 1.5) / (9 * Math.sqrt(3) * L * 61), 14)
  })

  test('a load on an overhang c: end down by P c2 (L + c) / (3 E I), middle part up by P c L2 / (9 sqrt(3) E I) (Shigley, table A-9)', () => {
    const [P, L, c] = [33, 0.47, 0.18]
    const beam = beamOf(650, [0, 470], [[650, P]])
    const [end, highest] = sagAt(beam, 87, [mm(650), metres(L / Math.sqrt(3))])
    expect(end).toBeCloseTo((P * c * c * (L + c)) / (3 * 87), 14)
    expect(highest).toBeCloseTo((-P * c * L * L) / (9 * Math.sqrt(3) * 87), 14)
    expect(largestSag(beam, 87)).toEqual({ at: mm(650), sag: end })
  })

  test('an even load: 5 w L4 / (384 E I)', () => {
    const pieces = 1000
    const beam = beamOf(900, [0, 900], Array.from({ length: pieces }, (_, i) => [((i + 0.5) / pieces) * 900, 40 / pieces] as const))
    expect(largestSag(beam, 53).sag / ((5 * 40 * 0.9 ** 3) / (384 * 53))).toBeCloseTo(1, 5)
  })
})

describe('a stick that is pushed lengthwise', () => {
  test('bows out at pi2 E I / L2 (Euler)', () => {
    expect(eulerLoad(pascals(9.7e9), roundSection(mm(14)).inertia, mm(820))).toBeCloseTo((Math.PI ** 2 * 9.7e9 * Math.PI * 0.014 ** 4) / 64 / 0.82 ** 2, 9)
  })

  // AISC 360, commentary, table C-A-8.1: 1 - 0.2 H / P_e for a load in the middle. Exactly:
  // load in the middle under a thrust: M = P L / 4 tan(u) / u, u = (pi/2) sqrt(H / P_e) (Timoshenko, Theory of Elastic Stability, 1.3).
  test.each([0.1, 0.35, 0.6])('is bent by a middle load as by the exact sum, or up to a fifth of that share less, at %d of it', (part) => {
    const u = (Math.PI / 2) * Math.sqrt(part)
    const swollen = momentUnderThrust(5.3, newtons(part * 210), newtons(210))
    if (!swollen.ok) throw new Error(swollen.reason)
    const exact = (5.3 * Math.tan(u)) / u
    expect(swollen.moment).toBeGreaterThan(exact)
    expect(swollen.moment * (1 - 0.2 * part)).toBeLessThan(exact)
  })

  test('has no answer from that thrust on', () => {
    expect(momentUnderThrust(5.3, newtons(210), newtons(210))).toEqual({ ok: false, reason: 'bows', euler: 210 })
    expect(momentUnderThrust(5.3, newtons(209.9), newtons(210)).ok).toBe(true)
  })
})
