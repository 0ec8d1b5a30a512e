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

/**
 * Equal legs from one point on the axis of a round pot: by symmetry one leg and one opposite pair stand for
 * all. Standards' floor W / (min(m, 3) cos b).
 */
export function equalLegs(count: number, path: TautPath): SlingPlan {
  const floor = 1 / (Math.min(count, COUNTED_LEGS.value) * Math.cos(path.angle))
  const legs = Array.from({ length: count }, (_, i): PlannedLeg => {
    const angle = (2 * Math.PI * i) / count
    return { kind: 'leg', upper: [0, 0, path.top], lower: [path.leave.r * Math.cos(angle), path.leave.r * Math.sin(angle), path.leave.z], stiffness: 1, floor }
  })
  return { legs, ell: path.leave.r, wall: null, uneven: unevenByTurns(count), asides: [0, Math.PI / count], distinct: [0], alike: true }
}

/** Legs longer and shorter: one, it and its opposite, and every other one. */
function unevenByTurns(count: number): readonly (readonly number[])[] {
  const pattern = (which: (i: number) => boolean): number[] => Array.from({ length: count }, (_, i) => (which(i) ? 1 : 0))
  const opposite = Math.floor(count / 2)
  const masks = [pattern((i) => i === 0), pattern((i) => i === 0 || i === opposite), pattern((i) => i % 2 === 0)]
  return masks.flatMap((mask) => [mask, mask.map((x) => 0 - x)])
}
