import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { pottedMass } from '../../../src/load/pottedMass'
import { STATES, type MassRange } from '../../../src/load/states'
import { checkOf, hangerOf, ORDINARY } from '../hanger/hangerOf'
import { without } from '../hanger/without'

const POT: Patch = { 'pot.rim': '185 mm', 'pot.height': '160 mm', 'pot.base': '122 mm', 'pot.material': 'terracotta', 'pot.drainage': 'hole' }
const massOf = (patch: Patch): Record<(typeof STATES)[number], MassRange> => {
  const states = pottedMass(hangerOf({ ...POT, ...patch }).answers)
  return { dry: states.dry.mass, watered: states.watered.mass, flooded: states.flooded.mass }
}
const width = ({ low, high }: MassRange): number => high - low
const weighed = (state: string, mass: string): Patch => ({ 'weighed.mass': mass, 'weighed.state': state })

describe.each(STATES)('weighed %s', (state) => {
  test('is exactly that in its state', () => {
    expect(massOf(weighed(state, '3.3 kg'))[state]).toEqual({ low: 3.3, likely: 3.3, high: 3.3 })
  })

  test('a gram more weighed is a gram more in every state', () => {
    const [less, more] = [massOf(weighed(state, '3.3 kg')), massOf(weighed(state, '3.47 kg'))]
    for (const other of STATES) for (const end of ['low', 'likely', 'high'] as const) expect(more[other][end] - less[other][end]).toBeCloseTo(0.17, 12)
  })

  test('what the pot and the plant weigh no longer matters, only the water they take up', () => {
    // Plastic takes up nothing, so its wall may be as thick as it likes but for the room inside.
    const dense = { ...weighed(state, '3.3 kg'), 'pot.material': 'plastic', 'pot.wall': '3 mm' }
    expect(massOf({ ...dense, 'pot.emptyMass': '80 g' })).toEqual(massOf({ ...dense, 'pot.emptyMass': '110 g' }))
    expect(massOf({ ...dense, 'plant.mass': '200 g' })).toEqual(massOf({ ...dense, 'plant.mass': '900 g' }))
  })
})

test('a dry weighing does not narrow the water: the wet states are as uncertain as their water', () => {
  const dry = massOf(weighed('dry', '2.1 kg'))
  const unweighed = massOf({})
  expect(width(dry.watered)).toBeGreaterThan(0.2)
  expect(width(dry.flooded)).toBeGreaterThan(0.2)
  expect(width(dry.watered)).toBeLessThan(width(unweighed.watered))
})

test('a wet weighing takes the soil out of the question: any mix gives the same watered load', () => {
  const loads = ['peat', 'gardenSoil', 'unknown'].map((kind) => massOf({ ...weighed('watered', '4.2 kg'), 'mix.kind': kind }).watered)
  for (const load of loads) expect(load).toEqual(loads[0])
})

test('the same number is the more alarming the drier the pot was', () => {
  const [dry, watered, flooded] = STATES.map((state) => massOf(weighed(state, '3.3 kg')).flooded.high)
  expect(dry).toBeGreaterThan(watered ?? NaN)
  expect(watered).toBeGreaterThan(flooded ?? NaN)
})

test('states rise and ranges are in order, whatever was weighed', () => {
  for (const state of STATES) {
    for (const kind of ['peat', 'sphagnum', 'cactus', 'unknown', 'expandedClay']) {
      for (const drainage of ['hole', 'none', 'unknown']) {
        const masses = massOf({ ...weighed(state, '3.9 kg'), 'mix.kind': kind, 'pot.drainage': drainage })
        for (const { low, likely, high } of Object.values(masses)) expect(low <= likely && likely <= high, `${state} ${kind} ${drainage}`).toBe(true)
        for (const end of ['low', 'likely', 'high'] as const) expect(masses.dry[end] <= masses.watered[end] && masses.watered[end] <= masses.flooded[end], `${end} ${state} ${kind} ${drainage}`).toBe(true)
      }
    }
  }
})

describe('a weight without its state', () => {
  test('is taken as dry, the safer answer, and that is said', () => {
    const check = checkOf(without(ORDINARY, 'weighed.state'))
    expect(check.solved.hanger.answers['weighed.state']).toBe('dry')
    expect(check.findings.map((f) => f.code)).toContain('WEIGHED_STATE_ASSUMED')
    expect(check.assumed.map((a) => a.path)).toContain('weighed.state')
  })

  test('is not complained of once it is said', () => {
    expect(checkOf(ORDINARY).findings.map((f) => f.code)).not.toContain('WEIGHED_STATE_ASSUMED')
  })
})
