import { describe, expect, test } from 'vitest'
import { frustumCentroid, frustumVolume } from '../../../src/load/frustum'
import { INCH, metres } from '../../../src/quantity/si'

/** Volume from diameters as books give them. */
const volume = (top: number, base: number, height: number): number =>
  frustumVolume({ topRadius: metres(top / 2), baseRadius: metres(base / 2), height: metres(height) })

const LITRE = 0.001
const GALLON = 231 * INCH ** 3

describe('printed volumes', () => {
  test('bucket of 56 and 42 cm across, 15 cm deep: 28.49 l with pi = 22/7', () => {
    // R. S. Aggarwal, Mathematics, exercise 17C, question 7 (also CBSE 2005).
    expect((volume(0.56, 0.42, 0.15) * (22 / 7)) / Math.PI / LITRE).toBeCloseTo(28.49, 10)
  })

  test('bucket of radii 14 and 7 cm, 30 cm deep: 10 780 cm3 with pi = 22/7', () => {
    // Shaalaa, question 50371.
    expect((volume(0.28, 0.14, 0.3) * (22 / 7)) / Math.PI).toBeCloseTo(10_780e-6, 14)
  })

  test('diameters 10 and 4, height 3: 39 pi, not the 21 pi of h (B2 - B1) / 3', () => {
    // eNotes, homework answer: the difference of the two discs is taken for the sum of three areas.
    const wrong = (3 * (Math.PI * 25 - Math.PI * 4)) / 3
    expect(wrong).toBeCloseTo(21 * Math.PI, 10)
    expect(volume(10, 4, 3)).toBeCloseTo(39 * Math.PI, 10)
    expect(volume(10, 4, 3)).toBeCloseTo(122.52, 2)
  })

  test.each([
    // Pot charts of garden centres: litres and US gallons to their last printed figure.
    { size: 7, litres: 4.4, gallons: 1.17, within: 0.05 },
    { size: 11, litres: 17, gallons: 4.5, within: 0.5 },
  ])('cylinder $size x $size in: about $litres l, $gallons gal', ({ size, litres, gallons, within }) => {
    const cylinder = volume(size * INCH, size * INCH, size * INCH)
    expect(cylinder).toBeCloseTo((Math.PI / 4) * (size * INCH) ** 3, 12)
    expect(Math.abs(cylinder / LITRE - litres)).toBeLessThan(within)
    expect(Math.abs(cylinder / GALLON - gallons)).toBeLessThan(within)
  })

  test.each([
    [0.6, 0.653], [0.65, 0.691], [0.7, 0.73], [0.8, 0.813],
  ])('a base of %d of the rim leaves (1 + k + k2)/3 = %d of the cylinder', (k, share) => {
    expect(volume(0.23, 0.23 * k, 0.17) / volume(0.23, 0.23, 0.17)).toBeCloseTo(share, 3)
  })
})

describe('the centroid', () => {
  // The first moment as a sum of 20 000 thin discs.
  function byDiscs(base: number, top: number, height: number): number {
    const discs = 20_000
    let area = 0
    let moment = 0
    for (let i = 0; i < discs; i++) {
      const share = (i + 0.5) / discs
      const radius = base + (top - base) * share
      area += radius * radius
      moment += radius * radius * share * height
    }
    return moment / area
  }

  test.each([
    { base: 0.07, top: 0.105, height: 0.185 },
    { base: 0.13, top: 0.06, height: 0.22 },
    { base: 0, top: 0.09, height: 0.11 },
    { base: 0.04, top: 0.04, height: 0.31 },
  ])('of radii $base to $top lies where thin discs put it', ({ base, top, height }) => {
    expect(frustumCentroid({ baseRadius: metres(base), topRadius: metres(top), height: metres(height) })).toBeCloseTo(byDiscs(base, top, height), 8)
  })

  test('of a cone on its tip is three quarters up, on its base one quarter', () => {
    expect(frustumCentroid({ baseRadius: metres(0), topRadius: metres(0.09), height: metres(0.16) })).toBeCloseTo(0.12, 14)
    expect(frustumCentroid({ baseRadius: metres(0.09), topRadius: metres(0), height: metres(0.16) })).toBeCloseTo(0.04, 14)
  })
})
