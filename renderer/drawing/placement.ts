import type { Drawing } from '#core'
import { boxOf, boxRound, movedBox, scaleIn, type Box, type Frame } from './box'
import { at } from './svgPoint'
import type { ViewCode } from './views'

/** One view in the picture, and how far it is moved there, mm. */
export interface PlacedView {
  readonly code: ViewCode
  readonly drawing: Pick<Drawing, 'bounds' | 'corner'>
  readonly dx: number
  readonly dy: number
}

/** Views in one picture, to one scale, with the box they fill. */
export interface Placement<View extends PlacedView> {
  readonly box: Box
  readonly views: readonly View[]
}

/** Another place has to be larger by this much to be worth it. */
const CLEARLY = 1.03

type Unplaced<View extends PlacedView> = Omit<View, 'dx' | 'dy'>

const boxIn = ({ drawing, dx, dy }: PlacedView): Box => movedBox(boxOf(drawing.bounds), dx, dy)

/**
 * Lays views on a sheet: front and side stand level beside each other; the view from above fills a free corner,
 * or stands at their side or below, whichever is drawn largest in a frame of this shape.
 */
export function placeViews<View extends PlacedView>(views: readonly Unplaced<View>[], frame: Frame): Placement<View> {
  const level = inRow<View>(views.filter(({ code }) => code !== 'above'))
  const above = views.find(({ code }) => code === 'above')
  if (above === undefined) return { views: level, box: boxRound(level.map(boxIn)) }
  if (level.length === 0) return { views: [placed<View>(above, 0, 0)], box: boxOf(above.drawing.bounds) }
  const row = boxRound(level.map(boxIn))
  const options = [atSide(row, boxOf(above.drawing.bounds)), below(row, boxOf(above.drawing.bounds)), ...cornersOf(level).map((corner) => inCorner(row, corner, boxOf(above.drawing.bounds)))]
  const best = options.reduce((a, b) => (scaleIn(b.box, frame) > scaleIn(a.box, frame) * CLEARLY ? b : a))
  return { views: [...level, placed<View>(above, best.dx, best.dy)], box: best.box }
}

const placed = <View extends PlacedView>(view: Unplaced<View>, dx: number, dy: number): View => ({ ...view, dx, dy } as View)

/** Level beside each other, the one of the front unmoved. */
function inRow<View extends PlacedView>(views: readonly Unplaced<View>[]): readonly View[] {
  let edge: number | null = null
  return views.map((view) => {
    const box = boxOf(view.drawing.bounds)
    const dx = edge === null ? 0 : edge - box.x
    edge = box.x + dx + box.width
    return placed<View>(view, dx, 0)
  })
}

interface Option {
  readonly box: Box
  readonly dx: number
  readonly dy: number
}

const option = (row: Box, above: Box, x: number, y: number): Option => ({ box: boxRound([row, { ...above, x, y }]), dx: x - above.x, dy: y - above.y })

const atSide = (row: Box, above: Box): Option => option(row, above, row.x + row.width, row.y + 0.08 * Math.max(0, row.height - above.height))

const below = (row: Box, above: Box): Option => option(row, above, row.x + (row.width - above.width) / 2, row.y + row.height)

/** Free corners at the right of a view that has nothing beside it. */
const cornersOf = (level: readonly PlacedView[]): readonly { readonly x: number, readonly y: number }[] => {
  const last = level.at(-1)
  if (last === undefined || last.drawing.corner === null) return []
  const { x, y } = at(last.drawing.corner)
  return [{ x: x + last.dx, y: y + last.dy }]
}

function inCorner(row: Box, corner: { readonly x: number, readonly y: number }, above: Box): Option {
  const right = Math.max(row.x + row.width, corner.x + above.width)
  return option(row, above, right - above.width, corner.y)
}
