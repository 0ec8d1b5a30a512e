import type { HangerGeometry } from './geometry'
import { roundLegs, type SlingPlan } from './slingPlan'

/** How the pot hangs in its legs; null where the strands do not reach round it. */
export function planOf({ legs, panel }: Pick<HangerGeometry, 'legs' | 'panel'>): SlingPlan | null {
  if (panel !== null) return panel.ok ? panel.plan : null
  return legs.length > 0 ? roundLegs(legs) : null
}
