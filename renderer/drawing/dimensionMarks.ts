import type { Dimension } from '#core'
import { lineMark, stroked, type Mark } from './marks'
import { at } from './svgPoint'

interface Spot {
  readonly x: number
  readonly y: number
}

function direction(from: Spot, to: Spot): Spot & { readonly length: number } {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = Math.max(1e-9, Math.hypot(dx, dy))
  return { x: dx / length, y: dy / length, length }
}

const between = (x1: number, y1: number, x2: number, y2: number): Mark['at'] => ({ x1, y1, x2, y2, 'stroke-linecap': 'round' })

/** A dimension line with its extension lines and the slanted strokes at its ends; `hair` as in `shapeMarks`. */
export function dimensionMarks(dimension: Dimension, hair: number): readonly Mark[] {
  const [from, to] = [at(dimension.from), at(dimension.to)]
  const pen = dimension.pencil ? 'pencil' : 'soft'
  const along = direction(from, to)
  /** From just off the drawn thing to just beyond the line. */
  const extensions = ([[dimension.feet[0], from], [dimension.feet[1], to]] as const).map(([foot, end]): Mark => {
    const start = at(foot)
    const way = direction(start, end)
    const gap = Math.min(4 * hair, way.length / 2)
    return lineMark('line', 'fine', { ...between(start.x + way.x * gap, start.y + way.y * gap, end.x + way.x * 4 * hair, end.y + way.y * 4 * hair), ...stroked(0.7 * hair, []) })
  })
  const strokes = [from, to].map(({ x, y }): Mark => {
    const [a, b] = [(along.x - along.y) * 2.8 * hair, (along.y + along.x) * 2.8 * hair]
    return lineMark('line', pen, { ...between(x - a, y - b, x + a, y + b), ...stroked(1.6 * hair, []) })
  })
  return [...extensions, lineMark('line', pen, { ...between(from.x, from.y, to.x, to.y), ...stroked(0.9 * hair, dimension.pencil ? [4 * hair, 3 * hair] : []) }), ...strokes]
}
