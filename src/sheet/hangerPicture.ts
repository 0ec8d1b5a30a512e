import type { CheckResult } from '../check/checkHanger'
import type { PartKey } from '../check/parts'
import { frontView } from '../drawing/frontView'
import type { Ink, Point, Shape } from '../drawing/shape'
import type { LabelledPart } from '../words/sheetCustomer'
import type { Picture } from './block'

/** Room round what is drawn, of its height. */
const MARGIN = 0.015

/** What belongs to the drawing on screen: numbers of legs, water and mix behind the pot’s side, what tells a measure. */
const isExtra = (shape: Shape): boolean =>
  shape.kind === 'label' || shape.ink === 'note' || shape.ink === 'water' || shape.ink === 'mix' || (shape.kind === 'area' && shape.texture === 'mix')

function pointsOf(shape: Shape): readonly Point[] {
  if (shape.kind === 'cord') return shape.strands.flat()
  if (shape.kind === 'label') return [shape.at]
  if (shape.kind !== 'circle') return shape.points
  const [x, y] = shape.centre
  const reach = shape.radius + shape.width / 2
  return [[x - reach, y - reach], [x + reach, y + reach]]
}

const BODY: readonly Ink[] = ['pot', 'wire', 'plant', 'building']

/** Strands that are laid out straight to be measured stand beside all of the hanger that is no cord. */
function isLaidOut(shapes: readonly Shape[]): (shape: Shape) => boolean {
  const xs = shapes.filter(({ ink }) => BODY.includes(ink)).flatMap(pointsOf).map(([x]) => x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  return (shape) => shape.ink === 'cord' && (pointsOf(shape).every(([x]) => x < left) || pointsOf(shape).every(([x]) => x > right))
}

const inInk = (shape: Shape): Shape => (shape.pencil ? { ...shape, pencil: false } : shape)

/** The hanger just watered, from the front: in ink, without what only explains the drawing on screen. */
export function hangerPicture(check: CheckResult): Picture {
  const drawing = frontView(check, 'watered')
  const aside = isLaidOut(drawing.shapes)
  const shapes = drawing.shapes.filter((shape) => !isExtra(shape) && !aside(shape)).map(inInk)
  const points = shapes.flatMap(pointsOf)
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)]
  const room = MARGIN * (top - bottom)
  return { shapes, bounds: { left: Math.min(...xs) - room, right: Math.max(...xs) + room, bottom: bottom - room, top: top + room } }
}

/** The four parts that are named beside the picture, from the top, each where it is drawn. */
export function namedParts(check: CheckResult): readonly { readonly part: LabelledPart; readonly at: Point }[] {
  const { anchors } = frontView(check, 'watered')
  const { geometry, hanger: { answers } } = check.solved
  const first = (...keys: readonly PartKey[]): Point | null => keys.map((key) => anchors[key]).find((at) => at !== undefined) ?? null
  const held: LabelledPart = answers['place.support'] === 'overBeam' ? 'tie' : answers['place.support'] === 'bracket' || answers['place.support'] === 'swingArm' ? 'bracket' : 'hook'
  const top: LabelledPart = geometry.hasStick ? 'stick' : geometry.hangsFrom === 'ring' ? 'ring' : 'bunch'
  const named: readonly (readonly [LabelledPart, Point | null])[] = [
    [held, first('hook', 'bracket', 'pin', 'fixing')],
    [top, first(geometry.hasStick ? 'stick' : 'ring', 'topCord', 'leg')],
    ['cradle', first('seat', 'cradle')],
    ['gathering', first('gatheringGrip', 'wrapHoop')],
  ]
  return named.flatMap(([part, at]) => (at === null ? [] : [{ part, at }]))
}
