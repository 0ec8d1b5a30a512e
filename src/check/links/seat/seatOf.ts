import { SOFT_LEGS } from '../../../catalogue/seat'
import type { CaseCode } from '../../../load/loadCases'
import { STANDARD_GRAVITY } from '../../../quantity/si'
import type { SlidingSeat } from '../../../statics/seat/slidingSeat'
import type { Vec3 } from '../../../statics/sling/result'
import { legFree } from '../../slingPlan'
import { legStiffness } from '../../solve'
import type { Solved } from '../../solved'

/**
 * The pot on its strands as they run over it, round its base edge to the gathering knot, softer than reckoned
 * (SOFT_LEGS), at rest in a case. Null of a panel, whose strands are held by their net, and where there are no legs.
 */
export function seatOf({ hanger: { answers }, geometry: { legs, panel }, plan, cord, loads, potted }: Solved, code: CaseCode): SlidingSeat | null {
  if (plan === null || panel !== null || legs.length === 0) return null
  const stiffness = legStiffness(answers, cord) * SOFT_LEGS.value
  const edge = legs.map(({ angle, path }): Vec3 => [path.knotToBaseEdge * Math.cos(angle), path.knotToBaseEdge * Math.sin(angle), 0])
  const down = (leave: Vec3, under: Vec3): number => Math.hypot(leave[0] - under[0], leave[1] - under[1], leave[2] - under[2])
  return {
    A: plan.legs.map(({ upper }) => upper),
    B: plan.legs.map(({ lower }) => lower),
    edge,
    knot: [0, 0, 0],
    L0: plan.legs.map((leg, i) => legFree(leg) + down(leg.lower, edge[i] ?? leg.lower) + Math.hypot(...(edge[i] ?? [0, 0, 0]))),
    EA: plan.legs.map((leg) => stiffness * leg.stiffness),
    mass: loads[code].weight / STANDARD_GRAVITY,
    cg: [0, 0, potted[loads[code].case.state].centre],
    ell: plan.ell,
    gravity: STANDARD_GRAVITY,
    wall: plan.wall,
  }
}
