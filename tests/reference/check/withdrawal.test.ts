import { describe, expect, test } from 'vitest'
import { screwGauge } from '../../../src/catalogue/screws'
import { WOODS } from '../../../src/catalogue/woods'
import { WITHDRAWAL_ALLOWABLE, WITHDRAWAL_ULTIMATE, type WithdrawnByAllowable } from '../../../src/catalogue/withdrawal'
import { eurocodePermanent, eurocodeWithdrawal } from '../../../src/check/eurocodeWithdrawal'
import { allowableWithdrawal, impliedSafety, serviceFactor, ultimateWithdrawal } from '../../../src/check/withdrawal'
import { INCH, kilogramsPerCubicMetre, metres, POUND, radians, STANDARD_GRAVITY } from '../../../src/quantity/si'

const LBF = POUND * STANDARD_GRAVITY
const mm = (x: number) => metres(x / 1000)
const inches = (x: number) => metres(x * INCH)
/** Pounds per inch of length in the wood. */
const perInch = (kind: WithdrawnByAllowable, gravity: number, diameter: number): number => allowableWithdrawal(kind, gravity, inches(diameter), inches(1)) / LBF

describe('allowable withdrawal, AWC National Design Specification', () => {
  // Table 12.2A, lag screws, as printed: lb per inch of thread. [diameter in inches, by gravity 0.36, 0.42, 0.50, 0.55]
  const LAGS: readonly (readonly [number, readonly number[]])[] = [
    [1 / 4, [137, 173, 225, 260]], [5 / 16, [163, 205, 266, 307]], [3 / 8, [186, 235, 305, 352]], [1 / 2, [231, 291, 378, 437]],
  ]
  const cells = LAGS.flatMap(([diameter, row]) => row.map((pounds, i) => [diameter, [0.36, 0.42, 0.5, 0.55][i] ?? NaN, pounds] as const))
  test.each(cells)('table 12.2A: lag screw of %d in, gravity %d: %d lb/in', (diameter, gravity, pounds) => {
    // Printed in whole pounds.
    expect(Math.abs(perInch('lagScrew', gravity, diameter) - pounds)).toBeLessThanOrEqual(0.56)
  })

  // AWC, Structural Wood Design: Solved Example Problems, E2.1a: nail of 0.131 x 2 1/2 in through 0.105 in
  // of steel into spruce-pine-fir, 2.395 in of it in the wood.
  test('example E2.1a: a nail, 3.619 N/mm over 2.395 in', () => {
    expect(allowableWithdrawal('smoothNail', 0.42, inches(0.131), mm(1)) / 3.61931305943).toBeCloseTo(1, 3)
    expect(allowableWithdrawal('smoothNail', 0.42, inches(0.131), inches(2.395)) / (3.61931305943e3 * 2.395 * INCH)).toBeCloseTo(1, 3)
  })

  // The same, E2.3: lag screw of 1/2 x 4 in through 1 1/2 in into southern pine, its tip of 5/16 in not counted.
  test('example E2.3: a lag screw, 4.248 kN', () => {
    expect(allowableWithdrawal('lagScrew', 0.55, inches(0.5), inches(4 - 1.5 - 5 / 16)) / 4247.9398904).toBeCloseTo(1, 3)
  })

  // W = 2850 G^2 D lb/in by hand, diameters 0.060 in + 0.013 in a gauge.
  test.each([[6, 0.36, 51], [8, 0.42, 82], [10, 0.5, 135], [12, 0.55, 186], [14, 0.36, 89]])('wood screw No. %d, gravity %d: %d lb/in', (gauge, gravity, pounds) => {
    const row = screwGauge(gauge)
    expect(Math.abs(perInch('woodScrew', gravity, (row?.outside.value ?? NaN) / INCH) - pounds)).toBeLessThanOrEqual(0.52)
  })

  test('the printed inch constants are the metric ones: 2850, 1800 and 1380', () => {
    const size = LBF / INCH ** 2
    expect(WITHDRAWAL_ALLOWABLE.woodScrew.value / size / 2850).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ALLOWABLE.smoothNail.value / size / 1380).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ALLOWABLE.lagScrew.value / (LBF / INCH ** 1.75) / 1800).toBeCloseTo(1, 3)
  })

  // Table 11.3.1 and table 12.5: end grain three quarters for lags, nothing for wood screws and nails.
  test('end grain: three quarters of a lag screw, nothing of the others', () => {
    expect(serviceFactor('lagScrew', { wet: false, endGrain: true })).toBe(0.75)
    expect(serviceFactor('woodScrew', { wet: false, endGrain: true })).toBeNull()
    expect(serviceFactor('smoothNail', { wet: true, endGrain: true })).toBeNull()
    expect(serviceFactor('woodScrew', { wet: true, endGrain: false })).toBe(0.7)
    expect(serviceFactor('smoothNail', { wet: true, endGrain: false })).toBe(0.25)
    expect(serviceFactor('woodScrew', { wet: false, endGrain: false })).toBe(1)
  })
})

describe('ultimate withdrawal, USDA Wood Handbook FPL-GTR-282, chapter 8', () => {
  test('the inch constants 15 700, 8100, 7850, 11 250 and 6600 are the metric ones', () => {
    const size = LBF / INCH ** 2
    expect(WITHDRAWAL_ULTIMATE.woodScrew.value / size / 15_700).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ULTIMATE.smoothNail.value / size / 7850).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ULTIMATE.annularNail.value / size / 11_250).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ULTIMATE.driftPin.value / size / 6600).toBeCloseTo(1, 3)
    expect(WITHDRAWAL_ULTIMATE.lagScrew.value / (LBF / INCH ** 1.75) / 8100).toBeCloseTo(1, 3)
  })

  // By hand, N and mm: 108.25 x 0.48^2 x 4.8 x 30; 125.4 x 0.35^1.5 x 8^0.75 x 50; 54.12 x 0.51^2.5 x 3.3 x 40; 77.57 x 0.62^2 x 2.9 x 35; 45.51 x 0.6^2 x 12 x 90.
  test.each([
    ['woodScrew', 0.48, 4.8, 30, 3591.5], ['lagScrew', 0.35, 8, 50, 6175.7], ['smoothNail', 0.51, 3.3, 40, 1327], ['annularNail', 0.62, 2.9, 35, 3026.5], ['driftPin', 0.6, 12, 90, 17694.3],
  ] as const)('%s at gravity %d, %d mm thick, %d mm deep: %d N', (kind, gravity, thick, deep, force) => {
    expect(Math.abs(ultimateWithdrawal(kind, gravity, mm(thick), mm(deep)) / force - 1)).toBeLessThan(2e-4)
  })

  test('the ratio that the two books imply at one gravity: 5.5, 4.5 and 5.7', () => {
    expect(impliedSafety('woodScrew')).toBeCloseTo(5.5, 1)
    expect(impliedSafety('lagScrew')).toBeCloseTo(4.5, 1)
    expect(impliedSafety('smoothNail')).toBeCloseTo(5.7, 1)
  })

  // Gravity 0.48 by volume at 12 % (Wood Handbook) is 0.50 oven-dry (specification) for coast Douglas-fir: each book with its own.
  test('each book with its own gravity: a No. 10 in Douglas-fir, 25 mm deep, implies 5.1', () => {
    const diameter = metres(screwGauge(10)?.outside.value ?? NaN)
    const ratio = ultimateWithdrawal('woodScrew', WOODS.douglasFir.gravity.value, diameter, mm(25)) / allowableWithdrawal('woodScrew', 0.5, diameter, mm(25))
    expect(ratio).toBeCloseTo(5.5092 * (0.48 / 0.5) ** 2, 3)
  })
})

describe('EN 1995-1-1, 8.7.2', () => {
  // d 6, l_ef 36, C24: 16.1 N/mm2, 2.6 kN characteristic, x 0.6 / 1.3 = 1.2 kN.
  test('a 6 mm screw 36 mm deep in C24', () => {
    const characteristic = eurocodeWithdrawal(mm(6), mm(36), kilogramsPerCubicMetre(350), radians(Math.PI / 2)) ?? NaN
    expect(characteristic / (6 * 36) / 0.75).toBeCloseTo(16.1, 1)
    expect(characteristic / 1000).toBeCloseTo(2.6, 1)
    expect((characteristic * eurocodePermanent('sheltered')) / 1000).toBeCloseTo(1.2, 1)
  })

  test('along the grain it holds 1 / 1.2 of across, and outside 6 to 12 mm nothing is said', () => {
    const at = (diameter: number, angle: number) => eurocodeWithdrawal(mm(diameter), mm(70), kilogramsPerCubicMetre(380), radians(angle))
    expect((at(9, Math.PI / 2) ?? NaN) / (at(9, 0) ?? NaN)).toBeCloseTo(1.2, 9)
    expect(at(5.9, Math.PI / 2)).toBeNull()
    expect(at(12.1, Math.PI / 2)).toBeNull()
    expect(eurocodePermanent('weather')).toBeCloseTo(0.5 / 1.3, 12)
  })

  test('the three books agree within a factor of two on a lag screw of 8 mm, 60 mm deep, in C24 softwood', () => {
    // C24: mean density 420 kg/m3 at 12 %, so gravity about 0.37 by the Wood Handbook and 0.39 oven-dry.
    const european = (eurocodeWithdrawal(mm(8), mm(60), kilogramsPerCubicMetre(350), radians(Math.PI / 2)) ?? NaN) * eurocodePermanent('sheltered')
    const american = allowableWithdrawal('lagScrew', 0.39, mm(8), mm(60)) * 0.9
    expect(european / american).toBeGreaterThan(1)
    expect(european / american).toBeLessThan(2)
  })
})
