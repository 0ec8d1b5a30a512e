import type { Dimension } from '#core'
import type { Spot } from './gaze'
import type { Pointing } from './pointing'
import { at } from './svgPoint'
import { loupeScale, type DrawnPlace } from './usePicture'

/** A dimension that can be typed on, and where its number stands in the picture, mm. */
export interface PlacedNumber {
  readonly key: string
  readonly dimension: Dimension
  readonly spot: Spot
}

/** Numbers of all dimension lines in the picture, each measure once: where it is drawn in several views, in the first. */
export function placedNumbers(views: readonly DrawnPlace[], pointing: Pointing | null): readonly PlacedNumber[] {
  const inViews = views.flatMap(({ code, drawing, dx, dy }) => drawing.dimensions.map((dimension): PlacedNumber => {
    const { x, y } = at(dimension.number)
    return { key: `${code} ${dimension.path}`, dimension, spot: { x: x + dx, y: y + dy } }
  }))
  return [...inViews, ...inLoupe(pointing)]
}

function inLoupe(pointing: Pointing | null): readonly PlacedNumber[] {
  const moved = pointing === null ? null : loupeScale(pointing)
  if (pointing === null || pointing.loupe === null || moved === null) return []
  return pointing.loupe.detail.drawing.dimensions.map((dimension) => {
    const { x, y } = at(dimension.number)
    return { key: `loupe ${dimension.path}`, dimension, spot: { x: moved.x + x * moved.scale, y: moved.y + y * moved.scale } }
  })
}
