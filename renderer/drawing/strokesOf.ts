import type { Dimension, Drawing, Point, Shape } from '#core'
import { boxRound, type Box } from './box'
import type { Spot } from './gaze'
import { at } from './svgPoint'

/** What a drawing covers, mm: its lines by their points, its areas by the boxes round them. */
export interface Covered {
  readonly strokes: readonly (readonly Spot[])[]
  readonly boxes: readonly Box[]
}

const spots = (points: readonly Point[]): readonly Spot[] => points.map(at)

function shapeStrokes(shape: Shape): readonly (readonly Spot[])[] {
  switch (shape.kind) {
    case 'line': return [spots(shape.points)]
    case 'cord': return shape.strands.map(spots)
    case 'area': case 'circle': case 'label': return []
  }
}

function shapeBox(shape: Shape, letter: number): Box | null {
  switch (shape.kind) {
    case 'line': case 'cord': return null
    case 'area': return boxRound(spots(shape.points).map((spot) => ({ ...spot, width: 0, height: 0 })))
    case 'circle': case 'label': {
      const { x, y } = at(shape.kind === 'label' ? shape.at : shape.centre)
      const reach = shape.kind === 'label' ? 0.7 * letter : 1000 * (shape.radius + shape.width / 2)
      return { x: x - reach, y: y - reach, width: 2 * reach, height: 2 * reach }
    }
  }
}

/** Room for a number is kept for so many characters. */
export const CHARACTERS = 9

/** Where the number of a dimension stands; `characters`: how many it has; `letter`: height of its letters, mm. */
export function numberBox({ number, side }: Dimension, characters: number, letter: number): Box {
  const { x, y } = at(number)
  const [width, height] = [(0.55 * characters + 0.6) * letter, 1.6 * letter]
  const left = { left: x - width, middle: x - width / 2, right: x }[side]
  return { x: left, y: y - height / 2, width, height }
}

/** What a drawing covers; `letter`: height of its letters, mm. */
export function coveredBy({ shapes, dimensions }: Pick<Drawing, 'shapes' | 'dimensions'>, letter: number): Covered {
  return {
    strokes: [...shapes.flatMap(shapeStrokes), ...dimensions.flatMap((d) => [spots([d.from, d.to]), spots([d.feet[0], d.from]), spots([d.feet[1], d.to])])],
    boxes: [...shapes.flatMap((shape) => shapeBox(shape, letter) ?? []), ...dimensions.map((d) => numberBox(d, CHARACTERS, letter))],
  }
}
