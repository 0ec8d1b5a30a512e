import { describe, expect, test } from 'vitest'
import type { Patch } from '#core'
import { pottedMass } from '../../../src/load/pottedMass'
import { POUND } from '../../../src/quantity/si'
import { hangerOf } from '../../unit/hanger/hangerOf'

const potted = (patch: Patch) => pottedMass(hangerOf(patch).answers)

describe('a salvia in a 150 mm pot', () => {
  // Garden drum, 2013: 973 g when watered from above, 1176 g after a soak of 3 h and 30 min of draining.
  const [BEFORE, SOAKED] = [0.973, 1.176]
  const POT: Patch = { 'pot.rim': '150 mm', 'pot.material': 'plastic', 'pot.drainage': 'hole', 'weighed.mass': `${BEFORE} kg` }

  test('taken as dry it may soak up more than the 203 g that it did: the safe side', () => {
    expect(potted({ ...POT, 'weighed.state': 'dry' }).watered.mass.low).toBeGreaterThan(SOAKED)
  })

  // Water from above may leave a root ball short of what it can hold: then only the flooded state covers a soak.
  test('taken as just watered, standing in water covers the soak', () => {
    const { watered, flooded } = potted({ ...POT, 'weighed.state': 'watered' })
    expect(watered.mass.high).toBe(BEFORE)
    expect(flooded.mass.high).toBeGreaterThan(SOAKED)
  })

  test('one of unknown weight is reckoned lighter than this at the least and heavier at the most', () => {
    const { watered } = potted({ 'pot.rim': '150 mm', 'pot.material': 'plastic', 'pot.drainage': 'hole' })
    expect(watered.mass.low).toBeLessThan(SOAKED)
    expect(watered.mass.high).toBeGreaterThan(SOAKED)
  })
})

describe('a wilting holly fern in a glazed pot', () => {
  // House plant guru, 2019: 4 lb wilting, about 1.5 lb more after watering: + 37 %.
  const [WILTING, GAIN] = [4 * POUND, 1.5 * POUND]

  // The pot's size was not said: glazed pots of 15 to 17 cm are reckoned to weigh about that much watered.
  test.each([150, 160, 170])('in a pot of %d mm the gain is covered: a wilting mix is not yet quite dry', (rim) => {
    const pot: Patch = { 'pot.rim': `${rim} mm`, 'pot.material': 'stoneware', 'pot.drainage': 'hole' }
    const unweighed = potted(pot).watered.mass
    expect(unweighed.low).toBeLessThan(WILTING + GAIN)
    expect(unweighed.high).toBeGreaterThan(WILTING + GAIN)
    const { watered } = potted({ ...pot, 'weighed.mass': `${WILTING} kg`, 'weighed.state': 'dry' })
    expect(watered.mass.high).toBeGreaterThan(WILTING + GAIN)
    expect((watered.mass.high - WILTING) / WILTING).toBeLessThan(1)
  })
})
