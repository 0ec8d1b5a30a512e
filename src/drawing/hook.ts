import { levelRingShapes } from './levelRing'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

const STEPS = 32
/** An open hook's bowl runs from the shank round to here, rad from straight down. */
const OPEN_END = (105 * Math.PI) / 180

/** Radius to the middle of the bowl's wire; no wider than fits between ceiling and bowl. */
function bowlRadius({ answers }: Scene): number {
  const wire = answers['hook.wire']
  return Math.max(wire / 2, Math.min((answers['hook.inside'] + wire) / 2, answers['hook.projection'] / 2))
}

/** Hook or eye from the front, of its true wire, from the ceiling to the bowl that carries; `x`: where it stands. None under other supports. */
export function hookShapes(scene: Scene, x: number): readonly Shape[] {
  const { answers, bowl, ceiling, pencil } = scene
  if (answers['place.support'] !== 'ceilingHook') return []
  const wire = answers['hook.wire']
  const radius = bowlRadius(scene)
  const middle = bowl - wire / 2 + radius
  const at = (angle: number): Point => [x + radius * Math.sin(angle), middle - radius * Math.cos(angle)]
  const closed = answers['hook.kind'] === 'closed'
  const bowlEnd = closed ? Math.PI : OPEN_END
  const arc = Array.from({ length: STEPS + 1 }, (_, i) => at(-Math.PI + ((bowlEnd + Math.PI) * i) / STEPS))
  const hook = { ink: 'wire', leg: null, kind: 'line', width: wire, behind: false } as const
  return [
    { ...hook, link: 'hookShank', pencil: pencil('hook.projection', 'hook.wire'), points: [[x, Math.max(ceiling, middle + radius)], [x, middle + radius]] },
    { ...hook, link: 'hook', pencil: pencil('hook.kind', 'hook.wire', 'hook.inside'), points: arc },
    ...(answers['hook.kind'] === 'latched' ? [{ ...hook, link: 'hook', pencil: pencil('hook.kind', 'hook.wire', 'hook.inside'), width: 0, points: [at(bowlEnd), at(-0.62 * Math.PI)] } satisfies Shape] : []),
    ...shoulder(scene, x),
  ]
}

/** A hook whose own thread holds it is screwed in up to its shoulder. */
function shoulder({ answers, ceiling, pencil }: Scene, x: number): readonly Shape[] {
  if (answers['place.substrate'] !== 'timber' || answers['fixing.kind'] !== 'screwHook') return []
  const wire = answers['hook.wire']
  return [{ kind: 'line', link: 'hookShank', ink: 'wire', leg: null, pencil: pencil('hook.projection', 'hook.wire'), width: wire / 2, behind: false, points: [[x - wire, ceiling - wire / 4], [x + wire, ceiling - wire / 4]] }]
}

/** The same hook from its side: both its shank and its bowl on edge. */
export function hookOnEdge(scene: Scene, x: number): readonly Shape[] {
  const [shank, bowl] = hookShapes(scene, x)
  if (shank?.kind !== 'line' || bowl?.kind !== 'line') return []
  const heights = bowl.points.map(([, z]) => z)
  return [shank, { ...bowl, points: [[x, Math.max(...heights)], [x, Math.min(...heights)]] }, ...shoulder(scene, x)]
}

const isLevel = ({ check }: Scene): boolean => check.solved.geometry.ringRadius > 0

/** The half of the bowl that passes before the ring, drawn over it. */
export function hookBeforeRing(scene: Scene): readonly Shape[] {
  const bowl = hookShapes(scene, 0)[1]
  if (scene.hangsFrom !== 'ring' || scene.hasStick || isLevel(scene) || scene.answers['connector.kind'] !== 'none' || bowl?.kind !== 'line') return []
  return [{ ...bowl, points: bowl.points.slice(STEPS / 4, STEPS / 2) }]
}

/** The ring the legs hang from, of its true wire and width. */
export function ringShapes(scene: Scene): readonly Shape[] {
  const { answers, hangsFrom, pose, pencil } = scene
  if (isLevel(scene)) return levelRingShapes(scene)
  if (hangsFrom !== 'ring') return []
  const wire = answers['ring.wire']
  const inside = answers['ring.inside']
  const centre: Point = [0, pose.hangingPoint[2] + wire + inside / 2]
  return [{ kind: 'circle', link: 'ring', ink: 'wire', leg: null, pencil: pencil('make.top', 'ring.wire', 'ring.inside'), centre, radius: (inside + wire) / 2, width: wire, behind: false }]
}

/** Cords folded over the ring by lark's heads, one a leg, no more than fit. */
export function larksHeads(scene: Scene): readonly Shape[] {
  const { answers, hangsFrom, pose, pencil, cord } = scene
  if (hangsFrom !== 'ring' || isLevel(scene)) return []
  const wire = answers['ring.wire']
  const heads = Math.min(pose.legs, Math.max(1, Math.floor((0.8 * answers['ring.inside']) / cord)))
  const top = pose.hangingPoint[2]
  return Array.from({ length: heads }, (_, i): Shape => {
    const x = (i - (heads - 1) / 2) * cord
    return {
      kind: 'line', link: 'leg', ink: 'cord', leg: null, pencil: pencil('make.legs', 'cord.diameter'), width: cord, behind: false,
      points: [[x, top + wire + 0.9 * cord], [x, top - cord], [0.6 * x, top - 2.4 * cord]],
    }
  })
}
