import { balanceAt } from './balanceAt'
import { newPoint, type Point } from './point'
import { newPose, turnCosine } from './pose'
import type { Balance, SlingInput, SlingRestStatus, SlingResult } from './result'
import { findRest, hasFallen } from './findRest'
import { findBalance } from './findBalance'
import { sceneOf, sceneWallOf, type Scene, type SceneWall } from './scene'
import { hangUpright } from './hangUpright'
import { slingError } from './slingError'
import { clearOf, leanOn } from './leanOn'

const LEAST_CARRYING = 3
/** A balance turned less than this from the upright start counts as the upright position, cosine of 1 degree. */
const UPRIGHT = Math.cos(Math.PI / 180)

const here = newPoint()
const other = newPoint()
const start = newPose()

/**
 * Where a rigid pot on elastic strands comes to rest, what each strand then carries, and whether the
 * rest is stable. Least energy from an upright start; see energy.ts for the model and result.ts for
 * units and signs.
 *
 * UNSTABLE: the balance found, or an upright one passed on the way, would not last, or the pot ends on
 * its side or upside down; the position it would fall into is not shown.
 */
export function solveSling(input: SlingInput): SlingResult {
  const error = slingError(input)
  if (error !== null) return { status: 'ERROR', error }
  const scene = sceneOf(input)
  const wall = sceneWallOf(input)
  hangUpright(scene, start)
  const free = findRest(scene, start, here)
  const touch = wall === null || (free.converged && clearOf(scene, wall, here.pose)) ? null : leanOn(scene, wall, [here.pose, start], here)
  const converged = touch === null ? free.converged : touch.converged
  const effort = { residualRel: residual(scene, here), iterations: free.iterations + (touch?.iterations ?? 0) }
  if (!converged) return { status: 'NOT_CONVERGED', residualRel: Number.isFinite(effort.residualRel) ? effort.residualRel : null, iterations: effort.iterations }
  const forces = touch?.forces ?? wall?.contacts.map(() => 0) ?? []
  const balance = balanceAt(scene, here, forces, touch?.slopes ?? [])
  const carrying = balance.slack.filter((slack) => !slack).length
  if (carrying < LEAST_CARRYING) return { status: 'LOST_SUPPORT', ...balance, ...effort }
  const fallen = hasFallen(here.pose)
  if (!balance.stable && !fallen) return { status: 'UNSTABLE', stable: false, upright: balance, ...effort }
  const upright = fallen || free.bent ? unstableUpright(scene, wall) : null
  if (upright !== null) return { status: 'UNSTABLE', stable: false, upright, ...effort, residualRel: residual(scene, other) }
  if (fallen) return { status: 'UNSTABLE', stable: false, upright, ...effort }
  return { status: restStatus(balance), ...balance, ...effort }
}

function restStatus({ slack, zeroIsSymmetry }: Balance): SlingRestStatus {
  if (slack.includes(true)) return 'OK_WITH_SLACK'
  return zeroIsSymmetry ? 'OK_NEUTRAL_TWIST' : 'OK'
}

/** The balance near the upright start that would not last; null if there is none, or only one that reaches into the wall. */
function unstableUpright(scene: Scene, wall: SceneWall | null): Balance | null {
  scene.wall = null
  if (!findBalance(scene, start, other) || turnCosine(other.pose) < UPRIGHT) return null
  if (wall !== null && !clearOf(scene, wall, other.pose)) return null
  const balance = balanceAt(scene, other, wall?.contacts.map(() => 0) ?? [], [])
  return balance.stable ? null : balance
}

/** Force over weight, or moment over weight times ell, whichever is greater. */
function residual({ weight }: Scene, { gradient: g }: Point): number {
  return Math.max(Math.hypot(g[0]!, g[1]!, g[2]!), Math.hypot(g[3]!, g[4]!, g[5]!)) / weight
}
