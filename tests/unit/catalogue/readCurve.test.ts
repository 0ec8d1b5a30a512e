import { describe, expect, test } from 'vitest'
import { readCurve, stepFrom, stepUpTo } from '../../../src/catalogue/readCurve'

const POINTS = [[0.2, 5], [0.5, 11], [1.3, -1]] as const

describe('a curve', () => {
  test.each([[0.2, 5], [0.35, 8], [0.5, 11], [0.9, 5], [1.3, -1]])('at %d: %d', (x, y) => {
    expect(readCurve(POINTS, x)).toBeCloseTo(y, 12)
  })
  test.each([0.19, 1.31, NaN, -Infinity])('at %d it says nothing', (x) => {
    expect(readCurve(POINTS, x)).toBeNull()
  })
  test('of one point says that point alone', () => {
    expect(readCurve([[3, 7]], 3)).toBe(7)
    expect(readCurve([[3, 7]], 4)).toBeNull()
    expect(readCurve([], 4)).toBeNull()
  })
})

describe('steps', () => {
  test.each([[0.19, null], [0.2, 5], [0.49, 5], [0.5, 11], [9, -1]])('that begin: at %d', (x, y) => {
    expect(stepFrom(POINTS, x)).toBe(y)
  })
  test.each([[0.1, 5], [0.2, 5], [0.21, 11], [1.3, -1], [1.31, null]])('that end: at %d', (x, y) => {
    expect(stepUpTo(POINTS, x)).toBe(y)
  })
})
