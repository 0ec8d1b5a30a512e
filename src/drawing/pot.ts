import { hull } from './hull'
import type { Stand } from './scene'
import type { Point, Shape } from './shape'
import type { Vector } from './pose'

const SIDES = 48

/** Outside radius of the pot at a height above its base. */
export function potRadius({ answers }: Stand, z: number): number {
  return (answers['pot.base'] + (answers['pot.rim'] - answers['pot.base']) * (z / answers['pot.height'])) / 2
}

/** A horizontal circle of the pot, placed; it begins at the view's right and runs behind first. */
export function potCircle({ pose, view }: Stand, radius: number, z: number): readonly Vector[] {
  return Array.from({ length: SIDES }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES - view.turn
    return pose.place([radius * Math.cos(angle), radius * Math.sin(angle), z])
  })
}

/** The pot from the front: its outline, the rim, the fill line of the mix, and water standing on it. */
export function potShapes(stand: Stand): readonly Shape[] {
  const { answers, pencil, check, code, view } = stand
  const height = answers['pot.height']
  const fill = Math.max(0, height - answers['pot.fillGap'])
  const level = (z: number): readonly Point[] => potCircle(stand, potRadius(stand, z), z).map(view.front)
  const pot = { link: 'load', ink: 'pot', leg: null, pencil: pencil('pot.rim', 'pot.height', 'pot.base') } as const
  const mix = { ...pot, ink: 'mix', pencil: pencil('pot.fillGap') } as const
  const standing = check.solved.potted[check.solved.loads[code].case.state].components.some((c) => c.part === 'standingWater' && c.mass.high > 0)
  const outline = hull([...level(0), ...level(height)])
  const shapes: Shape[] = [{ ...pot, kind: 'area', points: outline, texture: 'paper', behind: false }]
  shapes.push({ ...mix, kind: 'area', points: hull([...level(0), ...level(fill)]), texture: 'mix', behind: true })
  if (standing) shapes.push({ ...mix, ink: 'water', pencil: pencil('pot.drainage'), kind: 'area', points: hull([...level(fill), ...level(height)]), texture: 'water', behind: true })
  shapes.push({ ...mix, kind: 'line', points: ends(level(fill)), width: 0, behind: true })
  shapes.push({ ...pot, kind: 'area', points: outline, texture: 'open', behind: false })
  shapes.push({ ...pot, kind: 'area', points: hull(level(height)), texture: 'open', behind: false })
  return shapes
}

/** The two sides of a circle that the view cuts. */
const ends = (circle: readonly Point[]): readonly Point[] => [circle[0] as Point, circle[SIDES / 2] as Point]
