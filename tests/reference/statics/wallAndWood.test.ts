import { describe, expect, test } from 'vitest'
import { metres, newtons, pascals, radians, type Metres } from '../../../src/quantity/si'
import { bracketScrews } from '../../../src/statics/bracket'
import { cantilever, cantileverDroop } from '../../../src/statics/cantilever'
import { angledScrew, linearUse } from '../../../src/statics/interaction'
import { dowelBearing, projectingPin } from '../../../src/statics/projectingPin'
import { rectangleSection, roundSection } from '../../../src/statics/section'
import { wallHook } from '../../../src/statics/wallHook'

const mm = (x: number): Metres => metres(x / 1000)
// Wood Handbook, equation 8-3: 114.5 G^1.84 N/mm2.
const bearing = (gravity: number) => dowelBearing(pascals(114.5e6), 1.84, gravity)

describe('a bracket', () => {
  test('100 N at 250 mm, screws 100 and 20 mm above the lower edge: 240 and 48 N, 50 N of shear (W a y / sum y2, by hand)', () => {
    const found = bracketScrews({ load: newtons(100), reach: mm(250), swing: radians(0), screws: [{ across: mm(0), up: mm(100) }, { across: mm(0), up: mm(20) }] })
    if (!found.ok) throw new Error(found.reason)
    expect(found.pulls.map((pull) => Math.round(pull))).toEqual([240, 48])
    expect(found.shears).toEqual([50, 50])
  })

  test('one upper screw takes W a / h', () => {
    const found = bracketScrews({ load: newtons(67), reach: mm(310), swing: radians(0), screws: [{ across: mm(12), up: mm(140) }] })
    if (!found.ok) throw new Error(found.reason)
    expect(found.pulls[0]).toBeCloseTo((67 * 310) / 140, 10)
  })

  test('swung aside: the screws of a group share an eccentric shear as M r / sum r2 (Shigley, eccentric loading)', () => {
    // Rectangle of 60 by 90 mm: each corner is as far from the middle.
    const screws = [[0, 20], [60, 20], [0, 110], [60, 110]].map(([across = 0, up = 0]) => ({ across: mm(across), up: mm(up) }))
    const found = bracketScrews({ load: newtons(80), reach: mm(300), swing: radians(0.7), screws })
    if (!found.ok) throw new Error(found.reason)
    const moment = 80 * 0.3 * Math.sin(0.7)
    const r = Math.hypot(0.03, 0.045)
    const turning = moment / (4 * r)
    const farther = Math.hypot((turning * 0.045) / r, 20 + (turning * 0.03) / r)
    const nearer = Math.hypot((turning * 0.045) / r, 20 - (turning * 0.03) / r)
    ;[nearer, farther, nearer, farther].forEach((shear, i) => expect(found.shears[i]).toBeCloseTo(shear, 10))
    expect(found.sideMoment).toBeCloseTo(moment, 12)
    expect(found.edge).toBeCloseTo((2 * (80 * 0.3 * Math.cos(0.7)) * (0.02 + 0.11)) / (2 * (0.02 ** 2 + 0.11 ** 2)), 9)
  })

  test('the arm: W a on its section, droop W a3 / (3 E I) (Shigley, table A-9, cantilever)', () => {
    const bar = roundSection(mm(9))
    expect(cantilever({ load: newtons(47), reach: mm(230), section: bar }).bending).toBeCloseTo((32 * 47 * 0.23) / (Math.PI * 0.009 ** 3), 3)
    const flat = rectangleSection(mm(20), mm(6))
    expect(cantilever({ load: newtons(47), reach: mm(230), section: flat })).toEqual({
      moment: expect.closeTo(47 * 0.23, 12) as number, bending: expect.closeTo((6 * 47 * 0.23) / (0.02 * 0.006 ** 2), 3) as number, shear: expect.closeTo((3 * 47) / (2 * 0.02 * 0.006), 6) as number,
    })
    expect(cantileverDroop(newtons(47), mm(230), pascals(200e9), flat.inertia)).toBeCloseTo((47 * 0.23 ** 3) / (3 * 200e9 * flat.inertia), 14)
  })
})

describe('a pot leaning on the wall', () => {
  test('three forces meet in one point: the cord runs through where the weight meets the wall’s push', () => {
    const found = wallHook({ weight: newtons(54), centreFromWall: mm(96), projection: mm(18), drop: mm(520) })
    if (!found.ok) throw new Error(found.reason)
    expect(Math.tan(found.angle)).toBeCloseTo((96 - 18) / 520, 12)
    expect(found.pull).toBeCloseTo((54 * 78) / 520, 12)
    expect(found.resultant).toBeCloseTo(54 / Math.cos(found.angle), 10)
    expect(found.moment).toBeCloseTo(54 * 0.018, 12)
  })
})

describe('a pin standing out of wood', () => {
  // Fe of specific gravities, N/mm2.
  test.each([[0.35, 16.6], [0.42, 23.2], [0.5, 32], [0.6, 44.7]])('bearing of wood of %d: %d N/mm2', (gravity, expected) => {
    expect(bearing(gravity) / 1e6).toBeCloseTo(expected, 1)
  })

  // P e + P2 / (2 Fe D) = Fyb D3 / 6 worked by hand; nails 690, screw 551 N/mm2 (National Design Specification, bending yield of nails and screws), wood 0.42.
  test.each([[2.87, 690, 10, 232], [2.87, 690, 20, 130], [2.87, 690, 30, 89], [4.83, 551, 10, 770], [4.83, 551, 30, 329]])('%d mm of %d N/mm2, %d mm out: yields at %d N', (diameter, stress, projection, load) => {
    const found = projectingPin({ diameter: mm(diameter), projection: mm(projection), depth: mm(90), yieldStress: pascals(stress * 1e6), bearing: bearing(0.42) })
    expect(found.mode).toBe('bends')
    expect(Math.abs(found.load - load)).toBeLessThanOrEqual(0.51)
  })

  /** Moments and forces of the wood's bearing on the pin, summed by pieces down to `depth`, turning over at `at`. */
  function bearingBelow(q: number, at: number, depth: number): { readonly force: number; readonly moment: number } {
    const pieces = 100_000
    let force = 0
    let moment = 0
    for (let i = 0; i < pieces; i++) {
      const z = ((i + 0.5) / pieces) * depth
      const push = (q * depth) / pieces * (z < at ? 1 : -1)
      force += push
      moment += push * z
    }
    return { force, moment }
  }

  test('short in the wood it turns about a point where forces and moments balance', () => {
    const wood = bearing(0.47)
    const pin = { diameter: mm(5.5), projection: mm(23), depth: mm(19), yieldStress: pascals(600e6), bearing: wood }
    const { load, mode, at } = projectingPin(pin)
    expect(mode).toBe('turnsInWood')
    const { force, moment } = bearingBelow(wood * 0.0055, at, 0.019)
    expect(force / load).toBeCloseTo(1, 3)
    expect(moment / load / 0.023).toBeCloseTo(-1, 3)
  })

  test('long in the wood its hinge stands where nothing is left to shear, and bears the plastic moment', () => {
    const wood = bearing(0.47)
    const { load, at } = projectingPin({ diameter: mm(3.4), projection: mm(14), depth: mm(60), yieldStress: pascals(600e6), bearing: wood })
    expect(load).toBeCloseTo(wood * 0.0034 * at, 8)
    expect(load * (0.014 + at) - (wood * 0.0034 * at * at) / 2).toBeCloseTo((600e6 * 0.0034 ** 3) / 6, 10)
  })
})

describe('pull with shear', () => {
  test('straight line: a third of one and a quarter of the other', () => {
    expect(linearUse({ pull: newtons(90), shear: newtons(55) }, { pull: newtons(270), shear: newtons(220) })).toBeCloseTo(1 / 3 + 1 / 4, 12)
  })

  // National Design Specification, 12.4.1 (Hankinson's form): along the face the lateral value, straight out the withdrawal.
  test('a screw at an angle', () => {
    expect(angledScrew(newtons(710), newtons(320), radians(0))).toBeCloseTo(320, 10)
    expect(angledScrew(newtons(710), newtons(320), radians(Math.PI / 2))).toBeCloseTo(710, 10)
    expect(angledScrew(newtons(710), newtons(320), radians(Math.PI / 6))).toBeCloseTo((710 * 320) / (0.75 * 710 + 0.25 * 320), 9)
  })
})
