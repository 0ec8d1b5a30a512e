import { COUNTED_LEGS, NEARLY_SLACK } from '../catalogue/legs'
import { STANDARD_GRAVITY } from '../quantity/si'
import { solveSling } from '../statics/sling/solveSling'
import type { SlingInput, SlingResult, Vec3 } from '../statics/sling/result'
import type { TautPath } from '../statics/tautPath'
import type { CaseSling } from './solved'

export interface BatteryInput {
  readonly legs: number
  readonly path: TautPath
  /** Axial stiffness of one leg, N: at first load, and bedded in. */
  readonly stiffness: number
  readonly bedded: number
  /** Mass that makes the case's force, kg. */
  readonly mass: number
  /** Height of the centre of gravity above the base, m; its offset from the axis, m. */
  readonly centre: number
  readonly offset: number
  /** Length tolerance between legs, m. */
  readonly tolerance: number
}

/** The sling of equal legs from one point on the axis: EA of a leg, N; centre of gravity, pot frame, m; how much longer each leg is, m. */
export function slingInput(input: BatteryInput, stiffness: number, centre: Vec3, longer: readonly number[]): SlingInput {
  const { legs, path } = input
  const angle = (i: number): number => (2 * Math.PI * i) / legs
  const each = <T>(make: (i: number) => T): T[] => Array.from({ length: legs }, (_, i) => make(i))
  return {
    A: each((): Vec3 => [0, 0, path.top]),
    B: each((i): Vec3 => [path.leave.r * Math.cos(angle(i)), path.leave.r * Math.sin(angle(i)), path.leave.z]),
    L0: each((i) => path.free + (longer[i] ?? 0)),
    EA: each(() => stiffness),
    mass: input.mass,
    cg: centre,
    ell: path.leave.r,
    gravity: STANDARD_GRAVITY,
    wall: null,
  }
}

/** Which legs are longer or shorter in the tolerance solves; by symmetry one leg and one pair stand for all. */
function lengthPatterns(legs: number, tolerance: number): readonly (readonly number[])[] {
  const pattern = (which: (i: number) => boolean): number[] => Array.from({ length: legs }, (_, i) => (which(i) ? tolerance : 0))
  const opposite = Math.floor(legs / 2)
  const masks = [pattern((i) => i === 0), pattern((i) => i === 0 || i === opposite), pattern((i) => i % 2 === 0)]
  return masks.flatMap((mask) => [mask, mask.map((x) => -x)])
}

/**
 * Solves one load case as drawn, off centre, and with legs longer and shorter by the tolerance, bedded
 * in (stiffer legs share a wrong length worse). The worst tension of any leg counts, and never less
 * than the standards' floor W / (min(m, 3) cos b). Legs are alike, so any leg may be the worst one.
 */
export function solveBattery(input: BatteryInput): CaseSling {
  const { legs, path, centre, offset, tolerance } = input
  const onAxis: Vec3 = [0, 0, centre]
  const level = new Array<number>(legs).fill(0)
  const between = Math.PI / legs
  const drawn = solveSling(slingInput(input, input.stiffness, onAxis, level))
  const others: SlingResult[] = []
  const uneven: SlingResult[] = []
  if (offset > 0) {
    others.push(
      solveSling(slingInput(input, input.stiffness, [offset, 0, centre], level)),
      solveSling(slingInput(input, input.stiffness, [offset * Math.cos(between), offset * Math.sin(between), centre], level)),
    )
  }
  if (tolerance > 0) uneven.push(...lengthPatterns(legs, tolerance).map((longer) => solveSling(slingInput(input, input.bedded, onAxis, longer))))
  // Legs of unequal length may leave two legs carrying: the slack ones are millimetres away and catch
  // the pot, so only a solve without any balance is trouble there.
  const trouble = [drawn, ...others].map(troubleOf).find((t) => t !== 'none') ?? (uneven.some((s) => tensionsOf(s).length === 0) ? 'not converged' : 'none')
  const weight = input.mass * STANDARD_GRAVITY
  const floor = weight / (Math.min(legs, COUNTED_LEGS.value) * Math.cos(path.angle))
  const tensions = trouble === 'none' ? [drawn, ...others, ...uneven].map((s) => Math.max(...tensionsOf(s))) : null
  const solvedTension = tensions === null ? null : Math.max(...tensions)
  const slackBelow = (NEARLY_SLACK.value * weight) / legs
  return {
    drawn,
    tension: solvedTension === null ? null : Math.max(solvedTension, floor),
    solvedTension,
    floor,
    sum: troubleOf(drawn) === 'none' ? tensionsOf(drawn).reduce((a, b) => a + b, 0) : null,
    nearlySlack: Math.max(0, ...uneven.map((s) => tensionsOf(s).filter((t) => t < slackBelow).length)),
    trouble,
  }
}

/** Tensions of the balance a solve found, stable or not; none if it found none. */
export function tensionsOf(sling: SlingResult): readonly number[] {
  if ('T' in sling) return sling.T
  return sling.status === 'UNSTABLE' && sling.upright !== null ? sling.upright.T : []
}

/** What keeps a solve from counting as a stable rest. */
export function troubleOf(sling: SlingResult): CaseSling['trouble'] {
  switch (sling.status) {
    case 'OK': case 'OK_WITH_SLACK': case 'OK_NEUTRAL_TWIST': return 'none'
    case 'UNSTABLE': return 'unstable'
    case 'LOST_SUPPORT': return 'lost support'
    case 'NOT_CONVERGED': case 'ERROR': return 'not converged'
  }
}
