import type { Dimension, Drawing, Ink, PartKey, Shape } from '#core'
import { dimensionMarks } from './dimensionMarks'
import { hatches } from './hatches'
import { attributes, escaped, FILE_INK, INK, marksMarkup } from './markup'
import { runsOf } from './runs'
import { shapeMarks } from './shapeMarks'
import { at } from './svgPoint'

/** How finely a view is drawn: `hair` and `lettering` as in `shapeMarks`; `hatch`: what names of fillings begin with. */
export interface Fineness {
  readonly hair: number
  readonly lettering: number
  readonly hatch: string
}

const IN_PENCIL: ReadonlySet<Ink> = new Set(['plant', 'mix', 'water', 'note'])
const NEVER_CHOSEN: ReadonlySet<Ink> = new Set(['plant', 'mix'])

function colourOf(shape: Shape, isChosen: boolean): string {
  if (isChosen && !NEVER_CHOSEN.has(shape.ink)) return FILE_INK.accent
  return shape.pencil || IN_PENCIL.has(shape.ink) ? FILE_INK.pencil : INK
}

/** Fillings as definitions. */
export const hatchMarkup = ({ hair, hatch }: Fineness): string =>
  `<defs>${hatches(hair).map(({ texture, width, height, turn, marks }) =>
    `<pattern${attributes({ id: `${hatch}-${texture}`, patternUnits: 'userSpaceOnUse', width, height, patternTransform: turn === 0 ? null : `rotate(${turn})` })}>${marksMarkup(marks, INK, hatch)}</pattern>`).join('')}</defs>`

/** A view with its dimension lines, without their numbers. */
export function viewMarkup({ shapes, dimensions }: Pick<Drawing, 'shapes' | 'dimensions'>, selected: PartKey | null, { hair, lettering, hatch }: Fineness): string {
  const lines = dimensions.map((dimension) => marksMarkup(dimensionMarks(dimension, hair), INK, hatch)).join('')
  const runs = runsOf(shapes).map((run) =>
    `<g>${run.shapes.map((shape) => marksMarkup(shapeMarks(shape, hair, lettering), colourOf(shape, run.link !== null && run.link === selected), hatch)).join('')}</g>`).join('')
  return lines + runs
}

/** The number of a dimension on a ground of paper; `letter`: height of its letters, mm. */
export function numberMarkup(dimension: Dimension, text: string, letter: number): string {
  const { x, y } = at(dimension.number)
  return `<text${attributes({
    x, y: y + 0.32 * letter, 'font-size': letter, 'text-anchor': { left: 'end', middle: 'middle', right: 'start' }[dimension.side], 'font-style': dimension.pencil ? 'italic' : null,
    fill: dimension.pencil ? FILE_INK.pencil : INK, stroke: FILE_INK.paper, 'stroke-width': 0.8 * letter, 'stroke-linejoin': 'round', 'paint-order': 'stroke',
  })}>${escaped(text)}</text>`
}
