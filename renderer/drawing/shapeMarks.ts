import type { Point, Shape } from '#core'
import { lineMark, stroked, type Mark, type Pen } from './marks'
import { at, mm, pathThrough } from './svgPoint'

type Kind<Name extends Shape['kind']> = Extract<Shape, { readonly kind: Name }>

/** Below this many pixels a tube is too thin to show both its edges. */
const THIN = 2.2
/** Below this, seams would run together. */
const SEAM = 1.6

const isTube = (width: number, hair: number): boolean => mm(width) > THIN * hair
const outer = (width: number, hair: number): number => Math.max(mm(width), 1.15 * hair)
const inner = (width: number, hair: number): number => Math.max(0, mm(width) - 1.7 * hair)

function dashesOf(shape: Shape, hair: number): readonly number[] {
  if ('behind' in shape && shape.behind) return [3 * hair, 3.5 * hair]
  return shape.pencil ? [5 * hair, 2.5 * hair] : []
}

/**
 * A shape in the picture. Widths are true down to what can be seen.
 *
 * @param hair millimetres of the drawing under one pixel of the screen
 * @param lettering height of its letters, px
 */
export function shapeMarks(shape: Shape, hair: number, lettering: number): readonly Mark[] {
  switch (shape.kind) {
    case 'area': return [areaMark(shape, hair)]
    case 'circle': return circleMarks(shape, hair)
    case 'line': return tubeMarks(shape, hair)
    case 'cord': return cordMarks(shape, hair)
    case 'label': return labelMarks(shape, hair, lettering)
    default: return shape satisfies never
  }
}

function areaMark(shape: Kind<'area'>, hair: number): Mark {
  const isOpen = shape.texture === 'open'
  return {
    tag: 'path', text: null, stroke: isOpen ? 'own' : null, fill: shape.texture === 'open' ? null : shape.texture,
    at: { d: pathThrough(shape.points, true), ...(isOpen ? stroked(1.3 * hair, dashesOf(shape, hair)) : {}) },
  }
}

function circleMarks(shape: Kind<'circle'>, hair: number): readonly Mark[] {
  const { x, y } = at(shape.centre)
  const dashes = dashesOf(shape, hair)
  const ring = (stroke: Pen, width: number, dashed: readonly number[]): Mark => lineMark('circle', stroke, { cx: x, cy: y, r: mm(shape.radius), ...stroked(width, dashed) })
  if (shape.width === 0) return [{ tag: 'circle', text: null, stroke: 'own', fill: 'paper', at: { cx: x, cy: y, r: Math.max(mm(shape.radius), 2 * hair), ...stroked(1.2 * hair, dashes) } }]
  return [ring('own', outer(shape.width, hair), dashes), ...(isTube(shape.width, hair) ? [ring('paper', inner(shape.width, hair), [])] : [])]
}

const pathMark = (points: readonly Point[], stroke: Pen, width: number, dashes: readonly number[]): Mark => lineMark('path', stroke, { d: pathThrough(points, false), ...stroked(width, dashes) })

const tubeMarks = (shape: Kind<'line'>, hair: number): readonly Mark[] => [
  pathMark(shape.points, 'own', outer(shape.width, hair), dashesOf(shape, hair)),
  ...(isTube(shape.width, hair) ? [pathMark(shape.points, 'paper', inner(shape.width, hair), [])] : []),
]

/** A leg's axis is a plain line of two points, so that its ends can be read off the picture. */
function legAxis(shape: Kind<'cord'>, hair: number): Mark | null {
  const [from, to] = [shape.axis[0], shape.axis[1]]
  if (shape.link !== 'leg' || shape.leg === null || from === undefined || to === undefined) return null
  const [a, b] = [at(from), at(to)]
  return lineMark('line', 'paper', { 'data-leg': shape.leg + 1, x1: a.x, y1: a.y, x2: b.x, y2: b.y, ...stroked(outer(shape.width, hair), []) })
}

const knownSeams = new WeakMap<Shape, readonly (readonly Point[])[]>()

/** Where strands too thin to be drawn one by one lie against each other. */
function seams(shape: Kind<'cord'>, hair: number): readonly (readonly Point[])[] {
  if (mm(shape.thickness) < SEAM * hair) return []
  const between = knownSeams.get(shape) ?? shape.strands.slice(1).map((strand, i) => strand.map(([x, y], k): Point => {
    const [a, b] = shape.strands[i]?.[k] ?? [x, y]
    return [(x + a) / 2, (y + b) / 2]
  }))
  knownSeams.set(shape, between)
  return between
}

function cordMarks(shape: Kind<'cord'>, hair: number): readonly Mark[] {
  const dashes = dashesOf(shape, hair)
  const ground = legAxis(shape, hair) ?? (shape.behind ? null : pathMark(shape.axis, 'paper', outer(shape.width, hair), []))
  // Too thin to be drawn strand by strand, or in pencil, which is drawn in fewer lines.
  const isBundled = !shape.behind && isTube(shape.width, hair) && (shape.pencil || !isTube(shape.thickness, hair))
  const drawn = isBundled
    ? [
        pathMark(shape.axis, 'own', outer(shape.width, hair), dashes),
        pathMark(shape.axis, 'paper', inner(shape.width, hair), []),
        ...seams(shape, hair).map((seam) => pathMark(seam, 'own', 0.7 * hair, [])),
      ]
    : shape.strands.flatMap((strand) => [
        pathMark(strand, 'own', shape.behind ? hair : outer(shape.thickness, hair), dashes),
        ...(!shape.behind && isTube(shape.thickness, hair) ? [pathMark(strand, 'paper', inner(shape.thickness, hair), [])] : []),
      ])
  return ground === null ? drawn : [ground, ...drawn]
}

function labelMarks(shape: Kind<'label'>, hair: number, lettering: number): readonly Mark[] {
  const { x, y } = at(shape.at)
  return [
    { tag: 'circle', text: null, stroke: 'own', fill: 'paper', at: { cx: x, cy: y, r: 0.6 * lettering * hair, ...stroked(hair, []) } },
    { tag: 'text', text: shape.text, stroke: null, fill: 'own', at: { x, y: y + 0.32 * lettering * hair, 'font-size': 0.95 * lettering * hair, 'text-anchor': 'middle' } },
  ]
}
