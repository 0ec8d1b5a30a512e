import type { Scene } from '../scene'
import { sideways } from '../view'

/** A scene seen from its right side, and what stands where in it, m along the view: the hook, and the wall behind the hanger; null where there is none. */
export interface SideScene extends Scene {
  readonly hookAt: number
  readonly wall: number | null
}

/** From the wall to where the hanger hangs; null of what hangs from a ceiling or round a beam. */
export function standOff({ answers }: Pick<Scene, 'answers'>): number | null {
  switch (answers['place.support']) {
    case 'wallHook': return answers['hook.projection']
    case 'bracket': case 'swingArm': return answers['bracket.reach']
    case 'ceilingHook': case 'overBeam': return null
  }
}

/** The same scene seen from its right. */
export function sideScene(scene: Scene): SideScene {
  const view = sideways(scene.view)
  const [hookAt] = view.front(scene.pose.hangingPoint)
  const off = standOff(scene)
  return { ...scene, view, stickAt: 0, gathering: view.front(scene.gatheredAt), hookAt, wall: off === null ? null : hookAt + off }
}
