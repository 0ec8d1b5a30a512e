import jStat from 'jstat'
import { describe, expect, test } from 'vitest'
import { GRUBBS_CRITICAL, K_SCATTER_KNOWN, K_SCATTER_UNKNOWN } from '../../../src/catalogue/pullTests'
import { asTenSeconds } from '../../../src/check/pullTests'
import { factorForTests } from '../../../src/check/factorForTests'

// Student's t and the normal distribution by jStat, a statistics library of its own.

describe('k_n, EN 1990:2002, annex D, table D1', () => {
  const unknown = (n: number): number => jStat.studentt.inv(0.95, n - 1) * Math.sqrt(1 + 1 / n)
  const known = (n: number): number => jStat.normal.inv(0.95, 0, 1) * Math.sqrt(1 + 1 / n)

  test.each(K_SCATTER_UNKNOWN.points)('scatter unknown, %d tests: %d is t(0.95, n - 1) sqrt(1 + 1/n), within 0.02', (n, k) => {
    expect(Math.abs(k - unknown(n))).toBeLessThanOrEqual(0.02)
  })

  test.each(K_SCATTER_KNOWN.points)('scatter known, %d tests: %d is 1.645 sqrt(1 + 1/n), within 0.02', (n, k) => {
    expect(Math.abs(k - known(n))).toBeLessThanOrEqual(0.02)
  })

  test.each([7, 9, 12, 15, 18, 25, 29])('between its rows, %d tests: never below the exact one by more than the rounding of the table', (n) => {
    const k = factorForTests(K_SCATTER_UNKNOWN.points, n)
    expect(k).toBeGreaterThan(unknown(n) - 0.02)
    expect(k).toBeLessThan(unknown(n) + 0.06)
  })

  test('beyond thirty tests the last row is kept, which is never below the exact one', () => {
    for (const n of [31, 50, 400]) expect(factorForTests(K_SCATTER_UNKNOWN.points, n)).toBeGreaterThanOrEqual(unknown(n))
  })
})

describe('Grubbs’ critical values, ASTM E178', () => {
  // G = (n - 1) / sqrt(n) * sqrt(t^2 / (n - 2 + t^2)), t of n - 2 degrees of freedom at 5 % / (2 n).
  const grubbs = (n: number): number => {
    const t = jStat.studentt.inv(1 - 0.05 / (2 * n), n - 2)
    return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t))
  }

  test.each(GRUBBS_CRITICAL.points)('%d tests: %d', (n, critical) => {
    expect(Math.abs(critical - grubbs(n))).toBeLessThan(0.0012)
  })

  test('between rows the table lies no further off than 0.01', () => {
    for (const n of [21, 22, 23, 24, 26, 27, 28, 29]) expect(Math.abs(factorForTests(GRUBBS_CRITICAL.points, n) - grubbs(n))).toBeLessThan(0.01)
  })

  test('of three tests none can stand out: at most 2 / sqrt(3) from the mean', () => {
    expect(factorForTests(GRUBBS_CRITICAL.points, 3)).toBeGreaterThan(2 / Math.sqrt(3))
  })
})

// Meredith's relation F = F1 (1 - k log10(t / t1)), k 0.088 for cotton, from memory: by hand from a 10 s test.
test.each([[1, 1.088], [10, 1], [60, 0.9315], [3600, 0.7751], [86400, 0.6535]])('a cotton strand that breaks after %d s at this load bears it divided by %d in 10 s', (time, share) => {
  expect(asTenSeconds(100, 0.088, time)).toBeCloseTo(100 / share, 1)
})
