import type { Point } from './point'
import type { Scene } from './scene'

/** Force over weight, or moment over weight times ell, whichever is greater. */
export function residual({ weight }: Scene, { gradient: g }: Point): number {
  return Math.max(Math.hypot(g[0]!, g[1]!, g[2]!), Math.hypot(g[3]!, g[4]!, g[5]!)) / weight
}
