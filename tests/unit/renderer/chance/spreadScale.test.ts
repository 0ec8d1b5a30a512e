import { describe, expect, it } from 'vitest'
import { spreadOf } from '../../../../renderer/chance/spreadScale'

describe('a distribution along a scale', () => {
  it('rises by ratios where it does, holds what is marked beyond it, and knows what lies beyond the limit', () => {
    const { bars, ticks, along } = spreadOf({ edges: [0.1, 0.5, 1, 2], counts: [10, 5, 1], logarithmic: true }, [4], 1, 1)
    expect(bars.map(({ isOver }) => isOver)).toEqual([false, false, true])
    expect(bars.map(({ height }) => height)).toEqual([1, 0.5, 0.1])
    expect([along(0.1), along(4)]).toEqual([0, 1])
    expect(along(0.5) - along(0.1)).toBeCloseTo(Math.log(5) / Math.log(40), 12)
    expect(ticks.map(({ value }) => value)).toContain(1)
    expect(ticks.length).toBeLessThanOrEqual(7)
  })

  it('marks round numbers of the reader’s unit, told in the distribution’s own', () => {
    const { ticks, along } = spreadOf({ edges: [4.5, 5, 5.5], counts: [3, 3], logarithmic: false }, [], null, 0.45359237)
    const pounds = ticks.map(({ value }) => value / 0.45359237)
    expect(pounds.length).toBeGreaterThan(2)
    for (const pound of pounds) expect(pound * 10).toBeCloseTo(Math.round(pound * 10), 9)
    expect(along(5)).toBeCloseTo(0.5, 12)
  })
})
