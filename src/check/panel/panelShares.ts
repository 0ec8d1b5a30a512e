import { STANDARD_GRAVITY } from '../../quantity/si'
import { solveSling } from '../../statics/sling/solveSling'
import type { SlingResult } from '../../statics/sling/result'
import { slingInput, solveWithoutLeg, tensionsOf, troubleOf, type BatteryInput } from '../slingBattery'
import { legAngle, type SlingPlan } from '../slingPlan'
import type { CaseSling, PanelShare, PanelSolved } from '../solved'

/** Solves a wall planter just watered as it may be tied, and after an accident with each kind of strands gone. */
export function solvePanel(watered: BatteryInput, parted: BatteryInput): PanelSolved {
  const { plan, tolerance, stiffness, bedded } = watered
  const share = (longer: number): PanelShare => {
    const each = plan.legs.map(({ kind }) => (kind === 'front' ? longer : 0))
    return { longer, ...sharesOf(plan, solveSling(slingInput(watered, longer === 0 ? stiffness : bedded, [0, 0, watered.centre], each)), watered) }
  }
  const gone = (leg: number): CaseSling => solveWithoutLeg({ ...parted, plan: { ...plan, distinct: [leg] } })
  return { shares: (tolerance > 0 ? [0, tolerance, 0 - tolerance] : [0]).map(share), without: { front: gone(0), back: gone(2) } }
}

const NOTHING = { front: null, behind: null, wallAtRim: null, wallAtBase: null }

function sharesOf(plan: SlingPlan, sling: SlingResult, { mass }: BatteryInput): Omit<PanelShare, 'longer'> {
  if (troubleOf(sling, plan) !== 'none' || !('wallN' in sling)) return NOTHING
  const lifts = tensionsOf(sling).map((tension, i) => tension * Math.cos(legAngle(plan.legs[i] as SlingPlan['legs'][number])))
  const all = lifts.reduce((a, b) => a + b, 0)
  const front = lifts.reduce((sum, lift, i) => sum + (plan.legs[i]?.kind === 'front' ? lift : 0), 0) / all
  const weight = mass * STANDARD_GRAVITY
  const [rim = 0, base = 0] = sling.wallN
  return { front, behind: 1 - front, wallAtRim: rim / weight, wallAtBase: base / weight }
}
