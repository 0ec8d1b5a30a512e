import { anchorsOf } from '../anchors'
import { between } from '../bundle'
import { screwOf } from '../section/screw'
import { armHeight, bracketScrews, hasBracket } from '../support'
import { stickBottom } from '../stick'
import type { Drawing, Point } from '../shape'
import type { SideScene } from './sideScene'
import { shankHeight } from './wall'

/** Where each part of the place is pointed at from the side. */
export function sidePlaceAnchors(scene: SideScene): Drawing['anchors'] {
  const { answers, wall, hookAt, bowl, ceiling, unit } = scene
  const inTimber = answers['place.substrate'] === 'timber' ? screwOf(scene).length / 2 : 0
  if (wall === null) {
    if (answers['place.support'] === 'overBeam') return { fixing: [hookAt, bowl + 2 * unit] }
    return { fixing: [hookAt, ceiling + inTimber], hook: [hookAt, bowl], hookShank: [hookAt, (ceiling + bowl) / 2] }
  }
  if (hasBracket(answers)) return { fixing: [wall + inTimber, bracketScrews(scene).at(-1) ?? bowl], bracket: [(wall + hookAt) / 2, armHeight(scene)] }
  return { fixing: [wall + inTimber, shankHeight(scene)], hook: [hookAt, bowl], pin: [(wall + hookAt) / 2, shankHeight(scene)] }
}

/** Where each part of what hangs is pointed at from the side. */
export function sideHungAnchors(scene: SideScene): Drawing['anchors'] {
  const { answers, hasStick, hookAt, bowl, carried, pose, view, check: { solved: { geometry } } } = scene
  const hanging = view.front(pose.hangingPoint)
  const stick = stickBottom(scene) + answers['stick.diameter'] / 2
  const ring: Point = [hookAt, geometry.ringRadius > 0 ? hanging[1] : (carried + hanging[1]) / 2]
  return {
    ...anchorsOf(scene),
    ring, ringCord: between([hookAt + geometry.ringRadius * 0.7, hanging[1]], [hookAt, carried], 0.5),
    ...(answers['connector.kind'] === 'none' ? {} : { connector: [hookAt, (bowl + carried) / 2] as const }),
    ...(hasStick ? { stick: [hookAt, stick] as const } : {}),
    ...(hasStick && answers['stick.held'] === 'topCord' ? { topCord: [hookAt, (stick + carried) / 2] as const } : {}),
  }
}
