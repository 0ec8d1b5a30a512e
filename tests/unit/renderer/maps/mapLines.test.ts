import { describe, expect, test } from 'vitest'
import type { MapCell } from '#core'
import { limitLines, useLines, type ContourLine } from '../../../../renderer/maps/mapLines'

const N = 21
const cell = (utilisation: number | null, verdict: MapCell['verdict']): MapCell => ({ utilisation, verdict, link: 'leg' })
const used = (utilisation: number): MapCell => cell(utilisation, utilisation > 1 ? 'fails' : utilisation > 0.65 ? 'just holds' : 'holds')
type At = (x: number, y: number) => MapCell | null
const gridOf = (at: At) => Array.from({ length: N }, (_, y) => Array.from({ length: N }, (__, x) => at(x, y)))
const spotsOf = (lines: readonly ContourLine[]) => lines.flatMap(({ spots }) => spots)
/** What cannot be had, in the midst of the grid. */
const isHole = (x: number, y: number): boolean => x >= 4 && x <= 8 && y >= 4 && y <= 8

// A slant plane, of which every line is straight: u = 0.2 + 0.06 x + 0.013 y.
const plane = (x: number, y: number): number => 0.2 + 0.06 * x + 0.013 * y
// A round bowl: u = r2 / 36, so that all it may carry lies at r = 6.
const bowl = (x: number, y: number): number => ((x - 10) ** 2 + (y - 10) ** 2) / 36

describe('lines of like use', () => {
  test('of a plane lie where the plane says, from rim to rim', () => {
    const lines = useLines(gridOf((x, y) => used(plane(x, y))), N)
    expect([...new Set(lines.map(({ level }) => level))]).toEqual([0.25, 0.5, 0.75, 1, 1.5])
    for (const { level, spots } of lines) for (const [x, y] of spots) expect(plane(x, y)).toBeCloseTo(level, 9)
    const [one] = lines.filter(({ level }) => level === 1)
    expect([Math.min(...(one?.spots ?? []).map(([, y]) => y)), Math.max(...(one?.spots ?? []).map(([, y]) => y))]).toEqual([0, N - 1])
  })

  test('none is drawn before every row has come', () => {
    const grid = gridOf((x, y) => used(plane(x, y)))
    expect([useLines([...grid.slice(0, 5), undefined, ...grid.slice(6)], N), useLines(grid.slice(0, 9), N), limitLines(grid.slice(0, 9), N)]).toEqual([[], [], []])
  })

  test('none runs round what cannot be had or is not known, as if nothing were asked of it there', () => {
    for (const hole of [null, cell(null, 'not enough known')]) expect(useLines(gridOf((x, y) => (isHole(x, y) ? hole : used(0.6))), N)).toEqual([])
    const crossed = useLines(gridOf((x, y) => (isHole(x, y) ? null : used(x / 12))), N).filter(({ level }) => level === 0.5)
    expect(spotsOf(crossed).every(([x]) => Math.abs(x - 6) < 1e-9)).toBe(true)
    expect(spotsOf(crossed).some(([x, y]) => isHole(Math.round(x), Math.round(y)))).toBe(false)
    expect(crossed).toHaveLength(2)
  })
})

describe('the limit', () => {
  test('of a plane is the line where all it may carry is used', () => {
    const spots = spotsOf(limitLines(gridOf((x, y) => used(plane(x, y))), N))
    expect(spots.length).toBeGreaterThan(N)
    for (const [x, y] of spots) expect(plane(x, y)).toBeCloseTo(1, 3)
  })

  test('of a bowl is one circle, never further out than the bowl is held', () => {
    const limit = limitLines(gridOf((x, y) => used(bowl(x, y))), N)
    expect(limit).toHaveLength(1)
    for (const [x, y] of spotsOf(limit)) {
      expect(Math.hypot(x - 10, y - 10)).toBeLessThan(6.001)
      expect(Math.hypot(x - 10, y - 10)).toBeGreaterThan(5.95)
    }
  })

  test('where not the use decides lies at the last point that was checked to hold', () => {
    const doubted: At = (x) => (x <= 9 ? used(0.4) : cell(0.45, 'not enough known'))
    const unknown: At = (x) => (x <= 9 ? used(0.4) : cell(null, 'not enough known'))
    for (const at of [doubted, unknown]) {
      const spots = spotsOf(limitLines(gridOf(at), N))
      expect(spots.length).toBe(N)
      for (const [x] of spots) expect(x).toBeCloseTo(9, 2)
    }
  })

  test('is none round what cannot be had, and none where all fails or all holds', () => {
    expect(limitLines(gridOf((x, y) => (isHole(x, y) ? null : used(0.6))), N)).toEqual([])
    expect([limitLines(gridOf(() => used(0.6)), N), limitLines(gridOf(() => used(1.6)), N)]).toEqual([[], []])
  })
})
