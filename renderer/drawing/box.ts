import type { Drawing } from '#core'
import { mm } from './svgPoint'

/** A part of the picture, in its unit (mm, y downwards). */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Size of what the picture is shown on, px. */
export interface Frame {
  readonly width: number
  readonly height: number
}

/** The box a drawing fills. */
export const boxOf = ({ left, right, bottom, top }: Drawing['bounds']): Box => ({ x: mm(left), y: 0 - mm(top), width: mm(right - left), height: mm(top - bottom) })

/** The same box elsewhere. */
export const movedBox = (box: Box, dx: number, dy: number): Box => ({ ...box, x: box.x + dx, y: box.y + dy })

/** The smallest box round all of them. */
export function boxRound(boxes: readonly Box[]): Box {
  const x = Math.min(...boxes.map((box) => box.x))
  const y = Math.min(...boxes.map((box) => box.y))
  return { x, y, width: Math.max(...boxes.map((box) => box.x + box.width)) - x, height: Math.max(...boxes.map((box) => box.y + box.height)) - y }
}

/** Pixels of the frame under one millimetre of the box, all of it seen. */
export const scaleIn = (box: Box, frame: Frame): number => Math.min(frame.width / box.width, frame.height / box.height)

/** The box widened or heightened about its middle to the shape of the frame. */
export function shapedTo(box: Box, frame: Frame): Box {
  const scale = scaleIn(box, frame)
  const [width, height] = [frame.width / scale, frame.height / scale]
  return { x: box.x - (width - box.width) / 2, y: box.y - (height - box.height) / 2, width, height }
}
