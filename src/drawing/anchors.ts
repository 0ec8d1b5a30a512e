import { between } from './bundle'
import { onStrand } from './cradle'
import { standingLegs } from './legs'
import { facing } from './potFrame'
import { hookPlaces, topCordAxis } from './stick'
import type { Scene } from './scene'
import type { Drawing } from './shape'
import { placeAnchors } from './support'

/** Where each link of the load path is pointed at, from the front. */
export function anchorsOf(scene: Scene): Drawing['anchors'] {
  const { answers, hasStick, pose, view, bowl, carried, ceiling, gathering: [x, z], cord, check } = scene
  const rightmost = standingLegs(scene).reduce((a, b) => (view.front(pose.leavePoint(b))[0] > view.front(pose.leavePoint(a))[0] ? b : a))
  const hanging = view.front(pose.hangingPoint)
  const at = Math.max(...hookPlaces(scene))
  const topCord = topCordAxis(scene)
  return {
    fixing: [at, ceiling + (answers['place.substrate'] === 'timber' ? answers['fixing.penetration'] / 2 : 0)],
    hook: [at, bowl],
    hookShank: [at, (ceiling + bowl) / 2],
    ...placeAnchors(scene),
    ...(answers['connector.kind'] === 'none' ? {} : { connector: [at, (bowl + carried) / 2] as const }),
    ...(hasStick && answers['stick.held'] === 'topCord' ? { topCord: topCord === null ? [0, carried] as const : between(topCord[1], topCord[2], 0.5) } : {}),
    ...(hasStick ? { stick: [answers['stick.length'] * 0.45, pose.hangingPoint[2] + answers['stick.diameter'] / 2] as const } : {}),
    ring: [0, (carried + pose.hangingPoint[2]) / 2],
    leg: between(hanging, view.front(pose.leavePoint(rightmost)), 0.5),
    seat: view.front(onStrand(scene, pose.angle(rightmost), answers['cradle.first'])),
    gatheringTurn: between([x, z], facing(scene, pose.path.knotToBaseEdge, 0), 0.3),
    wrapHoop: [x, z - cord / 2],
    gatheringGrip: [x, z - check.solved.geometry.knot / 2],
    load: facing(scene, 0, answers['pot.height'] / 2),
  }
}
