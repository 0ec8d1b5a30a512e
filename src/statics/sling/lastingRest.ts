import { balanceAt } from './balanceAt'
import { hasFallen } from './findRest'
import type { LetDown } from './letDown'
import type { Point } from './point'
import { residual } from './residual'
import type { Balance, SlingRest, SlingRestStatus } from './result'
import type { Scene } from './scene'

const LEAST_CARRYING = 3

/** Whether fewer than three legs carry. */
export const lostSupport = ({ slack }: Balance): boolean => slack.filter((one) => !one).length < LEAST_CARRYING

/** What to call a stable rest. */
export function restStatus(balance: Balance): SlingRestStatus {
  if (lostSupport(balance)) return 'LOST_SUPPORT'
  if (balance.slack.includes(true)) return 'OK_WITH_SLACK'
  return balance.zeroIsSymmetry ? 'OK_NEUTRAL_TWIST' : 'OK'
}

/** The rest of a pot that was let down, if it is one that lasts, with its axis above the horizontal; else null. */
export function lastingRest(scene: Scene, here: Point, down: LetDown): SlingRest | null {
  if (!down.converged || hasFallen(here.pose)) return null
  const balance = balanceAt(scene, here, down.forces, down.slopes)
  return balance.stable ? { status: restStatus(balance), ...balance, residualRel: residual(scene, here), iterations: down.iterations } : null
}
