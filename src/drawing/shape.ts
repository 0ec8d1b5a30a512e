import type { PartKey } from '../check/parts'
import type { FieldPath } from '../hanger/fields'

/** A point of a view, m: x to the right, from the side away from whoever stands in front; y upwards from front and side, away from the viewer from above. */
export type Point = readonly [number, number]

export type Ink = 'cord' | 'wire' | 'pot' | 'mix' | 'water' | 'plant' | 'building' | 'note'

/** How an area is filled: not at all, with paper (it hides what is behind), or as cut material. */
export type Texture = 'open' | 'paper' | 'timber' | 'masonry' | 'board' | 'unknown' | 'mix' | 'water'

interface Common {
  /** The part of the load path it belongs to; null for what only explains. */
  readonly link: PartKey | null
  readonly ink: Ink
  /** Some of the answers it is drawn from were assumed: pencil instead of ink. */
  readonly pencil: boolean
  /** Leg number, from 0, where it belongs to one leg. */
  readonly leg: number | null
}

/** Widths are true, m; 0 is as thin as a pen draws. `behind`: hidden by what stands before it. */
export type Shape =
  | (Common & { readonly kind: 'line'; readonly points: readonly Point[]; readonly width: number; readonly behind: boolean })
  | (Common & { readonly kind: 'cord'; readonly axis: readonly Point[]; readonly strands: readonly (readonly Point[])[]; readonly thickness: number; readonly width: number; readonly behind: boolean })
  | (Common & { readonly kind: 'area'; readonly points: readonly Point[]; readonly texture: Texture; readonly behind: boolean })
  | (Common & { readonly kind: 'circle'; readonly centre: Point; readonly radius: number; readonly width: number; readonly behind: boolean })
  | (Common & { readonly kind: 'label'; readonly at: Point; readonly text: string })

/** A dimension line for one field: where it runs, from where on the drawn thing, and where its number stands. */
export interface Dimension {
  readonly path: FieldPath
  readonly from: Point
  readonly to: Point
  /** Points of the drawn thing that the ends of the line stand for. */
  readonly feet: readonly [Point, Point]
  /** Where the number stands, and to which side of that point it is written. */
  readonly number: Point
  readonly side: 'left' | 'middle' | 'right'
  /** m */
  readonly value: number
  readonly pencil: boolean
}

/** What stands in the drawing and wants a name beside it. */
export type CaptionCode = 'above' | 'laidOut' | 'side'

export interface Bounds {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** One view of a checked hanger: plain shapes in metres, those behind first. */
export interface Drawing {
  readonly shapes: readonly Shape[]
  readonly dimensions: readonly Dimension[]
  /** Where each part is, to be pointed at. */
  readonly anchors: Readonly<Partial<Record<PartKey, Point>>>
  /** Where the names of parts of the drawing stand, centred. */
  readonly captions: Readonly<Partial<Record<CaptionCode, Point>>>
  readonly bounds: Bounds
  /** Right of and below this point nothing is drawn; null where no such corner is worth telling. */
  readonly corner: Point | null
  /** Ends of each leg as solved, in the view: [hanging point, leave point]; null for a leg that is gone. */
  readonly legs: readonly (readonly [Point, Point] | null)[]
}
