import { STANDARD_GRAVITY } from '../../quantity/si'
import { solveSling } from '../../statics/sling/solveSling'
import type { SlingResult } from '../../statics/sling/result'
import { slingInput, solveWithoutLeg, tensionsOf, troubleOf, type BatteryInput } from '../slingBattery'
import { legAngle, type SlingPlan } from '../slingPlan'
import type { CaseSling } from '../solved'

/** Who bears what in one way a wall planter may be tied. */
export interface PanelShare {
  /** By how much the strands in front are longer than drawn, m; negative: shorter. */
  readonly longer: number
  /** Shares of the weight that the strands in front and those behind bear; null where there is no rest. */
  readonly front: number | null
  readonly behind: number | null
  /** Push of the wall on the pot's widest level and on its base edge, over the weight. */
  readonly wallAtRim: number | null
  readonly wallAtBase: number | null
}

/** What a panel's strands share, and what is left where one group of them is gone. */
export interface PanelSolved {
  /** Just watered: as drawn, and with the strands in front longer and shorter by the tolerance. */
  readonly shares: readonly PanelShare[]
  /** Without the strands of one corner, and without one half of those behind. */
  readonly without: Readonly<Record<'front' | 'back', CaseSling>>
}

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
