import { describe, expect, test } from 'vitest'
import { pottedMass } from '../../../src/load/pottedMass'
import { POUND } from '../../../src/quantity/si'
import { hangerOf } from '../../unit/hanger/hangerOf'

const basket = pottedMass(hangerOf({ 'pot.rim': '10 in', 'pot.height': '6 in', 'pot.base': '7 in', 'pot.material': 'plastic', 'pot.drainage': 'hole' }).answers)

describe('a hanging basket of 10 in just watered', () => {
  // Pages for growers give 6 to 8 lb and 15 to 25 lb for it: they cannot all be right, and the range must not
  // be narrower than what lies between.
  test('may be nearly as light as 8 lb and heavier than 15', () => {
    expect(basket.watered.mass.low).toBeLessThanOrEqual(9 * POUND)
    expect(basket.watered.mass.high).toBeGreaterThan(15 * POUND)
  })

  test('is not reckoned beyond the heaviest of them', () => {
    expect(basket.flooded.mass.high).toBeLessThan(25 * POUND)
  })
})
