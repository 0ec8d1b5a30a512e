import type { Answers } from '../hanger/fields'
import type { HangerGeometry } from './geometry'
import { equalLegs, type SlingPlan } from './slingPlan'

/** How the pot hangs in its legs; null where the strands do not reach round it. */
export function planOf(answers: Answers, { path }: HangerGeometry): SlingPlan | null {
  return path.ok ? equalLegs(answers['make.legs'], path) : null
}
