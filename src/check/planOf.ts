import type { HangerGeometry } from './geometry'
import { roundLegs, type SlingPlan } from './slingPlan'

/** How the pot hangs in its legs; null where the strands do not reach round it. */
export function planOf({ legs }: HangerGeometry): SlingPlan | null {
  return legs.length > 0 ? roundLegs(legs) : null
}
