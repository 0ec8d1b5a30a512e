import type { LinkCode } from '../check/linkResult'
import type { FieldPath } from '../hanger/fields'

/** A point of a view, m: x to the right; y upwards in front view, away from the viewer from above. */
export type Point = readonly [number, number]

export type Ink = 'cord' | 'wire' | 'pot' | 'mix' | 'water' | 'plant' | 'building'

interface Common {
  /** The link of the load path it belongs to; null for what only explains. */
  readonly link: LinkCode | null
  readonly ink: Ink
  /** Some of the answers it is drawn from were assumed: pencil instead of ink. */
  readonly pencil: boolean
  /** Leg number, from 0, where it belongs to one leg. */
  readonly leg: number | null
}

export type Shape =
  | (Common & { readonly kind: 'line'; readonly points: readonly Point[]; readonly width: number; readonly behind: boolean })
  | (Common & { readonly kind: 'area'; readonly points: readonly Point[]; readonly width: number })
  | (Common & { readonly kind: 'circle'; readonly centre: Point; readonly radius: number; readonly width: number })

/** A dimension line for one field: where it runs, and what stands on it. */
export interface Dimension {
  readonly path: FieldPath
  readonly from: Point
  readonly to: Point
  /** m */
  readonly value: number
}

/** One view of a checked hanger: plain shapes in metres. */
export interface Drawing {
  readonly shapes: readonly Shape[]
  readonly dimensions: readonly Dimension[]
  /** Where a leader line from the ladder meets the drawing. */
  readonly anchors: Readonly<Partial<Record<LinkCode, Point>>>
  readonly bounds: { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number }
  /** Ends of each leg as solved, in the view: [hanging point, leave point]; null for a leg that is gone. */
  readonly legs: readonly (readonly [Point, Point] | null)[]
}
