import { describe, expect, test } from 'vitest'
import { STEEL_BEARING } from '../../../src/catalogue/lateral'
import { bendingYield, lateralLimit, woodBearing, yieldReduction } from '../../../src/check/lateral'
import { governingYield, yieldLoads, YIELD_MODES, type Joint } from '../../../src/check/singleShear'
import { INCH, metres, pascals, POUND, STANDARD_GRAVITY } from '../../../src/quantity/si'

const LBF = POUND * STANDARD_GRAVITY
const PSI = LBF / INCH ** 2
const inches = (x: number) => metres(x * INCH)
const mm = (x: number) => metres(x / 1000)

describe('wood crushed by a thin dowel', () => {
  // Wood Handbook eq. 8-3, Fe = 114.5 G^1.84 MPa, by hand.
  test.each([[0.35, 16.6], [0.42, 23.2], [0.5, 32], [0.6, 44.7]])('gravity %d: %d MPa', (gravity, megapascals) => {
    expect(woodBearing(gravity) / 1e6).toBeCloseTo(megapascals, 1)
  })

  // AWC National Design Specification, table 12.3.3, dowels below 1/4 in, printed to 50 psi: 16 600 G^1.84.
  test.each([[0.42, 3350], [0.5, 4650], [0.55, 5550], [0.36, 2550]])('gravity %d: %d psi', (gravity, printed) => {
    expect(Math.abs(woodBearing(gravity) / PSI - printed)).toBeLessThanOrEqual(33)
  })
})

describe('bending yield and reduction, AWC National Design Specification', () => {
  test.each([[0.131, 100], [0.142, 90], [0.148, 90], [0.192, 80], [0.236, 80]])('a nail of %d in: %d ksi', (diameter, ksi) => {
    expect((bendingYield('nail', inches(diameter)) ?? NaN) / (1000 * PSI)).toBeCloseTo(ksi, 6)
  })
  test('a lag of 1/4 in 70 ksi, of 3/8 in 45 ksi; a nail of 8 mm is in no table', () => {
    expect((bendingYield('lag', inches(0.25)) ?? NaN) / (1000 * PSI)).toBeCloseTo(70, 6)
    expect((bendingYield('lag', inches(0.375)) ?? NaN) / (1000 * PSI)).toBeCloseTo(45, 6)
    expect(bendingYield('nail', mm(8))).toBeNull()
  })
  // 2.2 up to 0.17 in, 10 D + 0.5 between, another rule from 1/4 in.
  test.each([[0.131, 2.2], [0.17, 2.2], [0.19, 2.4], [0.242, 2.92]])('a dowel of %d in: %d', (diameter, reduction) => {
    expect(yieldReduction(inches(diameter))).toBeCloseTo(reduction, 9)
  })
  test('none from 1/4 in on', () => {
    expect(yieldReduction(inches(0.25))).toBeNull()
  })
})

/** A nail through a side member into a main member of the same wood, allowable in lb. */
const nailed = (gravity: number, diameter: number, side: number, length: number): number => {
  const bearing = woodBearing(gravity)
  const { load } = governingYield({
    diameter: inches(diameter), bendingYield: pascals(bendingYield('nail', inches(diameter)) ?? NaN),
    main: { bearing, length: inches(length - side) }, side: { bearing, length: inches(side) },
  })
  return load / (yieldReduction(inches(diameter)) ?? NaN) / LBF
}

describe('across the fastening, single shear', () => {
  // AWC, Structural Wood Design: Solved Example Problems: a nail of 0.148 x 3 in, side of 3/4 in, both Douglas fir-larch: 467.5 N, 105 lb.
  test('a nail through 3/4 in of Douglas fir-larch into the same: 105 lb', () => {
    expect(nailed(0.5, 0.148, 0.75, 3) * LBF).toBeCloseTo(467.488421732, -0.7)
  })

  // AWC National Design Specification, table 12N, common nails, side of 1 1/2 in, as remembered, in whole pounds.
  test.each([[0.5, 0.148, 3, 118], [0.5, 0.162, 3.5, 141], [0.42, 0.162, 3.5, 120], [0.55, 0.162, 3.5, 154]])('gravity %d, nail of %d x %d in: %d lb', (gravity, diameter, length, pounds) => {
    expect(Math.abs(nailed(gravity, diameter, 1.5, length) - pounds)).toBeLessThanOrEqual(1)
  })

  const joint: Joint = {
    diameter: mm(4.8), bendingYield: pascals(551e6),
    main: { bearing: pascals(31e6), length: mm(43) }, side: { bearing: pascals(19e6), length: mm(17) },
  }

  // Each mode by its own statics: at the load found the dowel's parts balance (Johansen 1949).
  test('two hinges: each hinge stands where its moment is largest, P (b/2 + a/2) = 2 My', () => {
    const load = yieldLoads(joint).twoHinges
    const [a, b] = [load / (19e6 * 0.0048), load / (31e6 * 0.0048)]
    expect((load * (a + b)) / 2).toBeCloseTo((2 * 551e6 * 0.0048 ** 3) / 6, 6)
  })
  test('one hinge in the main member: the dowel turns in the side member, pressed forwards over c and back over the rest', () => {
    const load = yieldLoads(joint).hingeInMain
    const [qs, qm, t] = [19e6 * 0.0048, 31e6 * 0.0048, 0.017]
    const c = (load / qs + t) / 2
    // Moments of both bearings about the hinge, which stands where the shear is gone, load / qm deep.
    const b = load / qm
    const moment = qs * c * (b + c / 2) - qs * (t - c) * (b + (c + t) / 2) - (qm * b * b) / 2
    expect(c).toBeGreaterThan(0)
    expect(c).toBeLessThan(t)
    expect(moment).toBeCloseTo((551e6 * 0.0048 ** 3) / 6, 9)
  })
  test('no hinge: the dowel turns in both, and the moments at the joint are equal', () => {
    const load = yieldLoads(joint).dowelTurns
    const atJoint = (q: number, length: number): number => q * (length ** 2 / 2 - ((load / q + length) / 2) ** 2)
    expect(atJoint(19e6 * 0.0048, 0.017) + atJoint(31e6 * 0.0048, 0.043)).toBeCloseTo(0, 9)
  })

  test('swapping the members swaps the modes and leaves the loads', () => {
    const swapped = yieldLoads({ ...joint, main: joint.side, side: joint.main })
    const loads = yieldLoads(joint)
    expect(swapped.mainCrushes).toBeCloseTo(loads.sideCrushes, 9)
    expect(swapped.hingeInMain).toBeCloseTo(loads.hingeInSide, 6)
    expect(swapped.dowelTurns).toBeCloseTo(loads.dowelTurns, 6)
    expect(swapped.twoHinges).toBeCloseTo(loads.twoHinges, 6)
  })

  test('the least mode governs, and a steel plate moves the yield into the wood', () => {
    const { mode, load } = governingYield(joint)
    expect(load).toBe(Math.min(...YIELD_MODES.map((m) => yieldLoads(joint)[m])))
    expect(yieldLoads(joint)[mode]).toBe(load)
    const plate = governingYield({ ...joint, side: { bearing: pascals(STEEL_BEARING.value), length: mm(3) } })
    expect(plate.load).toBeGreaterThan(load)
    expect(plate.mode).not.toBe('sideCrushes')
  })
})

describe('the proportional limit, USDA Wood Handbook, chapter 8', () => {
  // By hand, N and mm: K D^1.5 for nails, K D^2 for screws; lags across the grain at 6.4 mm 0.97, at 9.5 mm 0.76.
  test.each([
    ['smoothNail', 'softwood', 0.35, 3.3, 50.04 * 3.3 ** 1.5], ['smoothNail', 'hardwood', 0.62, 2.87, 94.52 * 2.87 ** 1.5],
    ['woodScrew', 'softwood', 0.45, 4.2, 29.79 * 4.2 ** 2], ['woodScrew', 'hardwood', 0.5, 4.8, 31.99 * 4.8 ** 2], ['woodScrew', 'softwood', 0.59, 5.5, 36.4 * 5.5 ** 2],
    ['lagScrew', 'softwood', 0.48, 6.4, 29.51 * 6.4 ** 2 * 0.97], ['lagScrew', 'hardwood', 0.34, 9.5, 26.34 * 9.5 ** 2 * 0.76],
  ] as const)('%s, %s of gravity %d, %d mm: %d N', (kind, wood, gravity, thick, force) => {
    expect(lateralLimit(kind, wood, gravity, mm(thick))).toBeCloseTo(force, 6)
  })
  test('lighter wood than the table’s, or a thicker lag: nothing', () => {
    expect(lateralLimit('woodScrew', 'softwood', 0.28, mm(4))).toBeNull()
    expect(lateralLimit('woodScrew', 'hardwood', 0.32, mm(4))).toBeNull()
    expect(lateralLimit('lagScrew', 'softwood', 0.45, mm(16))).toBeNull()
  })
})
