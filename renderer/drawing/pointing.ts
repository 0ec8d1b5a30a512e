import type { Dimension, Loupe } from '#core'
import { boxOf, boxRound, scaleIn, shapedTo, type Box, type Frame } from './box'
import { crowdOf, freeBox, type Crowd } from './crowd'
import type { Spot } from './gaze'
import { numberBox, type Covered } from './strokesOf'

/** Sizes on the sheet, px. */
const LOUPE = { largest: 210, least: 112, share: 0.42 }
const SHRINK = 0.84
const GAP = 10
/** The picture gives way to a loupe down to this share of its size. */
const YIELDS = 0.75
/** A small part is ringed at this radius. */
const RING = 15

/** How the chosen part is pointed at: a leader from it to its name, and to its loupe where it has one. */
export interface Pointing {
  /** The picture with room for the loupe, mm. */
  readonly box: Box
  /** The picture together with name and loupe, which may stand beside it on the sheet, mm. */
  readonly extent: Box
  readonly part: Spot
  /** What the loupe magnifies, or null where a part is only named. */
  readonly of: Box | null
  /** Radius of the ring round the part, mm. */
  readonly ring: number
  readonly leader: readonly [Spot, Spot]
  readonly name: Spot & { readonly anchor: 'start' | 'middle' | 'end' }
  /** `shown`: the box of the detail, with its numbers, that fills the frame, mm of the detail. */
  readonly loupe: { readonly frame: Box, readonly shown: Box, readonly detail: Loupe } | null
}

/** What is pointed at, and what it must not be hidden by. */
export interface Pointed {
  readonly box: Box
  readonly frame: Frame
  readonly covered: Covered
  readonly part: Spot
  readonly isSmall: boolean
  readonly name: string
  /** Height of the letters, px. */
  readonly letter: number
  readonly loupe: Loupe | null
  /** How many characters the number of a dimension has. */
  readonly characters: (dimension: Dimension) => number
  /** How far the view with the part is moved, mm. */
  readonly moved: number
}

/** Where name and loupe of the chosen part stand: in the nearest free room, else the picture gives way a little, else there is no loupe; null where even a name finds no room. */
export function pointAt(pointed: Pointed): Pointing | null {
  const { box, frame, covered, loupe } = pointed
  const hair = 1 / scaleIn(box, frame)
  const crowd = crowdOf(shapedTo(box, frame), covered.strokes, covered.boxes)
  if (loupe === null) return named(pointed, crowd, hair)
  return loupeIn(pointed, crowd, hair, loupe) ?? besideAll(pointed, loupe) ?? named(pointed, crowd, hair)
}

const nameWidth = ({ name, letter }: Pointed): number => 0.52 * name.length * letter

function named(pointed: Pointed, crowd: Crowd, hair: number): Pointing | null {
  const { box, part, letter, isSmall } = pointed
  const [width, height] = [nameWidth(pointed) * hair, 1.3 * letter * hair]
  const free = freeBox(crowd, width + GAP * hair, height, part)
  if (free === null) return null
  const ring = isSmall ? RING * hair : 0
  const isRight = free.x + free.width / 2 > part.x
  const y = free.y + height / 2
  const edge = isRight ? free.x + 0.6 * GAP * hair : free.x + free.width - 0.6 * GAP * hair
  return {
    box, extent: boxRound([box, free]), part, ring, of: null, loupe: null,
    leader: [clear(part, { x: edge, y }, ring), { x: edge, y }],
    name: { x: edge + (isRight ? 3 : -3) * hair, y: y + 0.32 * letter * hair, anchor: isRight ? 'start' : 'end' },
  }
}

/** From the edge of the ring on, towards where the leader ends. */
function clear(from: Spot, to: Spot, ring: number): Spot {
  const far = Math.max(1e-9, Math.hypot(to.x - from.x, to.y - from.y))
  return { x: from.x + ((to.x - from.x) * ring) / far, y: from.y + ((to.y - from.y) * ring) / far }
}

/** The box of a detail with room for its numbers, which are as large as everywhere, when its longer side is so many px. */
function shownOf({ letter, characters }: Pointed, { drawing }: Loupe, longer: number): Box {
  const own = boxOf(drawing.bounds)
  let box = own
  // The more room numbers take, the smaller the rest: a few rounds come close enough.
  for (let round = 0; round < 5; round++) {
    const size = (letter * Math.max(box.width, box.height)) / longer
    box = boxRound([own, ...drawing.dimensions.map((dimension) => numberBox(dimension, characters(dimension), size))])
  }
  return box
}

/** Width and height of what is shown of a loupe whose longer side is so long. */
function shapeOf({ width, height }: Box, longer: number): { readonly width: number, readonly height: number } {
  const scale = longer / Math.max(width, height)
  return { width: width * scale, height: height * scale }
}

const longest = ({ frame }: Pointed): number => Math.min(LOUPE.largest, Math.max(LOUPE.least, LOUPE.share * Math.min(frame.width, frame.height)))

function loupeIn(pointed: Pointed, crowd: Crowd, hair: number, loupe: Loupe): Pointing | null {
  for (let longer = longest(pointed); longer >= LOUPE.least - 1; longer *= SHRINK) {
    const shown = shownOf(pointed, loupe, longer)
    const { width, height } = shapeOf(shown, longer * hair)
    const wide = Math.max(width, nameWidth(pointed) * hair)
    const free = freeBox(crowd, wide + 2 * GAP * hair, height + (2 * GAP + 1.3 * pointed.letter) * hair, pointed.part)
    if (free !== null) return magnified(pointed, pointed.box, hair, { detail: loupe, shown, frame: { x: free.x + (free.width - width) / 2, y: free.y + GAP * hair, width, height } })
  }
  return null
}

/** No room is left in the picture: it is widened or heightened, whichever leaves it larger; null where it would become too small. */
function besideAll(pointed: Pointed, loupe: Loupe): Pointing | null {
  const { box, frame, letter } = pointed
  const shown = shownOf(pointed, loupe, LOUPE.least)
  const size = shapeOf(shown, LOUPE.least)
  const [across, down] = [Math.max(size.width, nameWidth(pointed)) + 2 * GAP, size.height + 2 * GAP + 1.3 * letter]
  const right = Math.min((frame.width - across) / box.width, frame.height / box.height)
  const below = Math.min(frame.width / box.width, (frame.height - down) / box.height)
  const scale = Math.max(right, below)
  if (scale < YIELDS * scaleIn(box, frame)) return null
  const hair = 1 / scale
  const { width, height } = shapeOf(shown, LOUPE.least * hair)
  const place = right >= below
    ? { x: box.x + box.width + (across * hair - width) / 2, y: Math.min(Math.max(pointed.part.y - height / 2, box.y + GAP * hair), box.y + box.height - down * hair) }
    : { x: box.x + box.width / 2 - width / 2, y: box.y + box.height + GAP * hair }
  const frameBox = { ...place, width, height }
  const grown = boxRound([box, { x: place.x - GAP * hair, y: place.y - GAP * hair, width: width + 2 * GAP * hair, height: height + (2 * GAP + 1.3 * letter) * hair }])
  return magnified(pointed, grown, hair, { detail: loupe, shown, frame: frameBox })
}

function magnified(pointed: Pointed, box: Box, hair: number, loupe: NonNullable<Pointing['loupe']>): Pointing {
  const { frame, detail } = loupe
  const around = boxOf(detail.of)
  const of = { ...around, x: around.x + pointed.moved }
  const part = { x: of.x + of.width / 2, y: of.y + of.height / 2 }
  const end = nearest(frame, part)
  const [gap, wide] = [0.5 * GAP * hair, nameWidth(pointed) * hair]
  const extent = boxRound([box,
    { x: frame.x - gap, y: frame.y - gap, width: frame.width + 2 * gap, height: frame.height + 2 * gap + 1.3 * pointed.letter * hair },
    { x: frame.x + (frame.width - wide) / 2, y: frame.y, width: wide, height: frame.height },
  ])
  return {
    box, extent, part, of, ring: 0, loupe,
    leader: [nearest(of, end), end],
    name: { x: frame.x + frame.width / 2, y: frame.y + frame.height + 1.15 * pointed.letter * hair, anchor: 'middle' },
  }
}

/** The spot of a box nearest to another. */
const nearest = ({ x, y, width, height }: Box, to: Spot): Spot => ({ x: Math.min(Math.max(to.x, x), x + width), y: Math.min(Math.max(to.y, y), y + height) })
