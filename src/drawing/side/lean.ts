import type { Level } from '../../load/outline'
import { edgeOf } from '../pot'
import type { LowerScene } from '../tiers'
import { movedPoint } from '../shifted'
import type { Scene } from '../scene'
import type { Point } from '../shape'
import type { SideScene } from './sideScene'

/**
 * How far a hanger is drawn turned about its hook, rad: away from a wall that its pot, with a cord behind it, would else stand in.
 * 0 where it hangs clear; a panel is solved leaning, so is drawn as solved.
 */
export function leanOf(scene: SideScene, lower: readonly LowerScene[]): number {
  const { wall, hookAt, bowl, cord, check } = scene
  if (wall === null || check.solved.geometry.panel !== null) return 0
  const reach = wall - hookAt
  const turnFor = ([x, z]: Point): number => {
    const [out, down] = [x + cord - hookAt, bowl - z]
    const far = Math.hypot(out, down)
    return down <= 0 || far <= reach ? 0 : Math.acos(reach / far) - Math.atan2(down, out)
  }
  const points = [...potPoints(scene), ...lower.flatMap((l) => potPoints(l.scene).map((p) => movedPoint(p, l.by)))]
  return points.reduce((most, point) => Math.max(most, turnFor(point)), 0)
}

/** Every point to which the pot and what it stands in reach. */
const potPoints = (scene: Scene): readonly Point[] =>
  Object.values(scene.check.solved.geometry.outline).flatMap((levels: readonly Level[] | null) => levels ?? []).flatMap((level) => edgeOf(scene, level)).map(scene.view.front)
