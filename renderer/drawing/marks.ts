import type { Texture } from './texture'

/**
 * What is drawn with: the ink of the thing itself, the paper (it hides what lies behind), ink that explains,
 * the fine ink of what leads from one to another, the ink of what is pointed at.
 */
export type Pen = 'own' | 'paper' | 'soft' | 'pencil' | 'fine' | 'accent'

/** One element of a picture, in its unit (mm, y downwards): painted on the screen and in a file alike. */
export interface Mark {
  readonly tag: 'path' | 'line' | 'circle' | 'rect' | 'text'
  /** Geometry and widths, by the names SVG gives them. */
  readonly at: Readonly<Record<string, string | number>>
  readonly stroke: Pen | null
  readonly fill: Pen | Texture | null
  readonly text: string | null
}

/** A stroke of a width that may be dashed, as the end of a mark's attributes. */
export const stroked = (width: number, dashes: readonly number[]): Mark['at'] =>
  ({ 'stroke-width': width, 'stroke-linejoin': 'round', ...(dashes.length === 0 ? {} : { 'stroke-dasharray': dashes.join(' ') }) })

/** An open line of one pen. */
export const lineMark = (tag: 'path' | 'line' | 'circle', stroke: Pen, at: Mark['at']): Mark => ({ tag, at, stroke, fill: null, text: null })
