import type { Drawing, Point } from '#core'
import { texts } from '../texts/texts'
import type { Box } from './box'
import { stroked, type Mark } from './marks'
import { shareText, type LegPull } from './sentences'
import { at } from './svgPoint'

const t = texts.drawing

/** Lines of lettering about a spot. */
interface Note {
  readonly x: number
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly lines: readonly string[]
  readonly isName: boolean
}

/** Beside a leg's number, away from the pot. */
function beside(point: Point, letter: number): Pick<Note, 'x' | 'y' | 'anchor'> {
  const outwards = point[0] < 0 ? -1 : 1
  const { x, y } = at(point)
  return { x: x + outwards * 0.98 * letter, y: y + 0.35 * letter, anchor: outwards < 0 ? 'end' : 'start' }
}

/** Share of the pull beside each leg's number, for the view from above. */
function shareNotes({ shapes }: Pick<Drawing, 'shapes'>, pulls: readonly LegPull[], letter: number): readonly Note[] {
  return shapes.flatMap((shape): readonly Note[] => {
    const share = shape.kind === 'label' ? pulls.find((pull) => String(pull.number) === shape.text)?.share ?? null : null
    return shape.kind !== 'label' || share === null ? [] : [{ ...beside(shape.at, letter), lines: [shareText(share)], isName: false }]
  })
}

function nameNote(point: Point | undefined, lines: readonly string[]): readonly Note[] {
  return point === undefined ? [] : [{ ...at(point), anchor: 'middle', lines, isName: true }]
}

function notesOf(drawing: Pick<Drawing, 'shapes' | 'captions'>, pulls: readonly LegPull[], letter: number): readonly Note[] {
  const { captions } = drawing
  const shares = captions.above === undefined ? [] : shareNotes(drawing, pulls, letter)
  return [
    ...shares,
    ...nameNote(captions.laidOut, t.laidOut),
    ...nameNote(captions.side, [t.fromSide]),
    ...nameNote(captions.above, shares.length > 0 ? [t.fromAbove, t.sharesOfPull] : [t.fromAbove]),
  ]
}

/** Lettering that stands in a view: names of what is drawn, shares of the pull; `letter`: height of the letters, mm. */
export const noteMarks = (drawing: Pick<Drawing, 'shapes' | 'captions'>, pulls: readonly LegPull[], letter: number): readonly Mark[] =>
  notesOf(drawing, pulls, letter).flatMap(({ x, y, anchor, lines, isName }) => lines.map((text, i): Mark => ({
    // On a ground of paper, for strands may run behind it.
    tag: 'text', stroke: 'paper', fill: 'soft', text,
    at: {
      'x': x, 'y': y - 1.1 * (lines.length - 1 - i) * letter, 'font-size': letter, 'text-anchor': anchor, 'paint-order': 'stroke',
      ...stroked(0.25 * letter, []), ...(isName ? { 'font-style': 'italic' } : {}),
    },
  })))

/** Boxes that the lettering of a view covers, mm. */
export const noteBoxes = (drawing: Pick<Drawing, 'shapes' | 'captions'>, pulls: readonly LegPull[], letter: number): readonly Box[] =>
  notesOf(drawing, pulls, letter).map(({ x, y, anchor, lines }) => {
    const width = 0.48 * letter * Math.max(...lines.map((line) => line.length))
    return { x: { start: x, middle: x - width / 2, end: x - width }[anchor], y: y - (1.1 * lines.length - 0.1) * letter, width, height: 1.2 * lines.length * letter }
  })
