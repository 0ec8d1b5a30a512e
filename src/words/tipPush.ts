import type { SeatPush } from '../check/tipPush'
import { forceText } from './amounts'

/** What a push on a pot's rim does, and from how much on. */
export function tipPushText({ tips, force, locked }: Pick<SeatPush, 'tips' | 'locked' | 'force'>): string {
  if (!tips) return 'swings out with its hanger and does not tip'
  return locked ? `leans too far from ${forceText(force)} on` : `slides in its cradle from ${forceText(force)} on, if nothing grips`
}
