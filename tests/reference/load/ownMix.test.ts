import { describe, expect, test } from 'vitest'
import { readField } from '#core'
import { mixDensity } from '../../../src/load/mixDensity'
import { hangerOf } from '../../unit/hanger/hangerOf'

// Rows as printed: dry bulk density g/cm3, container capacity and total porosity in % of the volume.
// Densities wet by their definition (Int. J. Agronomy 2012, 978528, table 1, footnotes), lb/ft3 beside them by 62.43.
const POUNDS_PER_CUBIC_FOOT = 16.0185
const ROWS = [
  // Int. J. Agronomy 2012, 978528, table 1.
  { medium: 'sphagnum peat moss', bulk: 0.11, capacity: 87, porosity: 98, drained: 61.2, flooded: 68.0 },
  { medium: 'pine bark', bulk: 0.18, capacity: 48, porosity: 79, drained: 41.2, flooded: 60.6 },
  // Front. Plant Sci. 2014, 5:625, table 4.
  { medium: 'peat', bulk: 0.113, capacity: 79, porosity: 93, drained: 56.4, flooded: 65.1 },
  { medium: 'perlite', bulk: 0.105, capacity: 44, porosity: 96, drained: 34.0, flooded: 66.5 },
  { medium: 'pumice', bulk: 0.431, capacity: 57, porosity: 83, drained: 62.5, flooded: 78.7 },
  // Pacific Bulb Society wiki, members' single measurements.
  { medium: 'crushed lava rock', bulk: 0.81, capacity: 15, porosity: 67, drained: 59.9, flooded: 92.4 },
  { medium: 'granite grit', bulk: 1.34, capacity: 13, porosity: 41, drained: 91.8, flooded: 109 },
  { medium: 'aged compost', bulk: 0.27, capacity: 74, porosity: 86, drained: 63.1, flooded: 70.5 },
] as const

test.each(ROWS)('$medium typed as it was measured weighs $drained lb/ft3 drained and $flooded flooded', ({ bulk, capacity, porosity, drained, flooded }) => {
  const mix = mixDensity(hangerOf({ 'mix.bulkDensity': `${bulk} kg/L`, 'mix.capacity': `${capacity} %`, 'mix.porosity': `${porosity} %` }).answers)
  expect(Math.abs(mix.watered.likely / POUNDS_PER_CUBIC_FOOT - drained)).toBeLessThan(0.15)
  expect(Math.abs(mix.flooded.likely / POUNDS_PER_CUBIC_FOOT - flooded)).toBeLessThan(0.5)
})

describe('impossible printed values', () => {
  // Arboriculture & Urban Forestry, table 1: soils with a container capacity of 109 to 114 % of their volume.
  test.each([109, 114])('a capacity of %d % is refused', (capacity) => {
    expect(readField('mix.capacity', `${capacity} %`)).toMatchObject({ ok: false })
  })
})
