import { balanceAt } from './balance'
import { newPoint } from './point'
import { newPose, type Pose } from './pose'
import { findRest } from './rest'
import type { Balance, SlingInput, SlingRestStatus, SlingResult } from './result'
import { norm } from './minimise'
import { findBalance } from './saddle'
import { sceneOf, type Scene } from './scene'
import { hangUpright } from './start'
import { slingError } from './validate'

const LEAST_CARRYING = 3
/** A balance turned less than this from the upright start counts as the upright position, cosine of 1 degree. */
const UPRIGHT = Math.cos(Math.PI / 180)

const here = newPoint()
const other = newPoint()
const start = newPose()

/**
 * Where a rigid pot on elastic strands comes to rest, what each strand then carries, and whether the
 * rest is stable. Least energy from an upright start; see energy.ts for the model.
 */
export function solveSling(input: SlingInput): SlingResult {
  const error = slingError(input)
  if (error !== null) return { status: 'ERROR', error }
  const scene = sceneOf(input)
  hangUpright(scene, start)
  const { converged, iterations, bent } = findRest(scene, start, here)
  const residualRel = residual(scene)
  if (!converged) return { status: 'NOT_CONVERGED', residualRel: Number.isFinite(residualRel) ? residualRel : null, iterations }
  const balance = balanceAt(scene, here, [], [])
  const effort = { residualRel, iterations }
  const carrying = balance.slack.filter((slack) => !slack).length
  if (carrying < LEAST_CARRYING) return { status: 'LOST_SUPPORT', ...balance, ...effort }
  if (!balance.stable) return { status: 'UNSTABLE', stable: false, upright: balance, ...effort }
  const fallen = balance.R[2][2] <= 0
  if (bent || fallen) {
    const upright = unstableUpright(scene)
    if (upright !== null || fallen) return { status: 'UNSTABLE', stable: false, upright, ...effort }
  }
  return { status: restStatus(balance), ...balance, ...effort }
}

function restStatus({ slack, zeroIsSymmetry }: Balance): SlingRestStatus {
  if (slack.includes(true)) return 'OK_WITH_SLACK'
  return zeroIsSymmetry ? 'OK_NEUTRAL_TWIST' : 'OK'
}

function unstableUpright(scene: Scene): Balance | null {
  if (!findBalance(scene, start, other) || !isUpright(other.pose)) return null
  const balance = balanceAt(scene, other, [], [])
  return balance.stable ? null : balance
}

/** Whether a pose is turned by less than a degree: trace R = 1 + 2 cos(angle). */
const isUpright = ({ R }: Pose): boolean => R[0]! + R[4]! + R[8]! >= 1 + 2 * UPRIGHT

/** Force over weight, or moment over weight times ell, whichever is greater. */
function residual({ weight }: Scene): number {
  const [fx, fy, fz, mx, my, mz] = here.gradient as unknown as readonly [number, number, number, number, number, number]
  return Math.max(Math.hypot(fx, fy, fz), Math.hypot(mx, my, mz)) / weight
}
void norm
