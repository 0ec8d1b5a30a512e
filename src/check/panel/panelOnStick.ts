import type { CaseCode } from '../../load/loadCases'
import { legAngle } from '../slingPlan'
import { tensionsOf } from '../slingBattery'
import type { Solved } from '../solved'

/** One way in which it loads the stick: places from its middle, m, and shares of the weight; all of them are this hanger's own. */
interface PanelLoading {
  readonly own: number
  readonly loads: readonly { readonly at: number; readonly share: number }[]
}

/**
 * How a panel's strands load its stick, each group straight above its place at the panel's edge: as drawn, all of it on
 * the corners, all of it on those behind, and every group in turn as much as in any solve, the others sharing the rest
 * as drawn. Alone under the middle where its strands cannot hang so.
 */
export function panelOnStick({ plan, slings, loads }: Pick<Solved, 'plan' | 'slings' | 'loads'>, code: CaseCode): readonly PanelLoading[] {
  const sling = slings?.[code] ?? null
  if (plan === null || sling === null || sling.each === null) return [{ own: 1, loads: [{ at: 0, share: 1 }] }]
  const lift = (of: readonly number[]): readonly number[] => plan.legs.map((leg, i) => (of[i] ?? 0) * Math.cos(legAngle(leg)))
  const loading = (shares: readonly number[]): PanelLoading => {
    const all = shares.reduce((a, b) => a + b, 0)
    return { own: shares.length, loads: plan.legs.map(({ upper }, i) => ({ at: upper[0], share: (shares[i] ?? 0) / all })) }
  }
  const drawn = loading(lift(tensionsOf(sling.drawn))).loads.map(({ share }) => share)
  const only = (kind: 'front' | 'back'): readonly number[] => plan.legs.map((leg) => (leg.kind === kind ? 1 : 0))
  const heavy = lift(sling.solvedEach ?? sling.each).map((most, i) => {
    const share = Math.min(1, Math.max(drawn[i] ?? 0, most / loads[code].weight))
    const rest = 1 - (drawn[i] ?? 0)
    return loading(drawn.map((d, j) => (j === i ? share : rest > 0 ? (d * (1 - share)) / rest : 0)))
  })
  return [loading(drawn), loading(only('front')), loading(only('back')), ...heavy]
}
