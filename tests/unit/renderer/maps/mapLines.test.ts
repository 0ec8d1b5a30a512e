import { expect, test } from 'vitest'
import type { MapCell } from '#core'
import { limitLines, useLines } from '../../../../renderer/maps/mapLines'

const N = 21
const cell = (utilisation: number): MapCell => ({ utilisation, verdict: utilisation <= 1 ? 'just holds' : 'fails', link: 'leg' })
const gridOf = (at: (x: number, y: number) => number) => Array.from({ length: N }, (_, y) => Array.from({ length: N }, (__, x) => cell(at(x, y))))

test('lines of a plane lie where the plane says, from rim to rim', () => {
  const lines = useLines(gridOf((x) => x / 10), N, N).filter(({ level }) => level === 1)
  const spots = lines.flatMap((line) => line.spots)
  expect(spots.every(([x]) => Math.abs(x - 10) < 1e-9)).toBe(true)
  expect([Math.min(...spots.map(([, y]) => y)), Math.max(...spots.map(([, y]) => y))]).toEqual([0, N - 1])
})

test('the limit of a round hill is a circle, to half a square', () => {
  const limit = limitLines(gridOf((x, y) => ((x - 10) ** 2 + (y - 10) ** 2) / 36), N, N)
  expect(limit.length).toBe(1)
  for (const [x, y] of limit[0]?.spots ?? []) expect(Math.abs(Math.hypot(x - 10, y - 10) - 6)).toBeLessThan(0.75)
})

test('there is none before every row has come, and none round what cannot be had', () => {
  const grid = gridOf((x) => x / 10)
  expect(useLines([...grid.slice(0, 5), undefined, ...grid.slice(6)], N, N)).toEqual([])
  expect(limitLines(grid.slice(0, 9), N, N)).toEqual([])
})
