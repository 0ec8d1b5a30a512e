import { describe, expect, test } from 'vitest'
import { readField } from '#core'
import { INCH } from '../../../src/quantity/si'
import { solidOf } from './solidOf'

/** Volume from diameters as books give them. */
const volume = (top: number, base: number, height: number): number => solidOf({ 'pot.rim': top, 'pot.base': base, 'pot.height': height }).volume
const centroid = (base: number, top: number, height: number): number => solidOf({ 'pot.rim': 2 * top, 'pot.base': 2 * base, 'pot.height': height }).centroid

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

test('a square frustum: H/3 (a2 + ab + b2)', () => {
  // As in any geometry textbook; sides 24 and 18 cm, 21 cm high: 7 (576 + 432 + 324) = 9324 cm3.
  expect(solidOf({ 'pot.shape': 'square', 'pot.rim': 0.24, 'pot.base': 0.18, 'pot.height': 0.21 }).volume / LITRE).toBeCloseTo(9.324, 12)
})

test('half a ball: 2/3 pi r3, its centroid 3/8 r from the rim', () => {
  const ball = solidOf({ 'pot.shape': 'bowl', 'pot.rim': 0.3, 'pot.base': 0, 'pot.height': 0.15 })
  expect(ball.volume).toBeCloseTo((2 / 3) * Math.PI * 0.15 ** 3, 14)
  expect(ball.centroid).toBeCloseTo(0.15 - (3 / 8) * 0.15, 14)
})

test('a bowl of known base is the zone of a ball: pi h (3 a2 + 3 b2 + h2) / 6', () => {
  // The zone between a great circle of 13 cm and the circle of 5 cm that lies 12 cm below it (5-12-13).
  expect(solidOf({ 'pot.shape': 'bowl', 'pot.rim': 0.26, 'pot.base': 0.1, 'pot.height': 0.12 }).volume)
    .toBeCloseTo((Math.PI * 0.12 * (3 * 0.13 ** 2 + 3 * 0.05 ** 2 + 0.12 ** 2)) / 6, 14)
})

test('a pot with a belly is the zone of a ball cut above and below its middle', () => {
  // Circles of 5 cm 12 cm below and of 12 cm 5 cm above the great circle of 13 cm.
  const zone = (a: number, b: number, h: number): number => (Math.PI * h * (3 * a * a + 3 * b * b + h * h)) / 6
  expect(solidOf({ 'pot.shape': 'bellied', 'pot.rim': 0.24, 'pot.base': 0.1, 'pot.belly': 0.26, 'pot.height': 0.17, 'pot.bellyHeight': 0.12 }).volume)
    .toBeCloseTo(zone(0.13, 0.05, 0.12) + zone(0.13, 0.12, 0.05), 14)
})

describe('gallons', () => {
  // 1099 in3 is 4.76 liquid gallons of 231 in3, but 4.09 dry ones of 268.8 in3: pot charts mix the two.
  const PRINTED = 1099
  test('are liquid ones', () => {
    const read = readField('reservoir.volume', '1 US gal')
    const gallon = read.ok && typeof read.value === 'number' ? read.value : NaN
    expect((PRINTED * INCH ** 3) / gallon).toBeCloseTo(4.76, 2)
    expect((PRINTED * INCH ** 3) / gallon).not.toBeCloseTo(4.09, 2)
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
    expect(centroid(base, top, height)).toBeCloseTo(byDiscs(base, top, height), 8)
  })

  test('of a cone on its tip is three quarters up, on its base one quarter', () => {
    expect(centroid(0, 0.09, 0.16)).toBeCloseTo(0.12, 14)
    expect(centroid(0.09, 0, 0.16)).toBeCloseTo(0.04, 14)
  })
})
