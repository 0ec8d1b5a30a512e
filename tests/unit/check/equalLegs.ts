import { roundLegs, type SlingPlan } from '../../../src/check/slingPlan'
import type { TautPath } from '../../../src/statics/tautPath'

/** Equal legs from one point on the axis, evenly round a pot. */
export const equalLegs = (count: number, path: TautPath): SlingPlan =>
  roundLegs(Array.from({ length: count }, (_, i) => ({ angle: (2 * Math.PI * i) / count, upper: [0, 0], path })))
