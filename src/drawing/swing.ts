import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Angle a bumped pot is let go from, rad: that of the load case; in a gust no more is drawn than level. */
const BUMPED = Math.PI / 6
const LEVEL = Math.PI / 2
const STEPS = 24

/** In a bump or gust the hanger is drawn hanging plumb; a thin arc about the hook, at `x`, says how far it swings; from the side to the left only where a wall is to the right. */
export function swingShapes({ check, code, bowl, pose, unit }: Scene, x: number, walled: boolean): readonly Shape[] {
  const swing = code === 'bump' ? BUMPED : code === 'gust' ? Math.min(LEVEL, check.solved.gust?.swing ?? 0) : 0
  if (swing === 0) return []
  const radius = 0.45 * (bowl - pose.place([0, 0, pose.path.leave.z])[2])
  const at = (angle: number, r: number): Point => [x + r * Math.sin(angle), bowl - r * Math.cos(angle)]
  const note = { link: null, ink: 'note', leg: null, pencil: false, kind: 'line', width: 0 } as const
  const tip = (sign: number): Shape => ({ ...note, behind: false, points: [at(sign * (swing - (0.6 * unit) / radius), radius - 0.35 * unit), at(sign * swing, radius), at(sign * (swing - (0.6 * unit) / radius), radius + 0.35 * unit)] })
  return [
    { ...note, behind: true, points: Array.from({ length: STEPS + 1 }, (_, i) => at(swing * ((walled ? 1 : 2) * (i / STEPS) - 1), radius)) },
    tip(-1),
    ...(walled ? [] : [tip(1)]),
  ]
}
