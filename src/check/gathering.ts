import { FIBRE_PROPERTIES } from '../catalogue/cords'
import { USUAL_WRAPS } from '../catalogue/knots'
import { CASES_AT_REST } from '../load/loadCases'
import { newtons, radians, type Metres } from '../quantity/si'
import { afterTurn, edgeForce, splayHoop } from '../statics/friction'
import type { TautPath } from '../statics/tautPath'
import { knotCord } from './knotCord'
import type { Solved } from './solved'
import { wrapsNeeded, type NeededWraps } from './wrapsNeeded'

/** One leg where it turns over the pot's base edge, at rest in the heaviest state; friction with its low value. */
export interface BaseEdge {
  /** Turn over everything above the base edge, and over it, rad. */
  readonly above: number
  readonly turn: number
  /** Pull of the leg, what of it arrives at the edge, and what goes on to the gathering knot, N. */
  readonly leg: number
  readonly before: number
  readonly after: number
  /** What presses on the edge, N. */
  readonly force: number
}

/** What happens below the pot, and what the gathering knot takes to tie. */
export interface Gathering {
  /** Wraps as tied, and the fewest that would do by the model. */
  readonly wraps: number
  readonly needed: NeededWraps
  /** As makers usually tie them, whatever the pot weighs. */
  readonly usual: { readonly low: number; readonly high: number }
  /** Wrapping cord to cut, its height once wrapped, and the width of what it is wrapped round, m. */
  readonly wrappingCord: Metres
  readonly height: Metres
  readonly bundle: Metres
  /** Wraps that the wrapping cord makes as it was cut; null where its length was not said. */
  readonly cordMakes: number | null
  /** Null where the strands do not reach round the pot or no balance was found. */
  readonly baseEdge: BaseEdge | null
  /** Pull that reaches the wraps, and tension of the top wrap, at rest in the heaviest state, N. */
  readonly slip: number | null
  readonly splay: number | null
}

/**
 * What happens below the pot: the turn over its base edge, grip and splay at the gathering knot, and what to tie it
 * with; of several pots one under another below the first. Apart from the check, as it solves the sling again for other numbers of wraps.
 */
export function gathering(whole: Solved): Gathering {
  const solved = whole.tiers[0]?.hung ?? whole
  const { answers } = solved.hanger
  const { length, height, bundle, makes } = knotCord(answers)
  const heaviest = CASES_AT_REST.reduce((most, code) => (solved.loads[code].weight > solved.loads[most].weight ? code : most))
  const sling = solved.slings?.[heaviest] ?? null
  const { onPot, onItself } = FIBRE_PROPERTIES[answers['cord.fibre']]
  const { path } = solved.geometry
  const sum = sling?.sum ?? null
  return {
    wraps: answers['gathering.wraps'],
    needed: wrapsNeeded(solved),
    usual: { low: USUAL_WRAPS.low, high: USUAL_WRAPS.high },
    wrappingCord: length, height, bundle,
    cordMakes: makes,
    baseEdge: path.ok && sling !== null && sling.tension !== null ? overBaseEdge(path, sling.tension, onPot.value) : null,
    slip: path.ok && sum !== null ? afterTurn(afterTurn(newtons(sum), onPot.value, path.turn), onItself.value, radians(Math.PI / 2)) : null,
    splay: sum === null ? null : splayHoop(1, newtons(sum)),
  }
}

/** A leg of tension T, N, over the side and the base edge of a pot, friction mu. */
export function overBaseEdge({ touched, turn }: Pick<TautPath, 'touched' | 'turn'>, tension: number, friction: number): BaseEdge {
  const [edge, above] = [...touched].reverse()
  // Down the side the strand goes inwards as the pot narrows; then it turns into the level under the base.
  const inward = edge && above ? Math.atan2(above.r - edge.r, above.z - edge.z) : null
  const overEdge = inward === null ? turn : Math.PI / 2 - inward
  const before = afterTurn(newtons(tension), friction, radians(turn - overEdge))
  const after = afterTurn(before, friction, radians(overEdge))
  return { above: turn - overEdge, turn: overEdge, leg: tension, before, after, force: edgeForce(before, after, radians(overEdge)) }
}
