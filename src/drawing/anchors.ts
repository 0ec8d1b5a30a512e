import { between } from './bundle'
import { onStrand } from './cradle'
import { standingLegs } from './legs'
import { facing } from './potFrame'
import { hookPlaces, stickBottom, topCordAxis } from './stick'
import type { Scene } from './scene'
import type { Drawing, Point } from './shape'
import { placeAnchors } from './support'

/** Where each link of the load path is pointed at, from the front. */
export function anchorsOf(scene: Scene): Drawing['anchors'] {
  const { answers, hasStick, stickAt, pose, view, bowl, carried, ceiling, gathering: [x, z], cord, check } = scene
  const rightmost = standingLegs(scene).reduce((a, b) => (view.front(pose.leavePoint(b))[0] > view.front(pose.leavePoint(a))[0] ? b : a))
  const hanging = view.front(pose.hangingPoint)
  const at = stickAt + Math.max(...hookPlaces(scene))
  const topCord = topCordAxis(scene)
  const aside = ([px, pz]: Point): Point => [px + stickAt, pz]
  return {
    fixing: [at, ceiling + (answers['place.substrate'] === 'timber' ? answers['fixing.penetration'] / 2 : 0)],
    hook: [at, bowl],
    hookShank: [at, (ceiling + bowl) / 2],
    ...Object.fromEntries(Object.entries(placeAnchors(scene)).map(([link, [px, pz]]) => [link, [px + stickAt, pz]])),
    ...(answers['connector.kind'] === 'none' ? {} : { connector: [at, (bowl + carried) / 2] as const }),
    ...(hasStick && answers['stick.held'] === 'topCord' ? { topCord: aside(topCord === null ? [0, carried] : between(topCord[1], topCord[2], 0.5)) } : {}),
    ...(hasStick ? { stick: aside([answers['stick.length'] * 0.45, stickBottom(scene) + answers['stick.diameter'] / 2]) } : {}),
    ringCord: between([check.solved.geometry.ringRadius * 0.7, pose.hangingPoint[2]], [0, carried], 0.5),
    ring: [check.solved.geometry.ringRadius, check.solved.geometry.ringRadius > 0 || hasStick ? hanging[1] : (carried + pose.hangingPoint[2]) / 2],
    leg: between(view.front(pose.upperEnd(rightmost)), view.front(pose.leavePoint(rightmost)), 0.5),
    cradle: view.front(onStrand(scene, rightmost, answers['cradle.first'] / 2)),
    seat: view.front(onStrand(scene, rightmost, answers['cradle.first'])),
    gatheringTurn: between([x, z], facing(scene, pose.path.knotToBaseEdge, 0), 0.3),
    wrapHoop: [x, z - cord / 2],
    gatheringGrip: [x, z - check.solved.geometry.knot / 2],
    load: facing(scene, 0, answers['pot.height'] / 2),
  }
}
