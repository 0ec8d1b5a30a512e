import { NEARLY_SLACK } from '../catalogue/legs'
import { STANDARD_GRAVITY } from '../quantity/si'
import { solveSling } from '../statics/sling/solveSling'
import type { SlingInput, SlingResult, Vec3 } from '../statics/sling/result'
import { legFree, type SlingPlan } from './slingPlan'
import type { CaseSling } from './solved'

export interface BatteryInput {
  readonly plan: SlingPlan
  /** Axial stiffness of an ordinary leg, N: at first load, and bedded in. */
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

/** The sling of a plan: EA of an ordinary leg, N; centre of gravity, pot frame, m; how much longer each leg is, m. */
export function slingInput({ plan, mass }: BatteryInput, stiffness: number, centre: Vec3, longer: readonly number[]): SlingInput {
  const { legs, ell, wall } = plan
  return {
    A: legs.map((leg) => leg.upper),
    B: legs.map((leg) => leg.lower),
    L0: legs.map((leg, i) => legFree(leg) + (longer[i] ?? 0)),
    EA: legs.map((leg) => stiffness * leg.stiffness),
    mass, cg: centre, ell, wall,
    gravity: STANDARD_GRAVITY,
  }
}

/** Batteries that are kept: those of two hangers. */
const KEPT = 40
const known = new Map<string, CaseSling>()

/** Solves a battery, or finds it among the last that were solved: whoever changes only the place, or takes a change back, asks for the same slings again. */
function keptOr(what: string, input: BatteryInput, solve: (input: BatteryInput) => CaseSling): CaseSling {
  const key = what + JSON.stringify(input)
  const solved = known.get(key) ?? solve(input)
  known.delete(key)
  known.set(key, solved)
  if (known.size > KEPT) known.delete(known.keys().next().value ?? '')
  return solved
}

/**
 * Solves one load case as drawn, off centre, and with legs longer and shorter by the tolerance, bedded
 * in (stiffer legs share a wrong length worse). The worst tension of each leg counts, and never less
 * than its floor; of legs that are alike any may be the worst one.
 */
export const solveBattery = (input: BatteryInput): CaseSling => keptOr('whole', input, battery)

function battery(input: BatteryInput): CaseSling {
  const { plan, centre, offset, tolerance } = input
  const onAxis: Vec3 = [0, 0, centre]
  const drawn = solveSling(slingInput(input, input.stiffness, onAxis, []))
  const others = offset > 0 ? plan.asides.map((aside) => solveSling(slingInput(input, input.stiffness, [offset * Math.cos(aside), offset * Math.sin(aside), centre], []))) : []
  const uneven = tolerance > 0 ? plan.uneven.map((longer) => solveSling(slingInput(input, input.bedded, onAxis, longer.map((share) => share * tolerance)))) : []
  // Legs of unequal length may leave two legs carrying: the slack ones are millimetres away and catch
  // the pot, so only a solve without any balance is trouble there.
  const trouble = [drawn, ...others].map((s) => troubleOf(s, plan)).find((t) => t !== 'none') ?? (uneven.some((s) => tensionsOf(s).length === 0) ? 'not converged' : 'none')
  const weight = input.mass * STANDARD_GRAVITY
  const solved = trouble === 'none' ? worstOfEach(plan, [drawn, ...others, ...uneven]) : null
  const floor = Math.max(...plan.legs.map((leg) => leg.floor * weight))
  const each = solved?.map((tension, i) => Math.max(tension, (plan.legs[i]?.floor ?? 0) * weight)) ?? null
  const slackBelow = (NEARLY_SLACK.value * weight) / plan.legs.length
  return {
    drawn, each, floor, trouble, gone: null,
    tension: each === null ? null : Math.max(...each),
    solvedTension: solved === null ? null : Math.max(...solved),
    solvedEach: solved,
    sum: troubleOf(drawn, plan) === 'none' ? tensionsOf(drawn).reduce((a, b) => a + b, 0) : null,
    nearlySlack: Math.max(0, ...uneven.map((s) => tensionsOf(s).filter((t) => t < slackBelow).length)),
  }
}

/** The largest tension of each leg over all solves; of legs that are alike the largest of any. */
function worstOfEach({ legs, alike }: SlingPlan, slings: readonly SlingResult[]): readonly number[] {
  const all = slings.map(tensionsOf)
  const each = legs.map((_, i) => Math.max(...all.map((tensions) => tensions[i] ?? 0)))
  const most = Math.max(...each)
  return alike ? each.map(() => most) : each
}

/**
 * The sling with one leg gone: the worst of all legs that may go. What lasts on two strands and a wall is a rest
 * there; of three legs without a wall two are left, and the pot turns about them.
 */
export const solveWithoutLeg = (input: BatteryInput): CaseSling => keptOr('a leg gone', input, withoutLeg)

function withoutLeg(input: BatteryInput): CaseSling {
  const { plan } = input
  const without = plan.distinct.map((gone): CaseSling => {
    const legs = plan.legs.filter((_, i) => i !== gone)
    const left = { ...plan, legs }
    const drawn = solveSling(slingInput({ ...input, plan: left }, input.stiffness, [0, 0, input.centre], []))
    const trouble = legs.length < 3 && plan.wall === null ? 'lost support' : troubleOf(drawn, left)
    const tensions = trouble === 'none' ? tensionsOf(drawn) : null
    const each = tensions === null ? null : [...tensions.slice(0, gone), 0, ...tensions.slice(gone)]
    const tension = each === null ? null : Math.max(...each)
    return { drawn, gone, each, solvedEach: each, tension, solvedTension: tension, floor: 0, sum: tensions?.reduce((a, b) => a + b, 0) ?? null, nearlySlack: 0, trouble }
  })
  return without.reduce((worst, one) => (worst.trouble !== 'none' ? worst : one.trouble !== 'none' || (one.tension ?? 0) > (worst.tension ?? 0) ? one : worst))
}

/** Tensions of the balance a solve found, stable or not; none if it found none. */
export function tensionsOf(sling: SlingResult): readonly number[] {
  if ('T' in sling) return sling.T
  return sling.status === 'UNSTABLE' && sling.upright !== null ? sling.upright.T : []
}

/** What keeps a solve from counting as a stable rest; against a wall fewer than three strands may be enough. */
export function troubleOf(sling: SlingResult, { wall }: Pick<SlingPlan, 'wall'>): CaseSling['trouble'] {
  switch (sling.status) {
    case 'OK': case 'OK_WITH_SLACK': case 'OK_NEUTRAL_TWIST': return 'none'
    case 'UNSTABLE': return 'unstable'
    case 'LOST_SUPPORT': return wall !== null && sling.stable ? 'none' : 'lost support'
    case 'NOT_CONVERGED': case 'ERROR': return 'not converged'
  }
}
