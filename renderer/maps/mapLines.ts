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

/** Values by row; null where nothing is known. */
type Field = readonly (readonly (number | null)[])[]

/** Where between two neighbours a level is reached; null where one of them is not known, so that nothing tells of a line there. */
function reached(values: Field, [x, y]: Spot, level: number): Spot | null {
  const [from, to] = [[Math.floor(x), Math.floor(y)], [Math.ceil(x), Math.ceil(y)]] as const
  const [low, high] = [values[from[1]]?.[from[0]] ?? null, values[to[1]]?.[to[0]] ?? null]
  if (low === null || high === null) return null
  const share = high === low ? 0.5 : (level - low) / (high - low)
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]
}

/** The told pieces of a closed ring, whose last spot is its first again: at the rim and round a gap it is no line of the map. */
function piecesOf(ring: readonly (Spot | null)[]): readonly (readonly Spot[])[] {
  const gap = ring.indexOf(null)
  // From a gap on, so that no piece is cut where the ring happens to begin.
  const turned = gap < 0 ? ring : [...ring.slice(gap), ...ring.slice(1, gap)]
  const pieces: Spot[][] = [[]]
  for (const spot of turned) {
    if (spot === null) pieces.push([])
    else pieces.at(-1)?.push(spot)
  }
  return pieces.filter(({ length }) => length > 1)
}

function linesAt(values: Field, levels: readonly number[]): readonly ContourLine[] {
  // Its own smoothing would move spots beside a gap onto the known neighbour.
  const draw = contours().size([values[0]?.length ?? 0, values.length]).smooth(false).thresholds([...levels])
  return draw(values.flatMap((row) => row.map((value) => value ?? NaN))).flatMap(({ value: level, coordinates }) =>
    coordinates.flat().flatMap((ring) =>
      // The library’s squares stand about their values: half a step further.
      piecesOf(ring.map(([x = 0, y = 0]) => reached(values, [x - 0.5, y - 0.5], level))).map((spots) => ({ level, spots }))))
}

/** Whether every row has come. */
const isWhole = (grid: MapGrid, rows: number): grid is readonly (readonly (MapCell | null)[])[] => grid.length === rows && !grid.includes(undefined)

/** Lines of like utilisation; none until every row has come. */
export const useLines = (grid: MapGrid, rows: number): readonly ContourLine[] =>
  (isWhole(grid, rows) ? linesAt(grid.map((row) => row.map((cell) => cell?.utilisation ?? null)), LEVELS) : [])

/** So near to the point that holds that it looks to be on it. */
const ON_IT = 1e-4

/**
 * How far a point is beyond its limit, less than nothing where it holds. Between two points that differ by their use alone the
 * limit lies where the use is all it may be; where something else decides, how far it holds is not known, and only the point
 * that was checked to hold is trusted.
 */
function beyond(cell: MapCell | null): number | null {
  if (cell === null) return null
  const over = cell.utilisation === null ? null : cell.utilisation - 1
  if (cell.verdict === 'holds' || cell.verdict === 'just holds') return over === null ? -1 : Math.min(over, -ON_IT)
  return over === null || over <= 0 ? 1 / ON_IT : over
}

/** Where it stops holding: between the points that hold or just hold and those that do not. */
export const limitLines = (grid: MapGrid, rows: number): readonly ContourLine[] =>
  (isWhole(grid, rows) ? linesAt(grid.map((row) => row.map(beyond)), [0]) : [])
