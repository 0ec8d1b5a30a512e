import { describe, expect, test } from 'vitest'
import { roundLegs, type RoundLeg, type SlingPlan } from '../../../src/check/slingPlan'
import { metres, radians } from '../../../src/quantity/si'
import { ON_AXIS, tautPath, type TautPath } from '../../../src/statics/tautPath'
import { equalLegs } from './equalLegs'

function pathOf(): TautPath {
  const path = tautPath({ profile: [{ r: 0.07, z: 0 }, { r: 0.105, z: 0.185 }], upper: ON_AXIS, strand: metres(0.8) })
  if (!path.ok) throw new Error('no path')
  return path
}
const PATH = pathOf()
const at = (...angles: readonly number[]): readonly RoundLeg[] => angles.map((angle) => ({ angle, upper: [0, 0], path: PATH }))
/** Legs that are longer, as 1, one figure a leg. */
const longer = ({ uneven }: SlingPlan): readonly string[] => uneven.filter((each) => each.every((x) => x >= 0)).map((each) => each.join(''))

describe('what is tried to find the worst leg', () => {
  test.each([3, 4, 5])('of %d legs evenly round: one for all, the weight towards it and half-way to the next', (count) => {
    const { distinct, alike, asides } = equalLegs(count, PATH)
    expect([distinct, alike]).toEqual([[0], true])
    expect(asides).toEqual([0, Math.PI / count])
  })

  test('of even legs: one longer, it and the opposite one, every other one; each way round', () => {
    expect(longer(equalLegs(4, PATH))).toEqual(['1000', '1010', '1010'])
    expect(longer(equalLegs(5, PATH))).toEqual(['10000', '10100', '10101'])
    const { uneven } = equalLegs(4, PATH)
    expect(uneven.filter((each) => each.some((x) => x < 0)).map((each) => each.map((x) => (x === 0 ? 0 : -x)).join(''))).toEqual(longer(equalLegs(4, PATH)))
  })

  test('of legs at the corners of a long pot, mirror images of one another: beside its neighbours, too', () => {
    const corners = roundLegs(at(0.4, Math.PI - 0.4, Math.PI + 0.4, 2 * Math.PI - 0.4))
    expect([corners.distinct, corners.alike]).toEqual([[0], true])
    expect(longer(corners)).toEqual(['1000', '1010', '1100', '1001', '1010'])
    expect(corners.asides).toEqual([0.4, Math.PI / 2])
  })

  test('of unlike legs: each, and the weight between the last and the first as well', () => {
    const unlike = roundLegs(at(0, 2, 4.4))
    expect([unlike.distinct, unlike.alike]).toEqual([[0, 1, 2], false])
    expect(unlike.asides).toEqual([0, 1, 2, (2 + 4.4) / 2, 4.4, (4.4 + 2 * Math.PI) / 2])
    expect(longer(unlike)).toEqual(['100', '110', '010', '011', '001', '101', '101'])
  })

  test('of many unlike legs: four directions of the weight', () => {
    expect(roundLegs(at(0, 1, 2.3, 3.9, 5)).asides).toEqual([0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2])
  })

  test.each<readonly [string, Partial<RoundLeg>]>([
    ['leaves the pot farther out', { path: { ...PATH, leave: { ...PATH.leave, r: PATH.leave.r + 0.01 } } }],
    ['leaves it higher up', { path: { ...PATH, leave: { ...PATH.leave, z: PATH.leave.z - 0.01 } } }],
    ['hangs from beside the axis', { upper: [0.02, 0] }],
    ['stands otherwise', { path: { ...PATH, angle: radians(PATH.angle + 0.01) } }],
    ['stands elsewhere round', { angle: 0.02 }],
  ])('a leg that %s makes them unlike: its neighbours are tried with it', (_, change) => {
    const [first, ...others] = at(0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2) as [RoundLeg, ...RoundLeg[]]
    const plan = roundLegs([{ ...first, ...change }, ...others])
    expect([...longer(plan), ...plan.distinct.map(String)]).not.toEqual([...longer(equalLegs(4, PATH)), '0'])
  })

  test('each leg has the standards’ floor by its own angle, of three legs at most', () => {
    expect(roundLegs(at(0, 2, 4.4)).legs[0]?.floor).toBeCloseTo(1 / (3 * Math.cos(PATH.angle)), 12)
    expect(equalLegs(2, PATH).legs[0]?.floor).toBeCloseTo(1 / (2 * Math.cos(PATH.angle)), 12)
    expect(equalLegs(6, PATH).legs[0]?.floor).toBeCloseTo(1 / (3 * Math.cos(PATH.angle)), 12)
  })
})
