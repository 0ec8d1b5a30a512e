import { COUNTED_LEGS } from '../catalogue/legs'
import type { Vec3, Wall } from '../statics/sling/result'
import type { TautPath } from '../statics/tautPath'

/** Groups of strands that are made up alike. */
export type LegKind = 'leg' | 'front' | 'back'

/** One leg as it hangs before any cord stretched; origin at the middle of the pot's base, z up, m. */
export interface PlannedLeg {
  readonly kind: LegKind
  /** Where it hangs, and where it leaves the pot. */
  readonly upper: Vec3
  readonly lower: Vec3
  /** Its stiffness over that of an ordinary leg of this hanger. */
  readonly stiffness: number
  /** The least that counts as its tension, of the weight, whatever the solves say. */
  readonly floor: number
}

/** How a pot hangs in its legs, and which solves find the worst of each. */
export interface SlingPlan {
  readonly legs: readonly PlannedLeg[]
  /** About the pot's radius, m. */
  readonly ell: number
  readonly wall: Wall | null
  /** Ways in which legs are longer (1) or shorter (-1) by the length tolerance. */
  readonly uneven: readonly (readonly number[])[]
  /** Directions seen from above in which the weight may sit off the axis, rad. */
  readonly asides: readonly number[]
  /** Legs of which each is taken away in turn; one stands for those that are alike. */
  readonly distinct: readonly number[]
  /** Whether any leg may be the worst one: the tension of the worst counts for all. */
  readonly alike: boolean
}

/** Angle of a planned leg from the vertical, rad. */
export const legAngle = ({ upper, lower }: Pick<PlannedLeg, 'upper' | 'lower'>): number =>
  Math.atan2(Math.hypot(upper[0] - lower[0], upper[1] - lower[1]), upper[2] - lower[2])

/** Length of a planned leg before it stretched, m. */
export const legFree = ({ upper, lower }: Pick<PlannedLeg, 'upper' | 'lower'>): number => Math.hypot(upper[0] - lower[0], upper[1] - lower[1], upper[2] - lower[2])

/** Where a leg lies on the pot and hangs, seen from above, and its way. */
export interface RoundLeg {
  readonly angle: number
  readonly upper: readonly [number, number]
  readonly path: TautPath
}

/**
 * Legs round one pot, each from its own upper end to its own place. Those that are mirror images of one another are
 * alike, and one stands for all of them. Standards' floor W / (min(m, 3) cos b), each with its own angle.
 */
export function roundLegs(places: readonly RoundLeg[]): SlingPlan {
  const counted = Math.min(places.length, COUNTED_LEGS.value)
  const legs = places.map(({ angle, upper: [x, y], path }): PlannedLeg => ({
    kind: 'leg', upper: [x, y, path.top], lower: [path.leave.r * Math.cos(angle), path.leave.r * Math.sin(angle), path.leave.z],
    stiffness: 1, floor: 1 / (counted * Math.cos(path.angle)),
  }))
  const distinct = evenly(places) ? [0] : distinctOf(legs)
  return {
    legs,
    ell: places.reduce((sum, { path }) => sum + path.leave.r, 0) / places.length,
    wall: null,
    uneven: unevenBy(distinct, evenly(places), legs.length),
    asides: asidesOf(places, distinct),
    distinct,
    alike: distinct.length === 1,
  }
}

/** Evenly round a round or square pot, from one point or a level ring: every leg is as every other. */
function evenly(places: readonly RoundLeg[]): boolean {
  const [first] = places
  const step = (2 * Math.PI) / places.length
  const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9
  return first !== undefined && places.every(({ angle, upper, path }, i) => same(path.leave.r, first.path.leave.r) && same(path.leave.z, first.path.leave.z)
    && same(Math.hypot(...upper), Math.hypot(...first.upper)) && same(path.angle, first.path.angle) && same(angle, first.angle + i * step))
}

/** The first of each set of legs that are mirror images by the pot's upright planes of symmetry, or half a turn apart. */
function distinctOf(legs: readonly PlannedLeg[]): readonly number[] {
  const key = ({ upper, lower }: PlannedLeg): string => [upper[0], upper[1], lower[0], lower[1]].map((x) => Math.abs(Math.round(x * 1e7))).join()
  const keys = legs.map(key)
  return keys.flatMap((k, i) => (keys.indexOf(k) === i ? [i] : []))
}

/** Directions of the weight: towards each leg and between it and the next; of many unlike ones only four. */
function asidesOf(places: readonly RoundLeg[], distinct: readonly number[]): readonly number[] {
  if (distinct.length > 3) return [0, 1, 2, 3].map((quarter) => (quarter * Math.PI) / 2)
  return distinct.flatMap((i) => {
    const { angle } = places[i] as RoundLeg
    const next = places[i + 1]?.angle ?? (places[0] as RoundLeg).angle + 2 * Math.PI
    return [angle, (angle + next) / 2]
  })
}

/** Legs longer and shorter: each distinct one, it and its opposite, those beside it where they are not even round, and every other one. */
function unevenBy(distinct: readonly number[], even: boolean, count: number): readonly (readonly number[])[] {
  const pattern = (which: (i: number) => boolean): number[] => Array.from({ length: count }, (_, i) => (which(i) ? 1 : 0))
  const [opposite, next] = [Math.floor(count / 2), 1]
  const of = (one: number): readonly number[][] => [
    pattern((i) => i === one),
    pattern((i) => i === one || i === (one + opposite) % count),
    ...(even || distinct.length > 1 ? [] : [next, count - next].map((by) => pattern((i) => i === one || i === (one + by) % count))),
  ]
  const masks = [...distinct.flatMap(of), pattern((i) => i % 2 === 0)]
  return masks.flatMap((mask) => [mask, mask.map((x) => 0 - x)])
}
