import { hookShapes, ringShapes } from '../hook'
import { levelLine, uprightLine } from '../measure'
import type { Scene } from '../scene'
import { ceilingFrame, slab, wallFrame } from '../section/frame'
import { layersOf } from '../section/layers'
import { sectionShapes } from '../section/section'
import { sideScene } from '../side/sideScene'
import { hookProfile, shankHeight } from '../side/wall'
import type { Dimension } from '../shape'
import { hookPlaces } from '../stick'
import { shiftedShape } from '../shifted'
import { around, type Detail } from './detail'

/** The hook with its wire and its opening, latch or closed eye; from the side where it stands in a wall. Null under other supports. */
export function hookDetail(scene: Scene): Detail | null {
  switch (scene.answers['place.support']) {
    case 'ceilingHook': return inCeiling(scene)
    case 'wallHook': return inWall(scene)
    case 'bracket': case 'swingArm': case 'overBeam': return null
  }
}

function inCeiling(scene: Scene): Detail {
  const { answers, bowl, ceiling, stickAt, hasStick, hangsFrom } = scene
  const x = stickAt + Math.max(...hookPlaces(scene))
  const high = Math.max(ceiling - bowl + answers['hook.wire'], 2 * answers['hook.wire'])
  const ring = hangsFrom === 'ring' && !hasStick && answers['connector.kind'] === 'none' && scene.check.solved.geometry.ringRadius === 0 ? ringShapes(scene) : []
  const hook = hookShapes(scene, 0).map((shape) => shiftedShape(shape, x))
  return {
    code: 'hook', link: 'hook', of: around([x, (bowl + ceiling) / 2], 0.8 * high),
    shapes: [
      { kind: 'area', link: 'fixing', ink: 'building', leg: null, pencil: scene.pencil('place.substrate'), behind: false, texture: layersOf(scene, high)[0]?.texture ?? 'unknown', points: slab(ceilingFrame(ceiling), [0, 0.25 * high], [x - 0.7 * high, x + 0.7 * high]) },
      { kind: 'line', link: 'fixing', ink: 'building', leg: null, pencil: scene.pencil('place.substrate'), behind: false, width: 0, points: [[x - 0.8 * high, ceiling], [x + 0.8 * high, ceiling]] },
      ...ring, ...hook,
      // Before the ring passes the half of the bowl towards the viewer.
      ...(ring.length === 0 ? [] : hook.filter(({ link }) => link === 'hook').slice(0, 1).map((shape) => (shape.kind === 'line' ? { ...shape, points: shape.points.slice(shape.points.length >> 2, shape.points.length >> 1) } : shape))),
    ],
    dimensions: (unit) => hookDimensions(scene, x, unit),
  }
}

function hookDimensions(scene: Scene, x: number, unit: number): readonly Dimension[] {
  const { answers, bowl, ceiling, pencil } = scene
  const [wire, inside] = [answers['hook.wire'], Math.min(answers['hook.inside'], Math.max(0, answers['hook.projection'] - answers['hook.wire']))]
  const reach = inside / 2 + wire
  const told = inside === answers['hook.inside']
  return [
    uprightLine({ path: 'hook.projection', value: answers['hook.projection'], pencil, ends: [bowl, ceiling], at: x + reach + 1.4 * unit, feet: [x, x] }, { side: 'right', away: 0.4 * unit, height: (bowl + ceiling) / 2 }),
    ...(told ? [levelLine({ path: 'hook.inside', value: inside, pencil, ends: [x - inside / 2, x + inside / 2], at: bowl - wire - 2.2 * unit, feet: [bowl + inside / 2, bowl + inside / 2] }, Math.max(0.5 * unit, wire))] : []),
    levelLine({ path: 'hook.wire', value: wire, pencil, ends: [x - wire / 2, x + wire / 2], at: bowl - wire - 4.4 * unit, feet: [bowl, bowl] }, 0.5 * unit),
  ]
}

function inWall(front: Scene): Detail {
  const scene = sideScene(front)
  const { answers, hookAt, bowl, pencil } = scene
  const wall = hookAt + answers['hook.projection']
  const middle = shankHeight(scene)
  const [wire, projection] = [answers['hook.wire'], answers['hook.projection']]
  const half = Math.max(2 * wire, 0.7 * projection, answers['hook.inside'])
  return {
    code: 'hook', link: 'hook', of: around([0, bowl], 1.2 * half),
    shapes: [
      ...sectionShapes(scene, wallFrame(wall), { from: middle - half, to: middle + half, least: 0.5 * half, surface: [middle - 1.1 * half, middle + 1.1 * half], fixings: [middle] }),
      ...hookProfile(scene, wall),
    ],
    dimensions: (unit) => [
      levelLine({ path: 'hook.projection', value: projection, pencil, ends: [hookAt, wall], at: middle + 1.1 * half + unit, feet: [bowl, middle] }, 0.5 * unit),
      uprightLine({ path: 'hook.wire', value: wire, pencil, ends: [middle - wire / 2, middle + wire / 2], at: hookAt - 0.6 * half - 1.2 * unit, feet: [hookAt, hookAt] }, { side: 'left', away: 0.4 * unit, height: middle }),
    ],
  }
}
