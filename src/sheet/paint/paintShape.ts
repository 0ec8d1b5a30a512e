import type { Point, Shape } from '../../drawing/shape'
import { element, type Element } from '../element'
import { at, mm, pathThrough, svgNumber } from './svgNumber'

/** Below so many pen widths a cord is too thin to show both its edges. */
const TUBE = 2.2

/** Lines in ink of the pen's width, mm of the drawing; in pencil and behind they are broken, on sheets only what is hidden. */
interface Pen {
  readonly width: number
}

const dashed = (behind: boolean, { width }: Pen): Element['attributes'] => (behind ? { 'stroke-dasharray': `${svgNumber(3 * width)} ${svgNumber(3 * width)}` } : {})
const ink = (d: string, width: number, more: Element['attributes']): Element => element('path', { class: 'ink', d, 'stroke-width': svgNumber(width), ...more })
const paper = (d: string, width: number): Element => element('path', { class: 'paper', d, 'stroke-width': svgNumber(width) })

/** A line of a true width: two edges with paper between, or one line where that is too thin. */
function tube(d: string, width: number, behind: boolean, pen: Pen): readonly Element[] {
  const wide = mm(width)
  if (behind || wide <= TUBE * pen.width) return [ink(d, behind ? pen.width : Math.max(wide, pen.width), dashed(behind, pen))]
  return [ink(d, wide, {}), paper(d, wide - 1.6 * pen.width)]
}

/** Strands whose own two edges are too thin to be seen, as one bundle with a seam between each two. */
function paintCord({ axis, strands, thickness, width, behind }: Extract<Shape, { kind: 'cord' }>, pen: Pen): readonly Element[] {
  if (behind || mm(thickness) > TUBE * pen.width || mm(width) <= TUBE * pen.width) return strands.flatMap((strand) => tube(pathThrough(strand, false), thickness, behind, pen))
  const seams = strands.slice(1).map((strand, i) => strand.map(([x, y], k): Point => {
    const [a, b] = strands[i]?.[k] ?? [x, y]
    return [(x + a) / 2, (y + b) / 2]
  }))
  return [...tube(pathThrough(axis, false), width, false, pen), ...seams.map((seam) => ink(pathThrough(seam, false), 0.45 * pen.width, {}))]
}

const CIRCLE_STEPS = 48
const circlePoints = ([x, y]: Point, radius: number): readonly Point[] =>
  Array.from({ length: CIRCLE_STEPS }, (_, i): Point => [x + radius * Math.cos((2 * Math.PI * i) / CIRCLE_STEPS), y + radius * Math.sin((2 * Math.PI * i) / CIRCLE_STEPS)])

/** A shape of the core in ink on paper, `pen` mm of the drawing wide. */
export function paintShape(shape: Shape, penWidth: number): readonly Element[] {
  const pen: Pen = { width: penWidth }
  switch (shape.kind) {
    case 'area': {
      const d = pathThrough(shape.points, true)
      if (shape.texture === 'paper') return [element('path', { class: 'ground', d })]
      return [element('path', { class: shape.texture === 'open' ? 'ink' : `ink ${shape.texture}`, d, 'stroke-width': svgNumber(1.2 * penWidth), ...dashed(shape.behind, pen) })]
    }
    case 'line': return tube(pathThrough(shape.points, false), shape.width, shape.behind, pen)
    case 'cord': return paintCord(shape, pen)
    case 'circle': {
      const d = pathThrough(circlePoints(shape.centre, shape.radius), true)
      return shape.width > 0 ? tube(d, shape.width, shape.behind, pen) : [element('path', { class: 'dot', d, 'stroke-width': svgNumber(penWidth) })]
    }
    case 'label': {
      const [x, y] = at(shape.at)
      return [element('text', { x: svgNumber(x), y: svgNumber(y), 'font-size': svgNumber(14 * penWidth), 'text-anchor': 'middle' }, shape.text)]
    }
  }
}
