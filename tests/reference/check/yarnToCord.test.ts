import { describe, expect, test } from 'vitest'
import { FIBRE_PROPERTIES, FIBRES } from '../../../src/catalogue/cords'
import { COTTON_YARN, TENACITY_SPREAD, YARN_TO_CORD } from '../../../src/catalogue/tenacities'

const cNtex = (newtonsPerKilogramPerMetre: number): number => newtonsPerKilogramPerMetre / 1e4

describe('fibre to yarn to cord', () => {
  // Rieter's handbook: of fibre of 24 cN/tex a mill's rotor yarn keeps 45 to 55 %, its ring yarn 50 to 65 %.
  test.each([['rotor', 0.45, 0.55], ['ring', 0.5, 0.65]] as const)('%s yarn keeps %d to %d of fibre of 24 cN/tex', (spinning, low, high) => {
    expect(cNtex(COTTON_YARN[spinning].low)).toBeCloseTo(24 * low, 12)
    expect(cNtex(COTTON_YARN[spinning].high)).toBeCloseTo(24 * high, 12)
  })

  test('the tenacities counted for cotton cord lie below those of its yarns, made up badly', () => {
    const { tenacity } = FIBRE_PROPERTIES.cotton
    for (const { low } of Object.values(COTTON_YARN)) {
      expect(tenacity?.tight.value).toBeLessThan(low * YARN_TO_CORD.low)
      expect(tenacity?.loose.value).toBeLessThan(low * YARN_TO_CORD.low)
    }
  })

  // Cotton cord about 6 to 10 cN/tex of its own mass, by the same figures.
  test('the range of tight cotton holds 6 to 10 cN/tex', () => {
    expect(cNtex(TENACITY_SPREAD.cotton?.tight.low ?? NaN)).toBeLessThan(6)
    expect(cNtex(TENACITY_SPREAD.cotton?.tight.high ?? NaN)).toBeGreaterThan(10)
  })

  // Morton and Hearle, Physical Properties of Textile Fibres, 4th ed., table 13.1: tenacity of the fibre itself, cN/tex.
  test.each([['cotton', 19], ['jute', 31], ['hemp', 47], ['nylon', 47], ['polyester', 47]] as const)('no %s cord is taken for as strong as its fibre, %d cN/tex', (fibre, ofFibre) => {
    expect(cNtex(TENACITY_SPREAD[fibre]?.tight.high ?? NaN)).toBeLessThan(ofFibre)
  })

  test.each(FIBRES)('%s: what counts lies in the range that is shown, in its lower half', (fibre) => {
    const counted = FIBRE_PROPERTIES[fibre].tenacity
    const spread = TENACITY_SPREAD[fibre]
    expect(spread === null).toBe(counted === null)
    for (const make of ['loose', 'tight'] as const) {
      if (counted === null || spread === null) continue
      expect(counted[make].value).toBeGreaterThanOrEqual(spread[make].low * 0.999)
      expect(counted[make].value).toBeLessThanOrEqual((spread[make].low + spread[make].high) / 2)
    }
  })
})
