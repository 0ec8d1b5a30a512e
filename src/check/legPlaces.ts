import { hangsFrom, liesLevel } from '../hanger/arrangement'
import type { Answers } from '../hanger/fields'
import { hasCover } from '../load/drainage'
import { cradledProfile, type CradledOutline } from '../load/outline'
import { reachAt, sectionReach, type Section } from '../load/section'
import { metres, type Metres } from '../quantity/si'
import { ON_AXIS, tautPath, tautPathTo, type NoTautPath, type TautPath, type UpperEnd } from '../statics/tautPath'

/** One leg of a hanger round a pot: where it lies and hangs, seen from above, and the way of its strands. */
export interface LegPlace {
  /** From the length of a trough, else from the middle of a side, rad. */
  readonly angle: number
  /** Its upper end, from the axis, m. */
  readonly upper: readonly [number, number]
  readonly path: TautPath
  /** Length of its strands from there to the gathering knot. */
  readonly strand: Metres
}

type PlaceAnswers = Pick<Answers, 'make.arrangement' | 'make.top' | 'make.legs' | 'pot.shape' | 'pot.rim' | 'pot.length' | 'pot.strandsAt' | 'cover.inside' | 'cover.mass' | 'ring.lies' | 'ring.inside' | 'ring.wire' | 'stick.bunch'>

/** Whether the strands lie on a pot with corners: on a square one or a trough that stands in no round cover pot. */
export const hasCorners = (answers: Pick<Answers, 'pot.shape' | 'cover.inside' | 'cover.mass'>): boolean => (answers['pot.shape'] === 'square' || answers['pot.shape'] === 'trough') && !hasCover(answers)

/** Whether there is one leg for every corner or side, so that it can be said which. */
export const legsMatchCorners = (answers: Pick<Answers, 'pot.shape' | 'cover.inside' | 'cover.mass' | 'make.legs'>): boolean => hasCorners(answers) && answers['make.legs'] === 4

const atCorners = (answers: PlaceAnswers): boolean => legsMatchCorners(answers) && answers['pot.strandsAt'] === 'corners'

/** Where the legs lie round the pot: four at the corners or at the middles of the sides, as told; else evenly round. */
export function legAngles(answers: PlaceAnswers): readonly number[] {
  const legs = answers['make.legs']
  if (!atCorners(answers)) return Array.from({ length: legs }, (_, i) => (2 * Math.PI * i) / legs)
  const corner = Math.atan2(answers['pot.rim'], answers['pot.shape'] === 'trough' ? Math.max(answers['pot.rim'], answers['pot.length']) : answers['pot.rim'])
  return [corner, Math.PI - corner, Math.PI + corner, 2 * Math.PI - corner]
}

/** How far a trough is turned from its long side to the viewer, rad. */
const TROUGH_TURN = Math.PI / 18

/** The turn at which the hanger is looked at, and at which its stick stands: no leg then covers another, and a trough shows its length. */
export const frontTurn = (answers: Pick<Answers, 'pot.shape' | 'make.legs'>): number => (answers['pot.shape'] === 'trough' ? TROUGH_TURN : Math.PI / (2 * answers['make.legs']))

/** Radius of the circle from which the legs hang, m: of a ring that lies level, else none. */
export const upperRadius = (answers: PlaceAnswers): number => (liesLevel(answers) ? (answers['ring.inside'] + answers['ring.wire']) / 2 : 0)

/** Whether the upper ends are spread along a stick; in a row each hanger hangs from one place of it. */
export const isSpread = (answers: PlaceAnswers): boolean => answers['make.arrangement'] === 'legs' && hangsFrom(answers) === 'stick' && answers['stick.bunch'] > 0

/** Upper ends seen from above: on the axis, on a level ring over their places, or along a stick, in the order of their places, so that no leg crosses another. */
function upperEnds(answers: PlaceAnswers, angles: readonly number[]): readonly (readonly [number, number])[] {
  const turn = frontTurn(answers)
  if (!isSpread(answers)) {
    const radius = upperRadius(answers)
    return angles.map((angle) => (radius === 0 ? [0, 0] : [radius * Math.cos(angle), radius * Math.sin(angle)]))
  }
  const order = angles.map((angle, leg) => ({ leg, along: Math.cos(angle + turn) })).sort((a, b) => a.along - b.along)
  const place = new Map(order.map(({ leg }, i) => [leg, answers['stick.bunch'] * (i / (angles.length - 1) - 0.5)]))
  return angles.map((_, leg) => [(place.get(leg) ?? 0) * Math.cos(turn), 0 - (place.get(leg) ?? 0) * Math.sin(turn)])
}

/**
 * The legs round a pot. The strands told are those with the longest way; where others have a shorter one, round a
 * trough or where they hang from a stick, they are taken as made so much shorter that the pot hangs level.
 */
export function legPlaces(answers: PlaceAnswers, outline: CradledOutline, strand: Metres): readonly LegPlace[] | NoTautPath {
  const angles = legAngles(answers)
  const uppers = upperEnds(answers, angles)
  const profileAt = profiles(outline, atCorners(answers))
  const ways = angles.map((angle, i) => ({ angle, upper: uppers[i] as readonly [number, number], profile: profileAt(angle), end: endSeenFrom(angle, uppers[i] as readonly [number, number]) }))
  const alone = ways.map(({ profile, end }) => tautPath({ profile, upper: end, strand }))
  const least = Math.max(...alone.map((path) => (path.ok ? 0 : path.least)))
  if (least > 0) return { ok: false, least: metres(least) }
  const top = Math.min(...alone.map((path) => (path.ok ? path.top : Infinity)))
  return ways.map(({ angle, upper, profile, end }, i): LegPlace => {
    const own = alone[i] as TautPath
    const path = own.top === top ? own : tautPathTo(profile, end, top)
    return { angle, upper, path, strand: metres(path.free + path.knotToLeave) }
  })
}

/** The ways of strands from the middle between each leg and the next, where the cradle's first knots lie: one for each leg. */
export function waysBetween(outline: CradledOutline, legs: readonly LegPlace[]): readonly Pick<LegPlace, 'angle' | 'path'>[] {
  const profileAt = profiles(outline, false)
  return legs.map(({ angle, path: { top } }, i) => {
    const middle = (angle + (legs[i + 1]?.angle ?? (legs[0] as LegPlace).angle + 2 * Math.PI)) / 2
    return { angle: middle, path: tautPathTo(profileAt(middle), ON_AXIS, top) }
  })
}

/** The profile under a strand at an angle; of a pot that is round all over the same everywhere. */
function profiles(outline: CradledOutline, corners: boolean): (angle: number) => TautPath['touched'] {
  const reach = (angle: number) => (section: Section): number => (corners ? sectionReach(section) : reachAt(section, angle))
  const round = [outline.pot, outline.saucer, outline.cover].every((levels) => levels?.every((level) => level.round) ?? true)
  const same = round || corners ? cradledProfile(outline, reach(0)) : null
  return (angle) => same ?? cradledProfile(outline, reach(angle))
}

/** An upper end as the plane of a strand meets it. */
function endSeenFrom(angle: number, [x, y]: readonly [number, number]): UpperEnd {
  if (x === 0 && y === 0) return ON_AXIS
  return { out: x * Math.cos(angle) + y * Math.sin(angle), aside: y * Math.cos(angle) - x * Math.sin(angle) }
}
