import { newtonStep } from '../linear/newtonStep'
import { evaluate } from './energy'
import { hangUpright } from './hangUpright'
import { lastingRest } from './lastingRest'
import { leanNear } from './leanOn'
import { letDown } from './letDown'
import { newPoint } from './point'
import { newPose, type Pose } from './pose'
import type { Balance, SlingInput, SlingResult } from './result'
import { sceneOf, sceneWallOf, type Scene } from './scene'
import { slingError } from './slingError'
import { solveSling } from './solveSling'

/** The shift, as a share of the legs' stiffness, with which the start must still curve upward (as in minimise.ts). */
const BENT = 1e-8

const here = newPoint()
const start = newPose()
const step = new Float64Array(6)

/**
 * Like solveSling, but begun from a rest of nearly the same hanger, for sweeps: fewer steps (though, the
 * upright start being looked at all the same, no less time), and of
 * several rest positions the one that follows from the last. Only a lasting rest on three legs or more
 * is taken from there; whatever else may come, or where the upright start would not last, is answered
 * by solveSling itself.
 */
export function solveSlingNear(input: SlingInput, near: Pick<Balance, 'cg' | 'R' | 'wallN'>): SlingResult {
  if (slingError(input) !== null) return solveSling(input)
  const scene = sceneOf(input)
  const wall = sceneWallOf(input)
  hangUpright(scene, start)
  if (bendsDown(scene, start)) return solveSling(input)
  start.p.set(near.cg)
  start.R.set(near.R.flat())
  const leant = wall !== null && near.wallN.some((N) => N > 0) ? lastingRest(scene, here, { ...leanNear(scene, wall, start, near.wallN, here), bent: false, free: true }) : null
  const rest = leant ?? lastingRest(scene, here, letDown(scene, wall, start, here))
  return rest === null || rest.status === 'LOST_SUPPORT' ? solveSling(input) : rest
}

/** Whether the energy curves downward, or not at all, at a pose. */
function bendsDown(scene: Scene, pose: Pose): boolean {
  here.pose.p.set(pose.p)
  here.pose.R.set(pose.R)
  evaluate(scene, here)
  return !newtonStep(6, here.hessian, BENT * scene.stiffness, here.gradient, step)
}
