import type { LinkCode } from '../../check/linkResult'
import { boundsOf } from '../bounds'
import type { Bounds, Dimension, Drawing, Shape } from '../shape'

/** What a loupe shows: a part too small to be read in the whole drawing. */
export type LoupeCode = 'fixing' | 'hook' | 'ring' | 'cradle' | 'gathering' | 'stick'

/** A part drawn large: its shapes, and its dimension lines by the size that gaps are measured in, m. */
export interface Detail {
  readonly code: LoupeCode
  readonly link: LinkCode
  /** What of the view from the front it magnifies, m. */
  readonly of: Bounds
  readonly shapes: readonly Shape[]
  readonly dimensions: (unit: number) => readonly Dimension[]
}

/** So many gaps go into the larger side of a detail. */
const UNITS = 22

/** The detail as a drawing of its own. */
export function drawingOf({ shapes, dimensions }: Detail): Drawing {
  const plain = boundsOf(shapes, [], [], 0)
  const unit = Math.max(plain.right - plain.left, plain.top - plain.bottom) / UNITS
  const lines = dimensions(unit)
  const { left, right, bottom, top } = boundsOf(shapes, lines, [], unit)
  // Here a line's own thickness counts.
  const thick = shapes.reduce((most, shape) => (shape.kind === 'line' ? Math.max(most, shape.width / 2) : most), 0)
  return { shapes, dimensions: lines, anchors: {}, captions: {}, bounds: { left: left - thick, right: right + thick, bottom: bottom - thick, top: top + thick }, corner: null, legs: [] }
}

/** A square about a point, m. */
export const around = ([x, z]: readonly [number, number], reach: number): Bounds => ({ left: x - reach, right: x + reach, bottom: z - reach, top: z + reach })
