import { contours } from 'd3-contour'
import type { MapCell } from '#core'

/** A point of the grid, from 0 to the last value of each axis. */
type Spot = readonly [along: number, up: number]

export interface ContourLine {
  readonly level: number
  readonly spots: readonly Spot[]
}

/** Cells by row from the least that lies up; rows that have not come yet are missing. */
export type MapGrid = readonly (readonly (MapCell | null)[] | undefined)[]

/** Utilisations that get a line. */
const LEVELS = [0.25, 0.5, 0.75, 1, 1.5, 2, 3]

/** Splits a closed ring at the rim of the grid, which is no line of the map. */
function within(ring: readonly Spot[], columns: number, rows: number): readonly (readonly Spot[])[] {
  const inside = ([x, y]: Spot): boolean => x > 0 && y > 0 && x < columns - 1 && y < rows - 1
  const onRim = ([x, y]: Spot): Spot => [Math.min(columns - 1, Math.max(0, x)), Math.min(rows - 1, Math.max(0, y))]
  const runs: Spot[][] = []
  let run: Spot[] | null = null
  for (const [i, spot] of ring.entries()) {
    if (inside(spot)) {
      const before = ring[i - 1]
      run ??= before === undefined ? [] : [onRim(before)]
      run.push(spot)
    } else if (run !== null) {
      runs.push([...run, onRim(spot)])
      run = null
    }
  }
  if (run !== null) runs.push(run)
  return runs.filter(({ length }) => length > 1)
}

function linesAt(values: readonly number[], columns: number, rows: number, levels: readonly number[]): readonly ContourLine[] {
  const draw = contours().size([columns, rows]).thresholds([...levels])
  return draw([...values]).flatMap(({ value, coordinates }) =>
    coordinates.flatMap((polygon) => polygon.flatMap((ring) =>
      // The library’s squares stand about their values: half a step further.
      within(ring.map(([x = 0, y = 0]): Spot => [x - 0.5, y - 0.5]), columns, rows).map((spots) => ({ level: value, spots })))))
}

/** Whether every row has come. */
const isWhole = (grid: MapGrid, rows: number): grid is readonly (readonly (MapCell | null)[])[] => grid.length === rows && grid.every((row) => row !== undefined)

/** Lines of like utilisation; none until every row has come. */
export function useLines(grid: MapGrid, columns: number, rows: number): readonly ContourLine[] {
  if (!isWhole(grid, rows)) return []
  return linesAt(grid.flatMap((row) => row.map((cell) => cell?.utilisation ?? NaN)), columns, rows, LEVELS)
}

const isSound = (cell: MapCell | null): boolean => cell?.verdict === 'holds' || cell?.verdict === 'just holds'

/** Where it stops holding: between the points that hold or just hold and those that do not. */
export function limitLines(grid: MapGrid, columns: number, rows: number): readonly ContourLine[] {
  if (!isWhole(grid, rows)) return []
  return linesAt(grid.flatMap((row) => row.map((cell) => (isSound(cell) ? 0 : 1))), columns, rows, [0.5])
}
