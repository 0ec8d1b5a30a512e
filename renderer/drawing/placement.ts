import type { Drawing } from '#core'
import { mm } from './svgPoint'

/** Where the two views stand in one picture, mm: its box, and how far the view from above is moved. */
export interface Placement {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly above: { readonly x: number, readonly y: number }
}

type Box = Drawing['bounds']

/** To one scale: side by side, or the view from above below the other, whichever is drawn larger in a frame of this shape. */
export function placeViews(front: Box, above: Box, frame: { readonly width: number, readonly height: number }): Placement {
  const options = [sideBySide(front, above), stacked(front, above)] as const
  const scale = (p: Placement): number => Math.min(frame.width / p.width, frame.height / p.height)
  return scale(options[1]) > scale(options[0]) * 1.05 ? options[1] : options[0]
}

const wide = (b: Box): number => mm(b.right - b.left)
const high = (b: Box): number => mm(b.top - b.bottom)

function sideBySide(front: Box, above: Box): Placement {
  const height = Math.max(high(front), high(above))
  return {
    x: mm(front.left), y: -mm(front.top), width: wide(front) + wide(above), height,
    above: { x: mm(front.right - above.left), y: -mm(front.top) + mm(above.top) + 0.08 * (height - high(above)) },
  }
}

function stacked(front: Box, above: Box): Placement {
  const width = Math.max(wide(front), wide(above))
  const left = Math.min(mm(front.left), -width / 2)
  return {
    x: left, y: -mm(front.top), width: Math.max(width, mm(front.right) - left), height: high(front) + high(above),
    above: { x: mm(-(above.left + above.right) / 2), y: -mm(front.bottom) + mm(above.top) },
  }
}
