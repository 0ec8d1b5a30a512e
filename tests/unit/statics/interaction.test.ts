import { describe, expect, test } from 'vitest'
import { newtons, radians } from '../../../src/quantity/si'
import { angledScrew, linearUse } from '../../../src/statics/interaction'

const both = (pull: number, shear: number) => ({ pull: newtons(pull), shear: newtons(shear) })

describe('pull and shear together', () => {
  test('one alone counts as itself, without asking for the other’s capacity', () => {
    expect(linearUse(both(36, 0), both(90, 0))).toBeCloseTo(0.4, 12)
    expect(linearUse(both(0, 36), both(0, 120))).toBeCloseTo(0.3, 12)
    expect(linearUse(both(0, 0), both(0, 0))).toBe(0)
  })

  test('a load that nothing holds is endless use', () => {
    expect(linearUse(both(1, 30), both(0, 120))).toBe(Infinity)
  })
})

describe('a screw loaded at an angle', () => {
  const anglesUp = Array.from({ length: 19 }, (_, i) => radians((i / 18) * (Math.PI / 2)))

  test('goes from one value to the other without passing either', () => {
    const loads = anglesUp.map((angle) => angledScrew(newtons(250), newtons(900), angle))
    loads.slice(1).forEach((less, i) => expect(less).toBeLessThan(loads[i]!))
    expect(loads[0]).toBeCloseTo(900, 9)
    expect(loads.at(-1)).toBeCloseTo(250, 9)
  })

  test('is the same load whatever its angle where both values are alike', () => {
    for (const angle of anglesUp) expect(angledScrew(newtons(333), newtons(333), angle)).toBeCloseTo(333, 9)
  })

  test('is not to be had without the one or the other', () => {
    expect(angledScrew(newtons(0), newtons(300), radians(0))).toBe(0)
    expect(angledScrew(newtons(300), newtons(0), radians(Math.PI / 2))).toBe(0)
  })
})
