import type { Drawing, Point } from '#core'
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

/** Another place has to be larger by this much to be worth it. */
const CLEARLY = 1.03

/** To one scale: the view from above in the free corner, at the side or below, whichever is drawn largest in a frame of this shape. */
export function placeViews(front: Pick<Drawing, 'bounds' | 'corner'>, above: Box, frame: { readonly width: number, readonly height: number }): Placement {
  const options = [sideBySide(front.bounds, above), stacked(front.bounds, above), ...(front.corner === null ? [] : [inCorner(front.bounds, front.corner, above)])]
  const scale = (p: Placement): number => Math.min(frame.width / p.width, frame.height / p.height)
  return options.reduce((best, option) => (scale(option) > scale(best) * CLEARLY ? option : best))
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

function inCorner(front: Box, [x, y]: Point, above: Box): Placement {
  const right = Math.max(mm(front.right), mm(x) + wide(above))
  const bottom = Math.max(-mm(front.bottom), -mm(y) + high(above))
  return {
    x: mm(front.left), y: -mm(front.top), width: right - mm(front.left), height: bottom + mm(front.top),
    above: { x: right - wide(above) - mm(above.left), y: -mm(y) + mm(above.top) },
  }
}

function stacked(front: Box, above: Box): Placement {
  const half = wide(above) / 2
  const left = Math.min(mm(front.left), -half)
  return {
    x: left, y: -mm(front.top), width: Math.max(mm(front.right), half) - left, height: high(front) + high(above),
    above: { x: mm(-(above.left + above.right) / 2), y: -mm(front.bottom) + mm(above.top) },
  }
}
