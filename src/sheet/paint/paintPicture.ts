import type { Picture, PictureLabel } from '../block'
import { element, type Element } from '../element'
import { labelsHeight, labelsWidth, paintLabels } from './paintLabels'
import { paintShape } from './paintShape'
import { mm, svgNumber } from './svgNumber'

/** Room that a drawing is meant for, in the height of the sheet's letters; and how many pens wide a letter is high. */
const ROOM = { high: 27, wide: 21 }
const LETTER_PENS = 15.5

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function boxOf({ bounds: { left, right, bottom, top } }: Picture): Box {
  return { x: mm(left), y: 0 - mm(top), width: mm(right - left), height: mm(top - bottom) }
}

/** Room as wide as high at least, and as high as wide: letters and pen then have one size on every sheet. */
function framed(box: Box, aspect: number): Box {
  const height = Math.max(box.height, box.width / aspect)
  const width = Math.max(box.width, height * aspect)
  return { x: box.x - (width - box.width) / 2, y: box.y - (height - box.height) / 2, width, height }
}

const svg = (box: Box, said: string, children: readonly Element[]): Element =>
  element('svg', { viewBox: [box.x, box.y, box.width, box.height].map(svgNumber).join(' '), role: 'img', 'aria-label': said }, ...children)

/** A picture with names beside it. Letters are as large as the sheet's own where it has the room it is meant for. */
export function paintDrawing(picture: Picture, said: string, labels: readonly PictureLabel[]): Element {
  const bare = boxOf(picture)
  const letters = labelsWidth(labels)
  const size = Math.max(bare.height / ROOM.high, bare.width / (ROOM.wide - letters))
  const height = Math.max(bare.height, labelsHeight(labels) * size)
  const box: Box = { x: bare.x, y: bare.y - (height - bare.height) / 2, width: bare.width + letters * size, height }
  const pen = size / LETTER_PENS
  const shapes = picture.shapes.flatMap((shape) => paintShape(shape, pen))
  return svg(box, said, [...shapes, ...paintLabels(labels, bare.x + bare.width + size, size, pen, box.y, box.y + box.height)])
}

/** A small picture, as wide as high, that its caption explains. */
export function paintSmall(picture: Picture): Element {
  const box = framed(boxOf(picture), 1)
  const pen = box.height / 60
  return element('svg', { viewBox: [box.x, box.y, box.width, box.height].map(svgNumber).join(' '), 'aria-hidden': 'true' }, ...picture.shapes.flatMap((shape) => paintShape(shape, pen)))
}

/** A picture as wide as its column, with a pen as thick as beside a drawing, that its caption explains. */
export function paintWide(picture: Picture): Element {
  const box = boxOf(picture)
  return element('svg', { viewBox: [box.x, box.y, box.width, box.height].map(svgNumber).join(' '), 'aria-hidden': 'true' }, ...picture.shapes.flatMap((shape) => paintShape(shape, box.width / 500)))
}
