import { facing } from './potFrame'
import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Leaves from the middle outwards: how far aside the tip ends over half the spread, how high over the plant's height. */
const LEAVES: readonly (readonly [number, number])[] = [[0.06, 1], [-0.34, 0.9], [0.42, 0.82], [-0.7, 0.62], [0.78, 0.54], [-0.96, 0.3], [1, 0.22]]
const STEPS = 12
/** A leaf's greatest half width over its length. */
const SLENDER = 0.075

/** The plant as a plain outline of its height: a few leaves that hide nothing. */
export function plantShapes(scene: Scene): readonly Shape[] {
  const { answers, pencil } = scene
  const tall = answers['plant.height']
  if (tall <= 0) return []
  const foot = answers['pot.height'] - answers['pot.fillGap']
  const spread = Math.min(tall * 0.8, answers['pot.rim'] * 0.85)
  const at = ([x, z]: Point): Point => facing(scene, x, z)
  const rim = answers['pot.height']
  return LEAVES.map(([aside, high]) => ({
    kind: 'area', link: 'load', ink: 'plant', leg: null, pencil: pencil('plant.height'), texture: 'open', behind: false,
    points: leaf([aside * answers['pot.rim'] * 0.08, foot], [aside * spread, rim + tall * high]).map(at),
  }))
}

/** A leaf that rises from its foot and arches over to its tip, no higher than the tip. */
function leaf(foot: Point, tip: Point): readonly Point[] {
  const length = Math.hypot(tip[0] - foot[0], tip[1] - foot[1])
  const bend: Point = [foot[0] + (tip[0] - foot[0]) * 0.25, tip[1]]
  const spine = Array.from({ length: STEPS + 1 }, (_, i): Point => {
    const t = i / STEPS
    const mix = (k: 0 | 1): number => (1 - t) * (1 - t) * foot[k] + 2 * t * (1 - t) * bend[k] + t * t * tip[k]
    return [mix(0), mix(1)]
  })
  const side = (sign: number): readonly Point[] => spine.map((point, i) => {
    const [before, after] = [spine[Math.max(0, i - 1)] as Point, spine[Math.min(STEPS, i + 1)] as Point]
    const run = Math.hypot(after[0] - before[0], after[1] - before[1])
    const wide = sign * length * SLENDER * Math.sin(Math.PI * (i / STEPS) ** 0.8)
    return [point[0] - (wide * (after[1] - before[1])) / run, Math.min(tip[1], point[1] + (wide * (after[0] - before[0])) / run)]
  })
  return [...side(1), ...[...side(-1)].reverse()]
}
