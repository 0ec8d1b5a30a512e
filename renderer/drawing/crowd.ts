import type { Box } from './box'
import type { Spot } from './gaze'

/** Which cells of a picture something stands in. */
export interface Crowd {
  readonly box: Box
  /** Side of a cell, mm. */
  readonly cell: number
  readonly columns: number
  readonly rows: number
  /** Taken cells above and left of each corner of a cell, by rows of `columns + 1`. */
  readonly sums: readonly number[]
}

/** Cells along the longer side. */
const CELLS = 72

/** What stands in a picture: strokes by their points, and boxes that are taken altogether. */
export function crowdOf(box: Box, strokes: readonly (readonly Spot[])[], boxes: readonly Box[]): Crowd {
  const cell = Math.max(box.width, box.height) / CELLS
  const [columns, rows] = [Math.max(1, Math.floor(box.width / cell)), Math.max(1, Math.floor(box.height / cell))]
  const taken = new Uint8Array(columns * rows)
  const take = (column: number, row: number): void => { if (column >= 0 && row >= 0 && column < columns && row < rows) taken[row * columns + column] = 1 }
  const cellOf = ({ x, y }: Spot): readonly [number, number] => [Math.floor((x - box.x) / cell), Math.floor((y - box.y) / cell)]
  for (const points of strokes) for (const spot of alongCells(points, cell / 2)) take(...cellOf(spot))
  for (const { x, y, width, height } of boxes) {
    const [[left, top], [right, bottom]] = [cellOf({ x, y }), cellOf({ x: x + width, y: y + height })]
    for (let row = Math.max(0, top); row <= Math.min(rows - 1, bottom); row++) for (let column = Math.max(0, left); column <= Math.min(columns - 1, right); column++) take(column, row)
  }
  const sums = new Array<number>((columns + 1) * (rows + 1)).fill(0)
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = (row + 1) * (columns + 1) + column + 1
      sums[at] = (taken[row * columns + column] ?? 0) + (sums[at - 1] ?? 0) + (sums[at - columns - 1] ?? 0) - (sums[at - columns - 2] ?? 0)
    }
  }
  return { box, cell, columns, rows, sums }
}

function* alongCells(points: readonly Spot[], step: number): Generator<Spot> {
  for (const [i, to] of points.entries()) {
    const from = points[i - 1] ?? to
    const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step))
    for (let part = 1; part <= parts; part++) yield { x: from.x + ((to.x - from.x) * part) / parts, y: from.y + ((to.y - from.y) * part) / parts }
  }
}

/** How much further a place may be, in cells, for every cell that a line to it need not cross. */
const CROSSED = 1.3

/** The free box of a size that is nearest to a spot, with little in between, mm; null where there is none. */
export function freeBox({ box, cell, columns, rows, sums }: Crowd, width: number, height: number, near: Spot): Box | null {
  const [across, down] = [Math.ceil(width / cell), Math.ceil(height / cell)]
  const sum = (column: number, row: number): number => sums[row * (columns + 1) + column] ?? 0
  const takenIn = (column: number, row: number, wide: number, high: number): number => sum(column + wide, row + high) - sum(column, row + high) - sum(column + wide, row) + sum(column, row)
  /** Taken cells on the straight way from the spot to the nearest edge of a box. */
  const between = (x: number, y: number): number => {
    const to = { x: Math.min(Math.max(near.x, x), x + width), y: Math.min(Math.max(near.y, y), y + height) }
    let crossed = 0
    for (const at of alongCells([near, to], cell)) crossed += takenIn(Math.floor((at.x - box.x) / cell), Math.floor((at.y - box.y) / cell), 1, 1)
    return crossed
  }
  let best: Box | null = null
  let least = Infinity
  for (let row = 0; row + down <= rows; row++) {
    for (let column = 0; column + across <= columns; column++) {
      if (takenIn(column, row, across, down) > 0) continue
      const [x, y] = [box.x + column * cell, box.y + row * cell]
      const far = Math.hypot(x + width / 2 - near.x, y + height / 2 - near.y)
      if (far >= least) continue
      const cost = far + CROSSED * cell * between(x, y)
      if (cost >= least) continue
      least = cost
      best = { x, y, width, height }
    }
  }
  return best
}
