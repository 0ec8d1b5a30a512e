import { describe, expect, test } from 'vitest'
import { metres, newtons, pascals, type Metres } from '../../../src/quantity/si'
import { hookFirstYield, hookPeakStress } from '../../../src/statics/curvedBar'
import { ringBending, ringStretch } from '../../../src/statics/ring'
import { openHookLoad, ringFirstYield } from '../../../src/statics/wire'
import { woodenRing } from '../../../src/statics/woodenRing'

const mm = (x: number): Metres => metres(x / 1000)

describe('an open hook as a curved bar', () => {
  // Winkler and Bach worked by hand with r_n of a circle; wire and inside radius in mm, peak at 100 N in N/mm2, load at 250 N/mm2 in N.
  test.each([[2.3, 8, 869, 29], [3, 10, 495, 51], [4, 12, 257, 97], [5, 15, 165, 152], [6, 18, 114, 219]])('%d mm wire, inside radius %d mm: %d N/mm2, yields at %d N', (wire, inner, stress, load) => {
    expect(Math.abs(hookPeakStress(mm(wire), mm(2 * inner), newtons(100)) / 1e6 - stress)).toBeLessThanOrEqual(0.6)
    expect(Math.abs(hookFirstYield(mm(wire), mm(2 * inner), pascals(250e6)) - load)).toBeLessThanOrEqual(0.6)
  })

  test('stress falling as 1 / r over the wire carries force and moment, by strips', () => {
    const [wire, inside, load] = [0.0052, 0.019, 130]
    const [inner, c] = [inside / 2, wire / 2]
    const strips = 400_000
    const sums = { area: 0, overR: 0, firstOverR: 0 }
    for (let i = 0; i < strips; i++) {
      const r = inner + ((i + 0.5) / strips) * wire
      const strip = (2 * Math.sqrt(c * c - (r - inner - c) ** 2) * wire) / strips
      sums.area += strip
      sums.overR += strip / r
    }
    const R = inner + c
    // Of a stress a + b / r: the sum over the wire is F, its moment about the middle of the bowl, on the load's axis, nothing.
    const b = load / (sums.overR - sums.area / R)
    const a = -b / R
    expect(hookPeakStress(metres(wire), metres(inside), newtons(load)) / (a + b / inner)).toBeCloseTo(1, 4)
  })

  test('it first yields well before its plastic hinge', () => {
    const [wire, inside, stress] = [mm(3.7), mm(26), pascals(310e6)]
    const ratio = hookFirstYield(wire, inside, stress) / openHookLoad(wire, inside, stress)
    expect(ratio).toBeGreaterThan(0.45)
    expect(ratio).toBeLessThan(3 * Math.PI / 16)
  })
})

describe('a thin ring under two opposed pulls', () => {
  const [W, R, EI] = [84, 0.047, 3.1]
  const { atLoad, atSide, sidePull } = ringBending(newtons(W), metres(R))

  // Mechanical Engineer's Data Handbook, p. 29; Roark, circular rings, case 1.
  test('0.3183 W R under the load, 0.1817 W R at the side', () => {
    expect(atLoad / (W * R)).toBeCloseTo(0.3183, 4)
    expect(-atSide / (W * R)).toBeCloseTo(0.1817, 4)
  })

  // A quarter by pieces: moment at t from the load, pulls and turns from the elastic line.
  const pieces = 20_000
  const quarter = Array.from({ length: pieces }, (_, i) => ((i + 0.5) / pieces) * (Math.PI / 2))
  const momentAtTurn = (t: number): number => atLoad - sidePull * R * Math.sin(t)
  const integral = (f: (t: number) => number): number => (quarter.reduce((sum, t) => sum + f(t), 0) * Math.PI) / 2 / pieces

  test('a quarter of it balances, and its ends do not turn', () => {
    expect(momentAtTurn(Math.PI / 2)).toBeCloseTo(atSide, 12)
    expect(integral(momentAtTurn) / (W * R)).toBeCloseTo(0, 8)
  })

  test('it grows 0.1488 and narrows 0.1366 W R3 / (E I) (the same case)', () => {
    const { along, across } = ringStretch(newtons(W), metres(R), EI)
    const unit = (W * R ** 3) / EI
    expect(along / unit).toBeCloseTo(0.1488, 4)
    expect(across / unit).toBeCloseTo(-0.1366, 4)
    // Unit pulls along and across on a quarter (Castigliano).
    expect((-2 * integral((t) => momentAtTurn(t) * R * Math.sin(t)) * R) / EI / along).toBeCloseTo(1, 6)
    expect((2 * integral((t) => momentAtTurn(t) * R * (1 - Math.cos(t))) * R) / EI / across).toBeCloseTo(1, 6)
  })

  test('its first yield is that moment on the wire', () => {
    const wire = mm(4.3)
    const load = ringFirstYield(wire, mm(51), pascals(250e6))
    expect((32 * ringBending(load, mm((51 + 4.3) / 2)).atLoad) / (Math.PI * wire ** 3) / 250e6).toBeCloseTo(1, 12)
  })
})

describe('a wooden ring', () => {
  test('10 by 10 mm, R 45 mm, 100 N: 8.6 N/mm2 under the load, 5.4 at the side (by hand)', () => {
    const { atLoad, atSide } = woodenRing({ load: newtons(100), mean: mm(45), thickness: mm(10), width: mm(10) })
    expect(atLoad / 1e6).toBeCloseTo(8.6, 1)
    expect(atSide / 1e6).toBeCloseTo(5.4, 1)
  })

  test('wider than thick: 6 M / (b h2), h in the plane of the ring, and W / (2 b h) at the side', () => {
    const { atLoad, atSide } = woodenRing({ load: newtons(118), mean: mm(52), thickness: mm(9), width: mm(14) })
    expect(atLoad / ((6 * 118 * 0.052) / Math.PI / (0.009 * 0.014 ** 2))).toBeCloseTo(1, 12)
    expect(atSide).toBeCloseTo((6 * 118 * 0.052 * (0.5 - 1 / Math.PI)) / (0.009 * 0.014 ** 2) + 118 / (2 * 0.009 * 0.014), 4)
  })

  // National Design Specification, 5.4.1: 3 M / (2 R b d), where the bar straightens.
  test('is pulled apart at the side by 3 M / (2 R b h), and R falls out', () => {
    const { splitting } = woodenRing({ load: newtons(118), mean: mm(52), thickness: mm(9), width: mm(14) })
    expect(splitting).toBeCloseTo((3 * 118 * (0.5 - 1 / Math.PI)) / (2 * 0.009 * 0.014), 6)
  })
})
