import { describe, expect, test } from 'vitest'
import { metres, pascals } from '../../../src/quantity/si'
import { projectingPin, type ProjectingPinInput } from '../../../src/statics/projectingPin'
import { plasticMoment } from '../../../src/statics/wire'

const NAIL: ProjectingPinInput = { diameter: metres(0.0036), projection: metres(0.017), depth: metres(0.045), yieldStress: pascals(640e6), bearing: pascals(27e6) }
const load = (change: Partial<ProjectingPinInput>): number => projectingPin({ ...NAIL, ...change }).load

describe('a pin standing out of wood', () => {
  test.each([
    ['diameter', metres, [0.002, 0.0036, 0.006, 0.01]], ['depth', metres, [0, 0.004, 0.012, 0.045, 0.2]],
    ['yieldStress', pascals, [200e6, 640e6, 900e6]], ['bearing', pascals, [9e6, 27e6, 60e6]],
  ] as const)('never bears less with more %s', (key, unit, values) => {
    const loads = values.map((x) => load({ [key]: unit(x) }))
    loads.slice(1).forEach((more, i) => expect(more).toBeGreaterThanOrEqual(loads[i]!))
    expect(loads.at(-1)).toBeGreaterThan(loads[0]!)
  })

  test('bears less the farther it stands out, and not more than a bar fixed at the wood’s face', () => {
    const loads = [0, 0.005, 0.017, 0.06].map((e) => load({ projection: metres(e) }))
    loads.slice(1).forEach((less, i) => expect(less).toBeLessThan(loads[i]!))
    expect(load({ projection: metres(0.06) })).toBeLessThan(plasticMoment(NAIL.diameter, NAIL.yieldStress) / 0.06)
    expect(load({ projection: metres(0.06), bearing: pascals(1e15) })).toBeCloseTo(plasticMoment(NAIL.diameter, NAIL.yieldStress) / 0.06, 3)
  })

  test('passes from turning to bending as it goes deeper, without a step', () => {
    expect(projectingPin({ ...NAIL, depth: metres(0.008) }).mode).toBe('turnsInWood')
    expect(projectingPin(NAIL).mode).toBe('bends')
    let [low, high] = [0.008, 0.045]
    for (let i = 0; i < 50; i++) {
      const half = (low + high) / 2
      if (projectingPin({ ...NAIL, depth: metres(half) }).mode === 'bends') high = half
      else low = half
    }
    expect(load({ depth: metres(low) })).toBeCloseTo(load({ depth: metres(high) }), 6)
  })

  test('not in the wood at all bears nothing; at the wood’s face it bears sqrt(2 q My)', () => {
    expect(load({ depth: metres(0), projection: metres(0) })).toBe(0)
    expect(load({ projection: metres(0) })).toBeCloseTo(Math.sqrt(2 * 27e6 * 0.0036 * plasticMoment(NAIL.diameter, NAIL.yieldStress)), 8)
  })
})
