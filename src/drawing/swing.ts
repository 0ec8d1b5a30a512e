import type { Scene } from './scene'
import type { Point, Shape } from './shape'

/** Angle a bumped pot is let go from, rad: that of the load case. */
const SWING = Math.PI / 6
const STEPS = 24

/** In a bump the hanger is drawn hanging plumb; a thin arc about the hook says how far it swings. */
export function swingShapes({ code, bowl, pose, unit }: Scene): readonly Shape[] {
  if (code !== 'bump') return []
  const radius = 0.45 * (bowl - pose.place([0, 0, pose.path.leave.z])[2])
  const at = (angle: number, r: number): Point => [r * Math.sin(angle), bowl - r * Math.cos(angle)]
  const note = { link: null, ink: 'note', leg: null, pencil: false, kind: 'line', width: 0 } as const
  const tip = (sign: number): Shape => ({ ...note, behind: false, points: [at(sign * (SWING - (0.6 * unit) / radius), radius - 0.35 * unit), at(sign * SWING, radius), at(sign * (SWING - (0.6 * unit) / radius), radius + 0.35 * unit)] })
  return [
    { ...note, behind: true, points: Array.from({ length: STEPS + 1 }, (_, i) => at(SWING * ((2 * i) / STEPS - 1), radius)) },
    tip(-1),
    tip(1),
  ]
}
