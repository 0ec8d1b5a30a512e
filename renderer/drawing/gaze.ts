import type { Box } from './box'

/** Where one looks at the picture: how much larger than when all of it is seen, and the middle of what is seen, mm. */
export interface Gaze {
  readonly magnified: number
  readonly x: number
  readonly y: number
}

/** A point of the picture, mm. */
export interface Spot {
  readonly x: number
  readonly y: number
}

const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most)

/** All of the picture. */
export const wholeGaze = (whole: Box): Gaze => ({ magnified: 1, x: whole.x + whole.width / 2, y: whole.y + whole.height / 2 })

/** Brought back to where nothing but the picture is seen: never smaller than all of it, never past its edge. */
export function heldGaze(gaze: Gaze, whole: Box, most: number): Gaze {
  const magnified = within(gaze.magnified, 1, Math.max(1, most))
  const [halfWide, halfHigh] = [whole.width / magnified / 2, whole.height / magnified / 2]
  return {
    magnified,
    x: within(gaze.x, whole.x + halfWide, whole.x + whole.width - halfWide),
    y: within(gaze.y, whole.y + halfHigh, whole.y + whole.height - halfHigh),
  }
}

/** The part of the picture that is seen; it has the shape of the whole. */
export function windowOf({ magnified, x, y }: Gaze, whole: Box): Box {
  const [width, height] = [whole.width / magnified, whole.height / magnified]
  return { x: x - width / 2, y: y - height / 2, width, height }
}

/** Larger by a factor (smaller below 1), the spot staying where it is seen. */
export function magnifiedGaze(gaze: Gaze, factor: number, spot: Spot, whole: Box, most: number): Gaze {
  const magnified = within(gaze.magnified * factor, 1, Math.max(1, most))
  const kept = gaze.magnified / magnified
  return heldGaze({ magnified, x: spot.x + (gaze.x - spot.x) * kept, y: spot.y + (gaze.y - spot.y) * kept }, whole, most)
}

/** The window moved over the picture, mm. */
export const movedGaze = (gaze: Gaze, dx: number, dy: number, whole: Box, most: number): Gaze => heldGaze({ ...gaze, x: gaze.x + dx, y: gaze.y + dy }, whole, most)

/** Moved no further than needed for the spot to be seen, with a margin of that share of the window. */
export function gazeShowing(gaze: Gaze, spot: Spot, margin: number, whole: Box, most: number): Gaze {
  const { x, y, width, height } = windowOf(gaze, whole)
  const [across, up] = [width * margin, height * margin]
  const dx = spot.x - within(spot.x, x + across, x + width - across)
  const dy = spot.y - within(spot.y, y + up, y + height - up)
  return dx === 0 && dy === 0 ? gaze : movedGaze(gaze, dx, dy, whole, most)
}
