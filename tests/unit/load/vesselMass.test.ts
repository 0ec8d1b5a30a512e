import { expect, test } from 'vitest'
import { vesselMass, type Vessel } from '../../../src/load/vesselMass'

/** Of stoneware, 6 to 10 mm thick and likely 7 mm, 2100 to 2400 kg/m3. */
const massOf = (vessel: Vessel) => vesselMass(vessel, 'stoneware')

test('a round vessel weighs the cylinder outside less the room inside, thin walls with light clay and thick ones with heavy', () => {
  const { low, likely, high } = massOf({ width: 0.2, depth: 0.1, round: true, longer: 0 })
  const clay = (wall: number): number => Math.PI * ((0.1 + wall) ** 2 * (0.1 + wall) - 0.1 ** 2 * 0.1)
  expect(low).toBeCloseTo(clay(0.006) * 2100, 12)
  expect(likely).toBeCloseTo(clay(0.007) * 2250, 12)
  expect(high).toBeCloseTo(clay(0.01) * 2400, 12)
})

test('a long vessel weighs a box of its length, walls at both ends', () => {
  const { likely } = massOf({ width: 0.2, depth: 0.1, round: false, longer: 0.3 })
  expect(likely).toBeCloseTo((0.214 * 0.514 * 0.107 - 0.2 * 0.5 * 0.1) * 2250, 12)
})
