import { balanceAt } from './balanceAt'
import { hasFallen } from './findRest'
import { findBalance } from './findBalance'
import { hangUpright } from './hangUpright'
import { lostSupport, restStatus } from './lastingRest'
import { clearOf } from './leanOn'
import { letDown } from './letDown'
import { newPoint } from './point'
import { newPose, turnCosine } from './pose'
import { residual } from './residual'
import type { Balance, SlingInput, SlingResult } from './result'
import { sceneOf, sceneWallOf, type Scene, type SceneWall } from './scene'
import { slingError } from './slingError'

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
 * its side or upside down; the position it would fall into is not shown. One rest is told, the one an
 * upright start leads to; slingRests.ts looks for others.
 */
export function solveSling(input: SlingInput): SlingResult {
  const error = slingError(input)
  if (error !== null) return { status: 'ERROR', error }
  return solveScene(sceneOf(input), sceneWallOf(input))
}

/** The same of a scene that is laid out already. */
export function solveScene(scene: Scene, wall: SceneWall | null): SlingResult {
  hangUpright(scene, start)
  const down = letDown(scene, wall, start, here)
  const effort = { residualRel: residual(scene, here), iterations: down.iterations }
  if (!down.converged) {
    const finite = Number.isFinite(effort.residualRel)
    return { status: 'NOT_CONVERGED', reason: !finite ? 'NUMBERS' : down.free ? 'WALL' : 'STEPS', residualRel: finite ? effort.residualRel : null, iterations: effort.iterations }
  }
  const balance = balanceAt(scene, here, down.forces, down.slopes)
  if (lostSupport(balance)) return { status: 'LOST_SUPPORT', ...balance, ...effort }
  const fallen = hasFallen(here.pose)
  if (!balance.stable && !fallen) return { status: 'UNSTABLE', stable: false, upright: balance, ...effort }
  const upright = fallen || down.bent ? unstableUpright(scene, wall) : null
  if (upright !== null) return { status: 'UNSTABLE', stable: false, upright, ...effort, residualRel: residual(scene, other) }
  if (fallen) return { status: 'UNSTABLE', stable: false, upright, ...effort }
  return { status: restStatus(balance), ...balance, ...effort }
}

/** The balance near the upright start that would not last; null if there is none, or only one that reaches into the wall. */
function unstableUpright(scene: Scene, wall: SceneWall | null): Balance | null {
  scene.wall = null
  if (!findBalance(scene, start, other) || turnCosine(other.pose) < UPRIGHT) return null
  if (wall !== null && !clearOf(scene, wall, other.pose)) return null
  const balance = balanceAt(scene, other, wall?.contacts.map(() => 0) ?? [], [])
  return balance.stable ? null : balance
}
