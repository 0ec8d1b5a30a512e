import type { Drawing, Point, Shape } from '#core'

/** A drawing to be shown as large as a stamp. */
export type SmallDrawing = Pick<Drawing, 'shapes' | 'bounds'>

/** Room round what is drawn, of its height. */
const MARGIN = 0.02

/** What would only be a smudge. */
const isTooFine = (shape: Shape): boolean =>
  shape.kind === 'label' || shape.ink === 'note' || shape.ink === 'water' || ('behind' in shape && shape.behind) || (shape.kind === 'area' && (shape.texture === 'mix' || shape.texture === 'water'))

function pointsOf(shape: Shape): readonly Point[] {
  if (shape.kind === 'cord') return shape.axis
  if (shape.kind === 'label') return [shape.at]
  if (shape.kind !== 'circle') return shape.points
  const [x, y] = shape.centre
  return [[x - shape.radius, y - shape.radius], [x + shape.radius, y + shape.radius]]
}

// To the millimetre: many drawings are kept at once.
const rounded = (points: readonly Point[]): readonly Point[] => points.map(([x, y]): Point => [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000])

// In ink, for dashes as short as these would look like a fault.
function simpler(shape: Shape): Shape {
  if (shape.kind === 'cord') {
    const { link, ink, leg, axis, width, behind } = shape
    return { kind: 'line', link, ink, pencil: false, leg, points: rounded(axis), width, behind }
  }
  if (shape.kind === 'area') return { ...shape, pencil: false, points: rounded(shape.points), texture: shape.texture === 'paper' ? 'paper' : 'open' }
  return shape.kind === 'line' ? { ...shape, pencil: false, points: rounded(shape.points) } : { ...shape, pencil: false }
}

function boundsOf(shapes: readonly Shape[]): Drawing['bounds'] {
  const points = shapes.flatMap(pointsOf)
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)]
  const room = MARGIN * (top - bottom)
  return { left: Math.min(...xs) - room, right: Math.max(...xs) + room, bottom: bottom - room, top: top + room }
}

/** The hanger without what explains it and what is too fine to be seen: cords as one line each, no strand laid out beside it, no hatching, no lettering. */
export function smallDrawing({ shapes, captions }: Pick<Drawing, 'shapes' | 'captions'>): SmallDrawing {
  // It stands to the left of all other cords.
  const laidOut = captions.laidOut === undefined ? null : Math.min(...shapes.flatMap((shape) => (shape.kind === 'cord' ? shape.axis.map(([x]) => x) : [])))
  const isLaidOut = (shape: Shape): boolean => laidOut !== null && pointsOf(shape).every(([x]) => Math.abs(x - laidOut) < 1e-6)
  const kept = shapes.filter((shape) => !isTooFine(shape) && !isLaidOut(shape)).map(simpler)
  return { shapes: kept, bounds: boundsOf(kept) }
}
